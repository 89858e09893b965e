import type { Degrees, Kilograms, Metres, NewtonMetres } from '#core/units/quantities.ts';

/** Standard gravity, m/s2, by definition (third General Conference on Weights and Measures, 1901). */
export const STANDARD_GRAVITY = 9.80665;

/** A mass fixed to the lever: distance from the pivot, angle from the horizontal with the lever at nought degrees. */
export interface LeverMass {
  readonly massKg: Kilograms;
  readonly radiusM: Metres;
  readonly angleDeg: Degrees;
}

export interface DegreeRange {
  readonly fromDeg: Degrees;
  readonly toDeg: Degrees;
}

/** All masses of the lever as one: T(deg) = `amplitudeNm` x cos(deg + `phaseDeg`). */
export interface LeverLoad {
  readonly amplitudeNm: NewtonMetres;
  readonly phaseDeg: Degrees;
}

const RADIANS_PER_DEGREE = Math.PI / 180;

/**
 * Torque of gravity about the pivot, resisting the lift, for slow repetitions: T = g sum m r cos(deg + angle), one
 * cosine of the vector sum of the moments. Mechanics, no source needed. Below nought the load pulls along.
 */
export function leverLoad(masses: readonly LeverMass[]): LeverLoad {
  let [level, upright] = [0, 0];
  for (const { massKg, radiusM, angleDeg } of masses) {
    level += massKg * radiusM * Math.cos(angleDeg * RADIANS_PER_DEGREE);
    upright += massKg * radiusM * Math.sin(angleDeg * RADIANS_PER_DEGREE);
  }
  return {
    amplitudeNm: STANDARD_GRAVITY * Math.hypot(level, upright),
    phaseDeg: Math.atan2(upright, level) / RADIANS_PER_DEGREE,
  };
}

export function torqueAt({ amplitudeNm, phaseDeg }: LeverLoad, deg: Degrees): NewtonMetres {
  return amplitudeNm * Math.cos((deg + phaseDeg) * RADIANS_PER_DEGREE);
}

/** Work against gravity from one angle to another, joules: weight times the height gained. */
export function workBetween({ amplitudeNm, phaseDeg }: LeverLoad, range: DegreeRange): number {
  const sine = (deg: Degrees) => Math.sin((deg + phaseDeg) * RADIANS_PER_DEGREE);
  return amplitudeNm * (sine(range.toDeg) - sine(range.fromDeg));
}

/** Work of the parts of a range in which the load resists, joules; where it pulls along, nothing is lifted. */
export function liftingWork(load: LeverLoad, range: DegreeRange): number {
  let work = 0;
  for (const part of resistingParts(load, range)) work += workBetween(load, part);
  return work;
}

/** Where the load resists: the half turns around its level position that fall into the range. */
export function resistingParts(
  { phaseDeg }: LeverLoad,
  { fromDeg, toDeg }: DegreeRange,
): readonly DegreeRange[] {
  const parts: DegreeRange[] = [];
  const firstTurn = Math.floor((fromDeg + phaseDeg + 90) / 360);
  for (let turn = firstTurn; turn * 360 - 90 - phaseDeg < toDeg; turn++) {
    const part = {
      fromDeg: Math.max(fromDeg, turn * 360 - 90 - phaseDeg),
      toDeg: Math.min(toDeg, turn * 360 + 90 - phaseDeg),
    };
    if (part.toDeg > part.fromDeg) parts.push(part);
  }
  return parts;
}

/** Where in the range the load resists most: where the sum of moments is level, else at an end. */
export function hardest(
  load: LeverLoad,
  { fromDeg, toDeg }: DegreeRange,
): { deg: Degrees; torqueNm: NewtonMetres } {
  const level = -load.phaseDeg + 360 * Math.ceil((fromDeg + load.phaseDeg) / 360);
  const atEnd = torqueAt(load, toDeg) > torqueAt(load, fromDeg) ? toDeg : fromDeg;
  const deg = level <= toDeg ? level : atEnd;
  return { deg, torqueNm: torqueAt(load, deg) };
}

/** This near to the end of the range (degrees), what happens there is the end itself. */
const AT_THE_END: Degrees = 1e-9;

/**
 * Where the load stops resisting and begins to pull along ("over the top"); the start where it resists nowhere;
 * undefined where it resists to the end.
 */
export function passesOverAt(load: LeverLoad, range: DegreeRange): Degrees | undefined {
  const [first] = resistingParts(load, range);
  if (first === undefined) return range.fromDeg;
  return first.toDeg < range.toDeg - AT_THE_END ? first.toDeg : undefined;
}
