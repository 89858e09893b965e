import * as v from 'valibot';
import type { StepNow } from '#core/cycle/gym-now.ts';
import type { ExerciseBook } from '#core/gym/book/exercise-book.ts';
import { nearestFigure } from '#core/gym/loads/load-step.ts';
import { figureOfLoad, withFigure } from '#core/gym/loads/shift-load.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { draftOfLoad, firstLoad, loadDraft, readLoad } from './load-draft.ts';

/** A set about to be logged; `step` says which, so that what was typed for another is not taken for it. */
export const setDraft = v.strictObject({
  step: v.string(),
  load: loadDraft,
  reps: v.optional(v.number()),
  rir: v.optional(v.number()),
});
export type SetDraft = v.InferOutput<typeof setDraft>;

export function keyOfStep(session: string, { slot, set, number, side, exercise }: WalkedStep): string {
  return [session, slot, exercise.exercise, set, number, side ?? ''].join('|');
}

type SetDone = SessionWalk['sets'][number];

/**
 * What a set starts from, so that a tap or two is enough (GYM-96): a warm-up as it was laid, a back-off or drop as its
 * share of the set it follows, else what is asked, else this session's last set of the exercise, else what the plan says.
 */
export function prefilled({ step, beat, warmUps }: StepNow, walk: SessionWalk, book: ExerciseBook): SetDraft {
  const key = keyOfStep(walk.session.session, step);
  const warm = step.set === 'warm-up' ? warmUps?.sets[step.number - 1] : undefined;
  if (warm) return { step: key, load: draftOfLoad(warm.load), reps: warm.reps };
  const before = setBefore(walk, step);
  const shared = sharedLoad(step, before, walk, book);
  if (shared)
    return { step: key, load: draftOfLoad(shared), reps: step.target.reps?.min ?? before?.data.reps };
  const { asked } = beat;
  if (asked && step.set !== 'warm-up') return { step: key, load: draftOfLoad(asked.load), reps: asked.reps };
  if (before && step.set !== 'warm-up')
    return { step: key, load: draftOfLoad(before.data.load), reps: before.data.reps };
  const first = firstLoad(step.exercise, step.machine ?? step.exercise.machine, book);
  const { loadKg, reps } = step.target;
  const planned = loadKg === undefined ? first : withPlanned(first, loadKg);
  return { step: key, load: planned, reps: reps?.min };
}

function withPlanned(first: SetDraft['load'], loadKg: number): SetDraft['load'] {
  if (first.of === 'each') return { ...first, kgEach: loadKg };
  if (first.of === 'stack') return { ...first, pinKg: loadKg };
  return first.of === 'kg' ? { ...first, kg: loadKg } : first;
}

/** The last set of the slot and side in this session that was no warm-up. */
function setBefore(walk: SessionWalk, { slot, side, exercise }: WalkedStep): SetDone | undefined {
  return walk.sets.findLast(
    ({ data }) =>
      data.set !== 'warm-up' &&
      data.slot === slot &&
      data.exercise === exercise.exercise &&
      (side === undefined || data.side === side),
  );
}

/** A drop takes off about a fifth where the plan names no share (common practice, no source). */
const DROP_SHARE = 0.8;

function sharedLoad(
  { set, target }: WalkedStep,
  before: SetDone | undefined,
  { session }: SessionWalk,
  book: ExerciseBook,
): SetLoad | undefined {
  const share = target.share ?? (set === 'drop' ? DROP_SHARE : undefined);
  if (!before) return undefined;
  const figure = figureOfLoad(before.data.load);
  if (set === 'rest-pause') return before.data.load;
  if (share === undefined || figure === undefined || figure <= 0) return undefined;
  const load = before.data.load;
  return withFigure(load, nearestFigure(load, share * figure, book, session.place));
}

/** The set as the journal takes it; the first missing field is answered by name. */
export function readSet(typed: SetDraft, step: WalkedStep, session: string): Outcome<DataOf<'set-done'>> {
  const load = readLoad(typed.load);
  if (!load.ok) return load;
  if (typed.reps === undefined)
    return refused(
      'gym/no-reps',
      'reps',
      'The repetitions are missing.',
      'Enter how many; 0 where it was missed.',
    );
  const tempo = step.exercise.caution?.tempo ?? step.target.tempo;
  return {
    ok: true,
    value: {
      session,
      slot: step.slot,
      exercise: step.exercise.exercise,
      set: step.set,
      number: step.number,
      load: load.value,
      reps: typed.reps,
      ...(typed.rir !== undefined && { rir: typed.rir }),
      ...(step.side !== undefined && { side: step.side }),
      ...(tempo !== undefined && { tempo }),
    },
  };
}

/** A set beyond those planned of an exercise whose planned ones are done. */
export function oneMoreOf(steps: readonly WalkedStep[], slot: string): WalkedStep | undefined {
  const mine = steps.filter((step) => step.slot === slot);
  const last = mine.at(-1);
  return last && { ...last, set: 'working', number: 0, state: 'to come', done: undefined };
}

/** Numbers an extra set after every set of its slot, kind and side, planned or done beyond the plan. */
export function numbered(step: WalkedStep, walk: SessionWalk): WalkedStep {
  const same = (other: { slot?: string | undefined; set: string; side?: string | undefined }): boolean =>
    other.slot === step.slot && other.set === step.set && (step.side ?? '') === (other.side ?? '');
  const numbers = [
    ...walk.steps.filter(same).map(({ number }) => number),
    ...walk.sets.filter(({ data }) => same(data)).map(({ data }) => data.number ?? 0),
  ];
  return { ...step, number: Math.max(0, ...numbers) + 1 };
}
