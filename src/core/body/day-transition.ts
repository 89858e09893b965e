import { BELIEFS } from './beliefs.ts';
import { BALANCE_SIZE } from './day-balance.ts';
import type { Transition } from './kalman.ts';
import { STATE, STATE_SIZE } from './state-layout.ts';

/** States that the model of a day reads, and the step by which each is moved to differentiate it. */
export const DRIVERS: readonly { readonly place: number; readonly step: number }[] = [
  { place: STATE.fat, step: 0.01 },
  { place: STATE.lean, step: 0.01 },
  { place: STATE.glycogen, step: 0.005 },
  { place: STATE.fluid, step: 0.01 },
  { place: STATE.adaptation, step: 1 },
  { place: STATE.baseline, step: 5 },
  { place: STATE.drift, step: 1 },
  { place: STATE.wobble, step: 1 },
  { place: STATE.trueShare, step: 0.002 },
  { place: STATE.partition, step: 0.01 },
  { place: STATE.carbohydrateFluid, step: 0.01 },
  { place: STATE.sodiumFluid, step: 0.01 },
  { place: STATE.cardioShare, step: 0.01 },
];

/** States that the model of a day moves, in the order of its results. */
export const MOVED: readonly number[] = [
  STATE.fat,
  STATE.lean,
  STATE.glycogen,
  STATE.fluid,
  STATE.adaptation,
  STATE.spent,
];

/** Share of a state that is left a day later; all others that the model does not move stay. */
export const KEPT: readonly (readonly [place: number, kept: number])[] = [
  [STATE.slowWater, BELIEFS.slowWater.kept],
  [STATE.gut, BELIEFS.gut.kept],
  [STATE.drift, BELIEFS.driftKeptPerDay],
  [STATE.wobble, BELIEFS.wobble.kept],
];

/** The derivative of a day: one row a result, one column a driver, row by row. */
export type DayJacobian = Float64Array;
export const JACOBIAN_SIZE = BALANCE_SIZE * DRIVERS.length;

const DRIVER_PLACES = Int32Array.from(DRIVERS, ({ place }) => place);
const MOVED_PLACES = Int32Array.from(MOVED);
/**
 * Places of the states that only fade, stay or shift down the days of what was spent, without those in `unused`: a
 * state that is known for certain and read by nothing costs no time.
 */
export function restingPlaces(unused: ReadonlySet<number>): Int32Array {
  const places = Array.from({ length: STATE_SIZE }, (_, place) => place);
  return Int32Array.from(places.filter((place) => !MOVED.includes(place) && !unused.has(place)));
}

/** Where each state comes from, and what is kept of it. */
const SOURCE = Int32Array.from({ length: STATE_SIZE }, (_, place) =>
  place > STATE.spent ? place - 1 : place,
);
const LEFT = Float64Array.from(
  { length: STATE_SIZE },
  (_, place) => KEPT.find(([kept]) => kept === place)?.[1] ?? 1,
);

/** The same derivative as rows of a linear map, for the smoother and for tests against the plain arithmetic. */
export function transitionOf(jacobian: DayJacobian): Transition {
  const width = DRIVERS.length;
  return Array.from({ length: STATE_SIZE }, (_, place) => {
    const result = MOVED.indexOf(place);
    if (result < 0) return { places: [SOURCE[place] ?? 0], factors: [LEFT[place] ?? 1] };
    return {
      places: [...DRIVER_PLACES],
      factors: [...jacobian.subarray(result * width, (result + 1) * width)],
    };
  });
}

/**
 * Covariance after the day: A P A' with A the derivative of the day, written out so that no state which only fades
 * costs more than its copy. `scratch` has the size of the covariance. A test holds it against the plain product.
 */
export function moveCovariance(
  covariance: Float64Array,
  jacobian: DayJacobian,
  resting: Int32Array,
  scratch: Float64Array,
): void {
  movedRows(covariance, jacobian, scratch);
  restingBlock(covariance, resting, scratch);
  const width = DRIVER_PLACES.length;
  for (let r = 0; r < MOVED_PLACES.length; r++) {
    const place = MOVED_PLACES[r] ?? 0;
    const row = place * STATE_SIZE;
    for (let q = 0; q <= r; q++) {
      const other = MOVED_PLACES[q] ?? 0;
      let sum = 0;
      for (let k = 0; k < width; k++)
        sum += (jacobian[q * width + k] ?? 0) * (scratch[row + (DRIVER_PLACES[k] ?? 0)] ?? 0);
      covariance[row + other] = sum;
      covariance[other * STATE_SIZE + place] = sum;
    }
    for (let k = 0; k < resting.length; k++) {
      const other = resting[k] ?? 0;
      const value = (LEFT[other] ?? 1) * (scratch[row + (SOURCE[other] ?? 0)] ?? 0);
      covariance[row + other] = value;
      covariance[other * STATE_SIZE + place] = value;
    }
  }
}

/** Rows of A P of the states that the model moves, into their rows of `scratch`. */
function movedRows(covariance: Float64Array, jacobian: DayJacobian, scratch: Float64Array): void {
  const width = DRIVER_PLACES.length;
  for (let r = 0; r < MOVED_PLACES.length; r++) {
    const target = (MOVED_PLACES[r] ?? 0) * STATE_SIZE;
    scratch.fill(0, target, target + STATE_SIZE);
    for (let k = 0; k < width; k++) {
      const factor = jacobian[r * width + k] ?? 0;
      if (factor === 0) continue;
      const source = (DRIVER_PLACES[k] ?? 0) * STATE_SIZE;
      for (let j = 0; j < STATE_SIZE; j++)
        scratch[target + j] = (scratch[target + j] ?? 0) + factor * (covariance[source + j] ?? 0);
    }
  }
}

/** The block of the states that only fade or shift, from high places to low so that a shift reads what it needs. */
function restingBlock(covariance: Float64Array, resting: Int32Array, scratch: Float64Array): void {
  for (let a = resting.length - 1; a >= 0; a--) {
    const i = resting[a] ?? 0;
    const from = (SOURCE[i] ?? 0) * STATE_SIZE;
    const left = LEFT[i] ?? 1;
    for (let b = a; b >= 0; b--) {
      const j = resting[b] ?? 0;
      scratch[i * STATE_SIZE + j] = left * (LEFT[j] ?? 1) * (covariance[from + (SOURCE[j] ?? 0)] ?? 0);
    }
  }
  for (let a = 0; a < resting.length; a++) {
    const i = resting[a] ?? 0;
    for (let b = 0; b <= a; b++) {
      const j = resting[b] ?? 0;
      const value = scratch[i * STATE_SIZE + j] ?? 0;
      covariance[i * STATE_SIZE + j] = value;
      covariance[j * STATE_SIZE + i] = value;
    }
  }
}
