import type { JSX } from 'preact';
import { signal } from '@preact/signals';
import type { StepNow } from '#core/cycle/gym-now.ts';
import { nextFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk } from '#core/gym/session/session-walk.ts';
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
import { gym, push } from '../../views/training-view.ts';
import { LoadFields } from './load-fields.tsx';
import { RestClock } from './rest-clock.tsx';
import { SetCard } from './set-card.tsx';
import {
  draftKeyOf,
  restedSeconds,
  setDone,
  setDraft,
  type SetDraft,
  suggestedLoad,
  suggestedReps,
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
  const load = typed.value.load ?? suggestedLoad(now);
  const reps = typed.value.reps ?? suggestedReps(now);
  const lastSetMs = walk.sets.at(-1)?.epochMs;
  return (
    <>
      <SetCard now={now} load={load} reps={reps} />
      <RestClock lastSetMs={lastSetMs} wantedSeconds={now.step.target.restSeconds} />
      {push.value.push === 'match' && <Note>{push.value.words}</Note>}
      <div class="stack">
        <LoadFields
          load={load}
          stepKg={stepKgOf(load, walk.session.place)}
          onLoad={(to) => change({ load: to })}
        />
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
        {problem.value && <Note>{`${problem.value.message} ${problem.value.remedy}`}</Note>}
      </div>
      <ActionBar>
        <Button
          kind="next"
          records
          wide
          onPress={() => void keep(now, session, typed.value, key, restedSeconds(lastSetMs, currentMs()))}
        >
          Set done
        </Button>
        <Button records label="Leave out this set" onPress={() => void skip(now, session)}>
          Leave out
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
  now: StepNow,
  session: string,
  typed: SetDraft,
  key: string,
  restSeconds: number | undefined,
): Promise<void> {
  const set = setDone(session, now, typed, restSeconds);
  if (!set.ok) {
    problem.value = set.problem;
    return;
  }
  const saved = await record('set-done', set.value, { says: 'Set logged' });
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
  if (saved.status !== 'refused') clearDraft(key);
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
