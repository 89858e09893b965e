import { curveOf, curveSlope } from './repetition-curve.ts';
import { STRENGTH_BELIEFS } from './strength-beliefs.ts';

/** A set as the estimate takes it in. */
export interface StrengthSet {
  /** Whole days since 1970-01-01. */
  readonly dayNumber: number;
  /** Sets of one session share the form of the day. */
  readonly session: string;
  /** What was moved, in figures that compare within the series; above nought. */
  readonly loadKg: number;
  readonly reps: number;
  /** Repetitions left, as felt; absent: not said. */
  readonly rir?: number | undefined;
  /** Hard sets before it in the session, see `precedingWork`. */
  readonly before: number;
  /** Body mass of the day, where it is known. */
  readonly massKg?: number | undefined;
}

/** Places in the state: level, form of the day, fatigue, bend of the curve; then one copy of the level for each mark. */
export const LEVEL = 0;
export const FORM = 1;
export const FATIGUE = 2;
export const BEND = 3;
const FIRST_MARK = 4;

/** The belief about one series of comparable sets. A value: taking a set in gives a new one. */
export interface StrengthBelief {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly dayNumber: number;
  readonly session: string;
  /** Body mass the level refers to; undefined until one was known. */
  readonly massKg: number | undefined;
  /** Days whose level is kept as a copy; those still to come are not copied yet. */
  readonly marks: readonly number[];
  readonly marked: number;
  readonly sets: number;
  /** Surprises seen, squared and summed, and how many: how much wider or narrower this log is than believed. */
  readonly surprises: number;
  readonly counted: number;
}

export interface Normal {
  readonly mean: number;
  readonly sd: number;
}

/**
 * The belief after the first set of a series, with days whose level will be remembered, ascending. Before it nothing
 * was known of the level, so the level is what the set says: ln load + bend x curve + fatigue - form, with their errors.
 */
export function openBelief(
  first: StrengthSet,
  marks: readonly number[] = [],
  usualReserve?: Normal,
): StrengthBelief {
  const { formSd, fatigue, bend } = STRENGTH_BELIEFS;
  const { curve, errorCurve } = curveOfSet(first, usualReserve);
  // The level as a sum over form, fatigue and bend; the covariance follows from theirs.
  const factors = [0, -1, first.before, curve];
  const variances = [0, formSd ** 2, fatigue.sd ** 2, bend.sd ** 2];
  const shared = variances.map((variance, i) => variance * (factors[i] ?? 0));
  const level = dot(shared, factors) + (bend.mean * errorCurve) ** 2;
  const covariance = variances.map((variance, i) =>
    variances.map((_, j) =>
      i === LEVEL && j === LEVEL
        ? level
        : i === LEVEL
          ? (shared[j] ?? 0)
          : j === LEVEL
            ? (shared[i] ?? 0)
            : i === j
              ? variance
              : 0,
    ),
  );
  const opened: StrengthBelief = {
    mean: [
      Math.log(first.loadKg) + bend.mean * curve + fatigue.mean * first.before,
      0,
      fatigue.mean,
      bend.mean,
    ],
    covariance,
    dayNumber: first.dayNumber,
    session: first.session,
    massKg: first.massKg,
    marks,
    marked: 0,
    sets: 1,
    surprises: STRENGTH_BELIEFS.scaleWorth,
    counted: STRENGTH_BELIEFS.scaleWorth,
  };
  return passTo(opened, first.dayNumber, first.session);
}

/** Lets time pass: the level drifts, marks that are reached are copied, a new session has a new form. */
export function passTo(belief: StrengthBelief, dayNumber: number, session: string): StrengthBelief {
  let next = belief;
  for (let mark = belief.marks[belief.marked]; mark !== undefined && mark <= dayNumber; ) {
    next = copyLevel(drift(next, Math.max(0, mark - next.dayNumber)));
    mark = belief.marks[next.marked];
  }
  next = drift(next, Math.max(0, dayNumber - next.dayNumber));
  return session === belief.session ? next : withNewForm({ ...next, session });
}

function drift(belief: StrengthBelief, days: number): StrengthBelief {
  if (days === 0) return belief;
  const variance = days * STRENGTH_BELIEFS.driftSdPerDay ** 2;
  const covariance = belief.covariance.map((row, i) =>
    row.map((value, j) => (i === LEVEL && j === LEVEL ? value + variance : value)),
  );
  return { ...belief, covariance, dayNumber: belief.dayNumber + days };
}

function copyLevel(belief: StrengthBelief): StrengthBelief {
  const { mean, covariance } = belief;
  const copied = covariance.map((row) => [...row, row[LEVEL] ?? 0]);
  const last = [...(covariance[LEVEL] ?? []), covariance[LEVEL]?.[LEVEL] ?? 0];
  return {
    ...belief,
    mean: [...mean, mean[LEVEL] ?? 0],
    covariance: [...copied, last],
    marked: belief.marked + 1,
  };
}

function withNewForm(belief: StrengthBelief): StrengthBelief {
  const own = STRENGTH_BELIEFS.formSd ** 2;
  return {
    ...belief,
    mean: belief.mean.map((value, i) => (i === FORM ? 0 : value)),
    covariance: belief.covariance.map((row, i) =>
      row.map((value, j) => (i === FORM || j === FORM ? (i === j ? own : 0) : value)),
    ),
  };
}

/** What a set was against what was believed just before it. */
export interface TakenIn {
  readonly belief: StrengthBelief;
  /** Distance from what was expected, in its standard deviations; beyond 3 it is suspect and counts for less. */
  readonly surprise: number;
}

