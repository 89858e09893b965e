import type { JSX } from 'preact';
import { signal, useSignal } from '@preact/signals';
import type { StepNow } from '#core/cycle/gym-now.ts';
import { nextFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Note } from '../../parts/note.tsx';
import { currentMs } from '../../state/moments.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { implementsAtHand } from '../../views/gym-view.ts';
import { book, gym, push } from '../../views/training-view.ts';
import { LoadFields } from './load-fields.tsx';
import { LoadPlates } from './load-plates.tsx';
import { LoadedAs } from './loaded-as.tsx';
import { RestClock } from './rest-clock.tsx';
import { leadOnToTheNextSet, SetCard } from './set-card.tsx';
import { SetNumber, type SetNumberProps } from './set-number.tsx';
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
  const typed = draft(draftKeyOf(session, now.step), setDraft, {});
  const unread = useSignal<ReadonlyMap<string, string>>(new Map());
  const suggested = suggestedSet(now, walk, book.value, implementsAtHand.value);
  const load = typed.value.load ?? suggested.load;
  const reps = typed.value.reps ?? suggested.reps;
  const lastSetMs = walk.sets.at(-1)?.epochMs;
  const log = (): void => {
    problem.value = unreadProblem(unread.value);
    if (problem.value) return;
    void keep(now.step, session, { load, reps }, typed.value, restedSeconds(lastSetMs, currentMs()));
  };
  return (
    <>
      <RestClock lastSetMs={lastSetMs} wantedSeconds={now.step.target.restSeconds} />
      <SetCard now={now} load={load} reps={reps} />
      {push.value.push === 'match' && <Note>{push.value.words}</Note>}
      <SetFields
        now={now}
        walk={walk}
        chosen={{ load, reps }}
        rir={typed.value.rir}
        change={(part) => {
          typed.value = { ...typed.value, ...part };
          problem.value = undefined;
        }}
        onUnread={(label, words) => {
          unread.value = withUnread(unread.value, label, words);
          problem.value = undefined;
        }}
      />
      <ActionBar>
        <Button kind="next" records wide onPress={log}>
          Set done
        </Button>
      </ActionBar>
    </>
  );
}

interface SetFieldsProps extends SetEntryProps {
  readonly chosen: SuggestedSet;
  readonly rir: number | undefined;
  readonly change: (part: Partial<SetDraft>) => void;
  readonly onUnread: SetNumberProps['onUnread'];
}

function SetFields({ now, walk, chosen, rir, change, onUnread }: SetFieldsProps): JSX.Element {
  const { step } = now;
  const { load, reps } = chosen;
  const { place, session } = walk.session;
  const before = walk.sets.findLast(({ data }) => data.slot === step.slot && data.side === step.side);
  return (
    <div class="stack">
      <LoadFields
        key={load.of}
        load={load}
        stepKg={stepKgOf(load, place)}
        onLoad={(to) => change({ load: to })}
        onUnread={onUnread}
      />
      <LoadPlates step={step} load={load} before={before?.data.load} place={place} />
      <SetNumber
        label="Repetitions"
        value={reps}
        step={1}
        min={0}
        max={200}
        onNumber={(value) => change({ reps: value })}
        onUnread={onUnread}
      />
      {step.set !== 'warm-up' && (
        <ChoiceField
          label="Left in reserve"
          layout="row"
          value={RESERVES.find((value) => value === String(rir))}
          options={RESERVES.map((value) => ({ value, label: value === '4' ? '4 or more' : value }))}
          onValue={(value) => change({ rir: Number(value) })}
        />
      )}
      <div class="row">
        <Button records onPress={() => void skip(now, session)}>
          Leave out this set
        </Button>
        <LoadedAs step={step} load={load} onLoad={(to) => change({ load: to })} />
      </div>
      {problem.value && (
        <Caution title="Not recorded yet" words={`${problem.value.message} ${problem.value.remedy}`} />
      )}
    </div>
  );
}

function withUnread(
  unread: ReadonlyMap<string, string>,
  label: string,
  words: string | undefined,
): ReadonlyMap<string, string> {
  const others = [...unread].filter(([other]) => other !== label);
  return new Map(words === undefined ? others : [...others, [label, words]]);
}

/** A number that cannot be read keeps the set from being logged with the one before it. */
function unreadProblem(unread: ReadonlyMap<string, string>): Problem | undefined {
  const [first] = unread.values();
  if (first === undefined) return undefined;
  return { code: 'gym/unread-number', path: 'load', message: first, remedy: 'Mend it, then log the set.' };
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
  leadOnToTheNextSet();
  const saved = await record('set-done', set.value, { says: 'Set logged' });
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
  if (saved.status !== 'refused') clearDraft(draftKeyOf(session, step));
}

async function skip({ step }: StepNow, session: string): Promise<void> {
  leadOnToTheNextSet();
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
