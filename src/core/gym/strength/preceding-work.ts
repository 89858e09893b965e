/** A hard set already done in the session. */
export interface SetBefore {
  readonly reps: number;
  readonly rir?: number | undefined;
}

/** Reserve taken for a set that was logged without one. */
const UNKNOWN_RESERVE = 1.5;
/** With each so many repetitions left a set tires by a factor e less. */
const RESERVE_SCALE = 4;
/** Rest after which a further minute changes little, and how much more a set costs after a short rest. */
const FULL_REST_SECONDS = 240;
const SHORT_REST_EXTRA = 0.6;

/**
 * How much a set is held back by those before it, in sets taken to failure. A set with repetitions in reserve counts
 * for less; a short rest before the set to come makes the last one weigh more. Our own rule, checked on simulated
 * lifters; the loss per set is estimated for each exercise.
 */
export function precedingWork(before: readonly SetBefore[], restSeconds?: number): number {
  const weights = before.map(({ rir = UNKNOWN_RESERVE }) => Math.exp(-rir / RESERVE_SCALE));
  const last = weights.at(-1) ?? 0;
  const shortness = restSeconds === undefined ? 0 : Math.max(0, 1 - restSeconds / FULL_REST_SECONDS);
  return weights.reduce((sum, weight) => sum + weight, 0) + SHORT_REST_EXTRA * shortness * last;
}