/** Sets with more repetitions than this to failure say little of strength. */
const MOST_REPS = 40;
/** Beyond so many standard deviations a set is taken as a slip or another machine, and counts for less. */
const SUSPECT = 3;

/**
 * Takes a set in. The load is known exactly and the repetitions are what varies, so the repetitions are the
 * observation: curve(repetitions to failure) = (level + form - fatigue x sets before - ln load) / bend. One step of the
 * extended Kalman filter (source key: kalman-1960) with the error of the repetitions, done and felt to be left.
 */
export function takeIn(before: StrengthBelief, set: StrengthSet, usualReserve?: Normal): TakenIn {
  const belief = withMass(passTo(before, set.dayNumber, set.session), set.massKg);
  const { curve, errorCurve } = curveOfSet(set, usualReserve);
  const { expected, factors } = expectedCurve(belief, set.loadKg, set);
  const cross = belief.covariance.map((row) => dot(row, factors));
  const ownVariance = dot(cross, factors) + errorCurve ** 2;
  const innovation = curve - expected;
  const surprise = innovation / Math.sqrt(ownVariance);
  const variance = Math.abs(surprise) > SUSPECT ? innovation ** 2 / SUSPECT ** 2 : ownVariance;
  const gain = cross.map((value) => value / variance);
  return {
    belief: {
      ...belief,
      mean: belief.mean.map((value, i) => value + (gain[i] ?? 0) * innovation),
      covariance: belief.covariance.map((row, i) =>
        row.map((value, j) => value - (gain[i] ?? 0) * (cross[j] ?? 0)),
      ),
      sets: belief.sets + 1,
      ...tally(belief, surprise),
    },
    surprise,
  };
}

/** The curve's value that a set showed, and its error. */
function curveOfSet(set: StrengthSet, usualReserve?: Normal): { curve: number; errorCurve: number } {
  const reserve = reserveOf(set, usualReserve);
  const reached = Math.min(MOST_REPS, set.reps + reserve.mean) + HALF;
  return {
    curve: curveOf(reached),
    errorCurve: curveSlope(reached) * Math.hypot(repsSd(reached), reserve.sd),
  };
}

/** The curve's value that a load is expected to allow, and how it depends on the state. */
export function expectedCurve(
  belief: StrengthBelief,
  loadKg: number,
  { before, massKg }: { readonly before: number; readonly massKg?: number | undefined },
): { expected: number; factors: readonly number[] } {
  const bend = bendOf(belief);
  const level = belief.mean.map((_, i) => (i === LEVEL || i === FORM ? 1 : i === FATIGUE ? -before : 0));
  const expected = (dot(belief.mean, level) + massShare(belief, massKg) - Math.log(loadKg)) / bend;
  return { expected, factors: level.map((value, i) => (i === BEND ? -expected : value) / bend) };
}

/** The first sets find the level and the curve; their surprises say little of the noise. */
const SETTLING_SETS = 4;

function tally(belief: StrengthBelief, surprise: number): { surprises: number; counted: number } {
  const { surprises, counted } = belief;
  if (belief.sets < SETTLING_SETS) return { surprises, counted };
  const { scaleKept } = STRENGTH_BELIEFS;
  return {
    surprises: scaleKept * surprises + Math.min(SUSPECT, Math.abs(surprise)) ** 2,
    counted: scaleKept * counted + 1,
  };
}

/** How much wider than believed this log has been: all its noise is taken to be wider alike. */
export function widthOf({ surprises, counted }: StrengthBelief): number {
  return Math.sqrt(surprises / counted);
}

/** A set of n repetitions to failure shows that n were possible and n + 1 were not: half a repetition between. */
export const HALF = 0.5;

function bendOf(belief: StrengthBelief): number {
  return Math.max(0.5, belief.mean[BEND] ?? STRENGTH_BELIEFS.bend.mean);
}

export function repsSd(reps: number): number {
  return STRENGTH_BELIEFS.repsSd.least + STRENGTH_BELIEFS.repsSd.perRep * reps;
}

function reserveOf({ rir }: StrengthSet, usual: Normal = UNKNOWN_RESERVE): Normal {
  if (rir === undefined) return usual;
  const { least, perReserve } = STRENGTH_BELIEFS.reserveSd;
  return { mean: rir, sd: least + perReserve * rir };
}
const UNKNOWN_RESERVE: Normal = STRENGTH_BELIEFS.unknownReserve;

export function withMass(belief: StrengthBelief, massKg: number | undefined): StrengthBelief {
  return belief.massKg === undefined && massKg !== undefined ? { ...belief, massKg } : belief;
}

/** What the change of body mass is expected to do to the level. */
export function massShare(belief: StrengthBelief, massKg: number | undefined): number {
  if (massKg === undefined || belief.massKg === undefined) return 0;
  return STRENGTH_BELIEFS.perMassShare * Math.log(massKg / belief.massKg);
}

export function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}

/** Level now against the level at a mark, as a logarithm: both from the same sets, so what they share cancels. */
export function changeSince(belief: StrengthBelief, mark: number): Normal | undefined {
  const place = FIRST_MARK + mark;
  if (mark < 0 || mark >= belief.marked) return undefined;
  const at = (i: number, j: number) => belief.covariance[i]?.[j] ?? 0;
  const variance = at(LEVEL, LEVEL) + at(place, place) - 2 * at(LEVEL, place);
  return {
    mean: (belief.mean[LEVEL] ?? 0) - (belief.mean[place] ?? 0),
    sd: Math.sqrt(Math.max(0, variance)),
  };
}
