import type { BodySide, SessionSlot } from '#core/journal/kinds/gym-scheme.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { exerciseBook, type Exercise, type ExerciseBook } from '../book/exercise-book.ts';
import { blocksNow } from './blocks-now.ts';
import { countedSets, type LogNote, type SetDone } from './counted-sets.ts';
import { laySteps, type Step } from './lay-steps.ts';
import { trainingSessions, type TrainingSession } from './training-sessions.ts';

/** A step with the exercise in its slot now, or the one it was done with, and what became of it. */
export interface WalkedStep extends Step {
  readonly exercise: Exercise;
  readonly machine: string | undefined;
  readonly implement: string | undefined;
  readonly state: 'done' | 'skipped' | 'to come';
  readonly done: SetDone | undefined;
}

export interface SessionWalk {
  readonly session: TrainingSession;
  readonly title: string;
  readonly steps: readonly WalkedStep[];
  /** What is next: the first step to come of the block last worked in, else the first of all. Undefined: all is done. */
  readonly next: WalkedStep | undefined;
  /** Sets that stand for no planned step: a set more, an exercise of its own. */
  readonly extra: readonly SetDone[];
  readonly sets: readonly SetDone[];
  readonly notes: readonly LogNote[];
}

export interface WalkRequest {
  readonly ledger: Ledger;
  /** Any of its names. */
  readonly session: string;
  /** The weaker side of an exercise goes first; left where nothing is known. */
  readonly weakerSide?: (exercise: string) => BodySide | undefined;
}

/**
 * The session as it stands, worked out from its entries alone (GYM-33 to GYM-36): steps in walking order, what is done,
 * what is next. Refuses a session that no entry names.
 */
export function sessionWalk({ ledger, session, weakerSide }: WalkRequest): Outcome<SessionWalk> {
  const found = trainingSessions(ledger).find(({ names }) => names.includes(session));
  if (!found) {
    return refused(
      'gym/no-such-session',
      'session',
      `No entry of the journal names the session "${session}".`,
      'Begin a session, or choose one from the list.',
    );
  }
  const book = exerciseBook(ledger);
  const { blocks, dropped } = blocksNow(ledger, found);
  const { sets, notes } = countedSets(
    ledger.of('set-done').filter(({ data }) => found.names.includes(data.session)),
  );
  const slots = new Map(blocks.flatMap((block) => block.slots.map((slot) => [slot.slot, slot])));
  const steps = laySteps(blocks, (slot) => sidesOf(slot, book, weakerSide));
  const { doneBy, extra } = matchSets(steps, sets, slots);
  const skipped = skippedSteps(ledger, found, steps);
  const walked = steps.map((step): WalkedStep => {
    const done = doneBy.get(step);
    const slot = slots.get(step.slot);
    const passed = skipped.has(step) || dropped.has(step.slot);
    return {
      ...step,
      exercise: book.exercise(done?.data.exercise ?? slot?.exercise ?? step.slot),
      machine: slot?.machine,
      implement: slot?.implement,
      state: done ? 'done' : passed ? 'skipped' : 'to come',
      done,
    };
  });
  const title = found.title ?? titleOf(ledger, found) ?? 'Session';
  return answered({ session: found, title, steps: walked, next: nextOf(walked), extra, sets, notes });
}

function titleOf(ledger: Ledger, { template }: TrainingSession): string | undefined {
  return ledger.of('session-planned').findLast(({ data }) => data.template === template)?.data.name;
}

function sidesOf(
  slot: SessionSlot,
  book: ExerciseBook,
  weakerSide: WalkRequest['weakerSide'],
): readonly BodySide[] | undefined {
  const oneSide =
    slot.sides === undefined ? book.exercise(slot.exercise).oneSide : slot.sides === 'one at a time';
  if (!oneSide) return undefined;
  return weakerSide?.(slot.exercise) === 'right' ? ['right', 'left'] : ['left', 'right'];
}

/**
 * Which set was which step (GYM-35). A set goes to the first step still open that agrees with all it says of itself:
 * slot (or exercise, where it names no slot), kind, number, side. What fits nowhere is extra, not lost.
 */
function matchSets(
  steps: readonly Step[],
  sets: readonly SetDone[],
  slots: ReadonlyMap<string, SessionSlot>,
): { doneBy: ReadonlyMap<Step, SetDone>; extra: readonly SetDone[] } {
  const doneBy = new Map<Step, SetDone>();
  const extra: SetDone[] = [];
  for (const set of sets) {
    const step = steps.find((each) => !doneBy.has(each) && agrees(each, set, slots));
    if (step) doneBy.set(step, set);
    else extra.push(set);
  }
  return { doneBy, extra };
}

function agrees(step: Step, { data }: SetDone, slots: ReadonlyMap<string, SessionSlot>): boolean {
  const here =
    data.slot === undefined ? slots.get(step.slot)?.exercise === data.exercise : step.slot === data.slot;
  return (
    here &&
    step.set === data.set &&
    (data.number === undefined || step.number === data.number) &&
    (data.side === undefined || step.side === undefined || step.side === data.side)
  );
}

function skippedSteps(ledger: Ledger, session: TrainingSession, steps: readonly Step[]): ReadonlySet<Step> {
  const skips = ledger.of('set-skipped').filter(({ data }) => session.names.includes(data.session));
  return new Set(
    steps.filter((step) =>
      skips.some(
        ({ data }) =>
          data.slot === step.slot &&
          data.set === step.set &&
          data.number === step.number &&
          (data.side === undefined || data.side === step.side),
      ),
    ),
  );
}

function nextOf(steps: readonly WalkedStep[]): WalkedStep | undefined {
  let last: WalkedStep | undefined;
  for (const step of steps) {
    if (step.done && (!last?.done || step.done.epochMs >= last.done.epochMs)) last = step;
  }
  const open = (step: WalkedStep) => step.state === 'to come';
  return steps.find((step) => open(step) && step.block === last?.block) ?? steps.find(open);
}
