import { covarianceWith, dotRow, type Gaussian, meanAlong, type Row } from './gaussian.ts';

/** How one scalar reading was taken in: kept for the smoother. */
export interface Update {
  readonly row: Row;
  /** Gain, one a state. */
  readonly gain: Float64Array;
  /** Reading minus what was expected. */
  readonly innovation: number;
  /** Variance of the innovation. */
  readonly variance: number;
}

/** A linear map of the state to the next day's: one row a state, each reading few places. */
export type Transition = readonly Row[];

/** Predict step of a linear model: mean A m, covariance A P A' (noise is added by `spread`). Source: kalman-1960. */
export function predict(belief: Gaussian, transition: Transition): void {
  belief.mean.set(transition.map((row) => meanAlong(belief, row)));
  propagateCovariance(belief, transition, new Float64Array(belief.size * belief.size));
}

/**
 * Covariance half of the predict step, for a mean that a nonlinear model has moved (extended Kalman filter).
 * `scratch` has the size of the covariance.
 */
export function propagateCovariance(belief: Gaussian, transition: Transition, scratch: Float64Array): void {
  const { size, covariance } = belief;
  for (let i = 0; i < size; i++) combineRows(transition[i], covariance, scratch, i, size);
  for (let j = 0; j < size; j++) {
    const row = transition[j];
    if (!row) continue;
    for (let i = j; i < size; i++) {
      const sum = dotAt(row, scratch, i * size);
      covariance[i * size + j] = sum;
      covariance[j * size + i] = sum;
    }
  }
}

/** Row `target` of `to` as the sum of the rows of `from` that the transition's row reads. */
function combineRows(
  row: Row | undefined,
  from: Float64Array,
  to: Float64Array,
  target: number,
  size: number,
): void {
  if (!row) return;
  const start = target * size;
  const { places, factors } = row;
  for (let k = 0; k < places.length; k++) {
    const factor = factors[k] ?? 0;
    const source = (places[k] ?? 0) * size;
    if (k === 0) for (let j = 0; j < size; j++) to[start + j] = factor * (from[source + j] ?? 0);
    else if (factor !== 0)
      for (let j = 0; j < size; j++) to[start + j] = (to[start + j] ?? 0) + factor * (from[source + j] ?? 0);
  }
}

function dotAt({ places, factors }: Row, values: Float64Array, start: number): number {
  let sum = 0;
  for (let k = 0; k < places.length; k++) sum += (factors[k] ?? 0) * (values[start + (places[k] ?? 0)] ?? 0);
  return sum;
}

/**
 * Update step with one scalar reading; the belief is changed in place. Source: kalman-1960. Several readings of a day
 * are taken in one after the other. `innovation` is the reading less its expectation, `noise` the reading's variance.
 */
export function update(belief: Gaussian, row: Row, innovation: number, noise: number): Update {
  const { size, mean, covariance } = belief;
  const cross = new Float64Array(size);
  covarianceWith(belief, row, cross);
  const variance = dotRow(row, cross) + noise;
  const gain = cross.map((value) => value / variance);
  for (let i = 0; i < size; i++) {
    const factor = gain[i] ?? 0;
    if (factor === 0) continue;
    mean[i] = (mean[i] ?? 0) + factor * innovation;
    for (let j = 0; j <= i; j++) {
      const value = (covariance[i * size + j] ?? 0) - factor * (cross[j] ?? 0);
      covariance[i * size + j] = value;
      covariance[j * size + i] = value;
    }
  }
  return { row, gain, innovation, variance };
}

/** Logarithm of the Gaussian density of an innovation. */
export function logDensity(innovation: number, variance: number): number {
  return -0.5 * (Math.log(2 * Math.PI * variance) + (innovation * innovation) / variance);
}
