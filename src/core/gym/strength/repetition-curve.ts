/**
 * Curve of repetitions against load used by the running estimate: a load of which x repetitions are possible is
 * maximum / (1 + (x - 1) / 30)^bend. With a bend of 1 it is Epley's line (source key: epley-1985) moved so that one
 * repetition is the maximum; with 1.1 it meets the table (source key: baechle-2008) within 2.5 points from 1 to 10
 * repetitions. The bend is estimated for each exercise, because repetitions at a percentage differ between exercises
 * more than between people (source key: nuzzo-2024).
 */
const PER_REPETITION = 30;

/** ln(1 + (x - 1) / 30): the logarithm of maximum over load, for a bend of 1. Defined above -29 repetitions. */
export function curveOf(repetitions: number): number {
  return Math.log1p((repetitions - 1) / PER_REPETITION);
}

/** How fast the curve rises at so many repetitions. */
export function curveSlope(repetitions: number): number {
  return 1 / (PER_REPETITION + repetitions - 1);
}

/** Repetitions at a value of the curve; below one where the load is above the maximum. */
export function repetitionsAt(curve: number): number {
  return 1 + PER_REPETITION * Math.expm1(curve);
}
