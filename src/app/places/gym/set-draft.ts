import * as v from 'valibot';
import type { StepNow } from '#core/cycle/gym-now.ts';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import type { WalkedStep } from '#core/gym/session/session-walk.ts';
import { setLoad, type SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

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

/** The load a set begins with: that of the warm-up, what is asked, or an empty one of the exercise's kind. */
export function suggestedLoad({ step, warmUps, beat }: StepNow): SetLoad {
  const warm = warmUps?.sets[step.number - 1];
  return warm?.load ?? beat.asked?.load ?? emptyLoad(step.exercise, step.machine);
}

export function suggestedReps({ step, warmUps, beat }: StepNow): number {
  return warmUps?.sets[step.number - 1]?.reps ?? beat.asked?.reps ?? step.target.reps?.min ?? 8;
}

/** Where nothing was ever loaded: the form that the exercise's carrier is loaded in, with nothing on it. */
export function emptyLoad(exercise: Exercise, machine: string | undefined): SetLoad {
  const on = machine ?? exercise.machine;
  switch (exercise.carrier) {
    case 'dumbbell pair':
      return { of: 'each', kgEach: 0 };
    case 'stack machine':
      return on === undefined ? { of: 'stack', pinKg: 0 } : { of: 'stack', machine: on, pinKg: 0 };
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
  now: StepNow,
  typed: SetDraft,
  restSeconds: number | undefined,
): Outcome<DataOf<'set-done'>> {
  const { step } = now;
  const load = typed.load ?? suggestedLoad(now);
  if (load.of === 'kg' && load.kg === 0)
    return refused(
      'gym/no-load',
      'load',
      'The load is not entered yet.',
      'Enter what is on the bar, bar and all.',
    );
  return answered({
    session,
    slot: step.slot,
    exercise: step.exercise.exercise,
    set: step.set,
    number: step.number,
    load,
    reps: typed.reps ?? suggestedReps(now),
    ...(typed.rir !== undefined && { rir: typed.rir }),
    ...(step.side !== undefined && { side: step.side }),
    ...(restSeconds !== undefined && { restSeconds }),
  });
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
