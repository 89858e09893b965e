/** A hard set already done in the session. */
export interface SetBefore {
  readonly reps: number;
  readonly rir?: number | undefined;
}

/** Reserve taken for a set that was logged without one. */
const UNKNOWN_RESERVE = 1.5;
/** With each so many repetitions left a set tires by a factor e less. */
const RESERVE_SCALE = 4;
/** Rest after which a further minute changes little, and how much more the last set weighs without any. */
const FULL_REST_SECONDS = 240;
const SHORT_REST_EXTRA = 0.6;
/** A set of another exercise for the same prime movers holds back by this part of one of the exercise itself. */
const RELATED_SHARE = 0.4;

/**
 * How much a set is held back by those before it, in sets taken to failure. A set with repetitions in reserve counts
 * for less; a short rest before the set to come makes the last one weigh more; sets of other exercises for the same
 * muscles count in part. Our own rule, checked on simulated lifters; the loss per set is estimated for each exercise.
 */
export function precedingWork(
  own: readonly SetBefore[],
  restSeconds?: number,
  related: readonly SetBefore[] = [],
): number {
  const last = own.at(-1);
  const shortness = restSeconds === undefined ? 0 : Math.max(0, 1 - restSeconds / FULL_REST_SECONDS);
  return (
    sum(own.map(weightOf)) +
    RELATED_SHARE * sum(related.map(weightOf)) +
    (last ? SHORT_REST_EXTRA * shortness * weightOf(last) : 0)
  );
}

function weightOf({ rir = UNKNOWN_RESERVE }: SetBefore): number {
  return Math.exp(-rir / RESERVE_SCALE);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
