import type { JSX } from 'preact';
import { signal } from '@preact/signals';
import type { StepNow } from '#core/cycle/gym-now.ts';
import { nextFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Note } from '../../parts/note.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { currentMs } from '../../state/moments.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { implementsAtHand } from '../../views/gym-view.ts';
import { book, gym, push } from '../../views/training-view.ts';
import { LoadFields } from './load-fields.tsx';
import { LoadPlates } from './load-plates.tsx';
import { LoadedAs } from './loaded-as.tsx';
import { RestClock } from './rest-clock.tsx';
import { SetCard } from './set-card.tsx';
import {
  draftKeyOf,
  restedSeconds,
  setDone,
  setDraft,
  type SetDraft,
  suggestedSet,
  type SuggestedSet,
} from './set-draft.ts';

const RESERVES = ['0', '1', '2', '3', '4'] as const;
const problem = signal<Problem | undefined>(undefined);

interface SetEntryProps {
  readonly now: StepNow;
  readonly walk: SessionWalk;
}

/** The set to do: what is asked stands ready, so that an ordinary set is one tap; anything else is a few. */
export function SetEntry({ now, walk }: SetEntryProps): JSX.Element {
  const { session } = walk.session;
  const key = draftKeyOf(session, now.step);
  const typed = draft(key, setDraft, {});
  const change = (part: Partial<SetDraft>): void => {
    typed.value = { ...typed.value, ...part };
    problem.value = undefined;
  };
  const suggested = suggestedSet(now, walk, book.value, implementsAtHand.value);
  const load = typed.value.load ?? suggested.load;
  const reps = typed.value.reps ?? suggested.reps;
  const before = walk.sets.findLast(({ data }) => data.slot === now.step.slot && data.side === now.step.side);
  const lastSetMs = walk.sets.at(-1)?.epochMs;
  return (
    <>
      <RestClock lastSetMs={lastSetMs} wantedSeconds={now.step.target.restSeconds} />
      <SetCard now={now} load={load} reps={reps} />
      {push.value.push === 'match' && <Note>{push.value.words}</Note>}
      <div class="stack">
        <LoadFields
          load={load}
          stepKg={stepKgOf(load, walk.session.place)}
          onLoad={(to) => change({ load: to })}
        />
        <LoadPlates step={now.step} load={load} before={before?.data.load} place={walk.session.place} />
        <StepperField
          label="Repetitions"
          value={reps}
          step={1}
          min={0}
          max={200}
          onValue={(value) => value !== undefined && change({ reps: value })}
        />
        {now.step.set !== 'warm-up' && (
          <ChoiceField
            label="Left in reserve"
            layout="row"
            value={RESERVES.find((value) => value === String(typed.value.rir))}
            options={RESERVES.map((value) => ({ value, label: value === '4' ? '4 or more' : value }))}
            onValue={(value) => change({ rir: Number(value) })}
          />
        )}
        <div class="row">
          <Button records onPress={() => void skip(now, session)}>
            Leave out this set
          </Button>
          <LoadedAs step={now.step} load={load} onLoad={(to) => change({ load: to })} />
        </div>
        {problem.value && <Note>{`${problem.value.message} ${problem.value.remedy}`}</Note>}
      </div>
      <ActionBar>
        <Button
          kind="next"
          records
          wide
          onPress={() =>
            void keep(now.step, session, { load, reps }, typed.value, restedSeconds(lastSetMs, currentMs()))
          }
        >
          Set done
        </Button>
      </ActionBar>
    </>
  );
}

function stepKgOf(load: SetLoad, place: string | undefined): number {
  const figure = figureOfLoad(load) ?? 0;
  return Math.max(0.5, nextFigure(load, figure, 1, gym.value.log.book, place) - figure);
}

async function keep(
  step: WalkedStep,
  session: string,
  chosen: SuggestedSet,
  typed: SetDraft,
  restSeconds: number | undefined,
): Promise<void> {
  const set = setDone(session, step, chosen, typed, restSeconds);
  if (!set.ok) {
    problem.value = set.problem;
    return;
  }
  const saved = await record('set-done', set.value, { says: 'Set logged' });
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
  if (saved.status !== 'refused') clearDraft(draftKeyOf(session, step));
}

async function skip({ step }: StepNow, session: string): Promise<void> {
  await record(
    'set-skipped',
    {
      session,
      slot: step.slot,
      set: step.set,
      number: step.number,
      ...(step.side !== undefined && { side: step.side }),
    },
    { says: 'Set left out' },
  );
}
