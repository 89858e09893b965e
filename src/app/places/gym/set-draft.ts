import * as v from 'valibot';
import type { StepNow } from '#core/cycle/gym-now.ts';
import type { Exercise, ExerciseBook } from '#core/gym/book/exercise-book.ts';
import { nearestFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad, withFigure } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { setLoad, type SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { Implement } from '../../views/gym-view.ts';
import { stampKg } from './ramp-draft.ts';

/** What is typed of the set under the bar; what is absent stands as it was suggested. */
export const setDraft = v.strictObject({
  load: v.optional(setLoad),
  reps: v.optional(v.number()),
  rir: v.optional(v.number()),
});
export type SetDraft = v.InferOutput<typeof setDraft>;

export function draftKeyOf(session: string, step: WalkedStep): string {
  return `gym/set/${session}/${step.slot}/${step.exercise.exercise}/${step.set}/${step.number}/${step.side ?? ''}`;
}

export interface SuggestedSet {
  readonly load: SetLoad;
  readonly reps: number;
}

type Done = SessionWalk['sets'][number];

/**
 * What a set starts from, so that one press logs an ordinary one (GYM-96): a warm-up as it was laid; else what is asked;
 * else this session's last set of the exercise, a drop lighter than it; else what the plan says, or the empty bar.
 */
export function suggestedSet(
  { step, warmUps, beat }: StepNow,
  walk: SessionWalk,
  book: ExerciseBook,
  bars: readonly Implement[],
): SuggestedSet {
  const warm = step.set === 'warm-up' ? warmUps?.sets[step.number - 1] : undefined;
  if (warm) return warm;
  if (beat.asked && step.set !== 'warm-up') return beat.asked;
  const fewest = step.target.reps?.min;
  const before = setBefore(walk, step);
  if (before) {
    const { load, reps } = before.data;
    return step.set === 'drop' ? { load: dropped(load, walk, book), reps: fewest ?? reps } : { load, reps };
  }
  const empty = emptyLoad(step.exercise, step.machine, book);
  const bar = empty.of === 'kg' ? barOf(step, bars) : undefined;
  const kg = step.target.loadKg ?? (bar && stampKg(bar.empty));
  return { load: kg === undefined ? empty : withFigure(empty, kg), reps: fewest ?? USUAL_REPS };
}

/** The bar of a step: as described, else the only one there is where a barbell carries the load. */
export function barOf(
  { exercise, implement }: WalkedStep,
  bars: readonly Implement[],
): Implement | undefined {
  const key = implement ?? exercise.implement;
  if (key !== undefined) return bars.find((bar) => bar.implement === key);
  return exercise.carrier === 'barbell' && bars.length === 1 ? bars[0] : undefined;
}

const USUAL_REPS = 8;
/** A first drop takes off about a fifth where the plan names no share (common practice, no source). */
const DROP_SHARE = 0.8;

/** The last set of the slot and side in this session. */
function setBefore(walk: SessionWalk, { slot, side, set, exercise }: WalkedStep): Done | undefined {
  return walk.sets.findLast(
    ({ data }) =>
      data.slot === slot &&
      data.exercise === exercise.exercise &&
      (data.set === 'warm-up') === (set === 'warm-up') &&
      (side === undefined || data.side === side),
  );
}

function dropped(load: SetLoad, { session }: SessionWalk, book: ExerciseBook): SetLoad {
  const figure = figureOfLoad(load);
  if (figure === undefined || figure <= 0) return load;
  return withFigure(load, nearestFigure(load, DROP_SHARE * figure, book, session.place));
}

/** The one peg of a sled: its plates. */
const SLED_PEG = 'plates';

/**
 * Where nothing was ever loaded: the form that the machine, else the exercise's carrier, is loaded in, with nothing on it
 * (GYM-95).
 */
export function emptyLoad(exercise: Exercise, machine: string | undefined, book: ExerciseBook): SetLoad {
  const key = machine ?? exercise.machine;
  const on = key === undefined ? undefined : book.machine(key);
  switch (on?.geometry.of) {
    case 'lever':
      return onPegs(
        on.machine,
        on.geometry.pegs.map(({ name }) => name),
      );
    case 'unknown':
      return onPegs(on.machine, on.geometry.pegs);
    case 'sled':
      return onPegs(on.machine, [SLED_PEG]);
    case 'stack':
      return { of: 'stack', machine: on.machine, pinKg: 0 };
    case undefined:
      return carried(exercise.carrier);
  }
}

function onPegs(machine: string, pegs: readonly string[]): SetLoad {
  return { of: 'pegs', machine, pegs: pegs.map((peg) => ({ peg, kg: 0 })) };
}

function carried(carrier: Exercise['carrier']): SetLoad {
  switch (carrier) {
    case 'dumbbell pair':
      return { of: 'each', kgEach: 0 };
    case 'stack machine':
      return { of: 'stack', pinKg: 0 };
    case 'body weight':
      return { of: 'body' };
    case 'band':
      return { of: 'band', band: 'band' };
    default:
      return { of: 'kg', kg: 0 };
  }
}

/** The set as done, or what is in the way of it. A set without a load on an implement was not loaded. */
export function setDone(
  session: string,
  step: WalkedStep,
  { load, reps }: SuggestedSet,
  typed: Pick<SetDraft, 'rir'>,
  restSeconds: number | undefined,
): Outcome<DataOf<'set-done'>> {
  const remedy = missingLoad(load);
  if (remedy !== undefined) return refused('gym/no-load', 'load', 'The load is not entered yet.', remedy);
  return answered({
    session,
    slot: step.slot,
    exercise: step.exercise.exercise,
    set: step.set,
    number: step.number,
    load,
    reps,
    ...(typed.rir !== undefined && { rir: typed.rir }),
    ...(step.side !== undefined && { side: step.side }),
    ...(step.target.tempo !== undefined && { tempo: step.target.tempo }),
    ...(restSeconds !== undefined && { restSeconds }),
  });
}

/** How to enter a load that is still nothing; a machine's lever may be lifted without plates, and so may the body. */
function missingLoad(load: SetLoad): string | undefined {
  if (load.of === 'kg' && load.kg === 0) return 'Enter what is on the bar, bar and all.';
  if (load.of === 'each' && load.kgEach === 0) return 'Enter what one dumbbell of the pair weighs.';
  if (load.of === 'stack' && load.pinKg === 0) return 'Enter where the pin stands.';
  return undefined;
}

const LONGEST_REST_SECONDS = 1800;

/** Seconds since the last set of the session, where they can have been a rest. */
export function restedSeconds(lastSetMs: number | undefined, nowMs: number): number | undefined {
  if (lastSetMs === undefined) return undefined;
  const seconds = Math.round((nowMs - lastSetMs) / 1000);
  return seconds >= 0 && seconds <= LONGEST_REST_SECONDS ? seconds : undefined;
}

/** "1:05". */
export function restWords(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** A set beyond those planned of a slot, numbered after every one of its kind; the weaker side's turn comes first. */
export function oneMore(walk: SessionWalk, slot: string): WalkedStep | undefined {
  const mine = walk.steps.filter((step) => step.slot === slot);
  const sides = [...new Set(mine.map(({ side }) => side))];
  const counted = sides.map((side) => ({ side, number: highest(walk, slot, side) + 1 }));
  const least = counted.toSorted((a, b) => a.number - b.number)[0];
  const last = mine.at(-1);
  return last && least && { ...last, ...least, set: 'working', state: 'to come', done: undefined };
}

function highest(walk: SessionWalk, slot: string, side: WalkedStep['side']): number {
  const mine = (other: { slot?: string | undefined; set: string; side?: string | undefined }): boolean =>
    other.slot === slot && other.set === 'working' && other.side === side;
  return Math.max(
    0,
    ...walk.steps.filter(mine).map(({ number }) => number),
    ...walk.sets.filter(({ data }) => mine(data)).map(({ data }) => data.number ?? 0),
  );
}
