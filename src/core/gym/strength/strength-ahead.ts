import { curveOf, curveSlope, repetitionsAt } from './repetition-curve.ts';
import {
  BEND,
  dot,
  expectedCurve,
  FATIGUE,
  FORM,
  HALF,
  LEVEL,
  massShare,
  passTo,
  repsSd,
  widthOf,
  withMass,
  type Normal,
  type StrengthBelief,
} from './strength-filter.ts';

/** Circumstances of a set to come. */
export interface SetAhead {
  readonly dayNumber: number;
  readonly session: string;
  readonly before: number;
  readonly massKg?: number | undefined;
}

/** Repetitions to failure at a load, as a normal distribution of the curve's value. */
export interface RepsAhead {
  /** Whole repetitions: the middle, and the bounds that nine of ten sets stay within. */
  readonly median: number;
  readonly q05: number;
  readonly q95: number;
  /** Before rounding down to whole ones. */
  readonly expected: number;
  /** Chance of at least so many. */
  readonly chanceOf: (reps: number) => number;
}

const NINETY_PERCENT = 1.6448536;

/** Expected repetitions to failure with a load (GYM-24). */
export function repsAhead(before: StrengthBelief, loadKg: number, ahead: SetAhead): RepsAhead {
  const belief = withMass(passTo(before, ahead.dayNumber, ahead.session), ahead.massKg);
  const { expected: curve, factors } = expectedCurve(belief, loadKg, ahead);
  const own = belief.covariance.reduce((sum, row, i) => sum + (factors[i] ?? 0) * dot(row, factors), 0);
  const reps = repetitionsAt(curve);
  const within = curveSlope(Math.max(1, reps)) * repsSd(Math.max(1, reps));
  const sd = widthOf(belief) * Math.hypot(Math.sqrt(Math.max(0, own)), within);
  const whole = (value: number) => Math.max(0, Math.floor(repetitionsAt(value)));
  return {
    median: whole(curve),
    q05: whole(curve - NINETY_PERCENT * sd),
    q95: whole(curve + NINETY_PERCENT * sd),
    expected: Math.max(0, reps),
    chanceOf: (wanted) => 1 - normalBelow((curveOf(Math.max(0, wanted)) - curve) / sd),
  };
}

/** The heaviest load for so many repetitions to failure, in kilograms with its standard deviation in logarithms. */
export function loadAhead(
  before: StrengthBelief,
  reps: number,
  ahead: SetAhead,
): Normal & { readonly loadKg: number } {
  const belief = withMass(passTo(before, ahead.dayNumber, ahead.session), ahead.massKg);
  const curve = curveOf(reps + HALF);
  const factors = belief.mean.map((_, i) =>
    i === LEVEL || i === FORM ? 1 : i === FATIGUE ? -ahead.before : i === BEND ? -curve : 0,
  );
  const mean = dot(belief.mean, factors) + massShare(belief, ahead.massKg);
  const own = belief.covariance.reduce((sum, row, i) => sum + (factors[i] ?? 0) * dot(row, factors), 0);
  return { mean, sd: widthOf(belief) * Math.sqrt(Math.max(0, own)), loadKg: Math.exp(mean) };
}

/**
 * Logarithm of the load for so many repetitions to failure, rested and on a usual day. Near the repetitions that were
 * trained it is known better than the maximum, because the bend of the curve hardly matters there.
 */
export function levelAt(belief: StrengthBelief, reps: number): Normal {
  const curve = curveOf(reps + HALF);
  const factors = belief.mean.map((_, i) => (i === LEVEL ? 1 : i === BEND ? -curve : 0));
  const variance = belief.covariance.reduce((sum, row, i) => sum + (factors[i] ?? 0) * dot(row, factors), 0);
  return { mean: dot(belief.mean, factors), sd: widthOf(belief) * Math.sqrt(Math.max(0, variance)) };
}

/** Distribution function of the standard normal: Abramowitz and Stegun 1964, 26.2.17, error below 7.5e-8. */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}
