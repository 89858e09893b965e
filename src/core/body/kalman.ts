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

/** A linear map of the state to the next day's: its rows, each reading few places. */
export type Transition = readonly Row[];

/**
 * Predict step: mean by the transition, covariance A P A' (noise is added by `spread`). Kalman 1960.
 * `scratch` has the size of the covariance.
 */
export function predict(belief: Gaussian, transition: Transition, scratch: Float64Array): void {
  const mean = transition.map((row) => meanAlong(belief, row));
  belief.mean.set(mean);
  propagateCovariance(belief, transition, scratch);
}

/** Covariance half of the predict step, for a mean that was moved by a nonlinear model. */
export function propagateCovariance(belief: Gaussian, transition: Transition, scratch: Float64Array): void {
  const { size, covariance } = belief;
  mapRows(transition, covariance, scratch, size);
  mapColumns(transition, scratch, covariance, size);
}

function mapRows(transition: Transition, from: Float64Array, to: Float64Array, size: number): void {
  for (let i = 0; i < size; i++) {
    const row = transition[i];
    if (!row) continue;
    const target = i * size;
    for (let j = 0; j < size; j++) to[target + j] = 0;
    for (let k = 0; k < row.places.length; k++) {
      const factor = row.factors[k] ?? 0;
      const source = (row.places[k] ?? 0) * size;
      for (let j = 0; j < size; j++) to[target + j] = (to[target + j] ?? 0) + factor * (from[source + j] ?? 0);
    }
  }
}

function mapColumns(transition: Transition, from: Float64Array, to: Float64Array, size: number): void {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const row = transition[j];
      if (!row) continue;
      let sum = 0;
      for (let k = 0; k < row.places.length; k++) {
        sum += (row.factors[k] ?? 0) * (from[i * size + (row.places[k] ?? 0)] ?? 0);
      }
      to[i * size + j] = sum;
    }
  }
}

/**
 * Update step with one scalar reading; the belief is changed in place. Kalman 1960; several readings of a day are
 * taken in one after the other. `innovation` is the reading minus its expectation, `noise` the reading's variance.
 */
export function update(belief: Gaussian, row: Row, innovation: number, noise: number): Update {
  const { size, mean, covariance } = belief;
  const cross = new Float64Array(size);
  covarianceWith(belief, row, cross);
  const variance = dotRow(row, cross) + noise;
  const gain = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    gain[i] = (cross[i] ?? 0) / variance;
    mean[i] = (mean[i] ?? 0) + (gain[i] ?? 0) * innovation;
  }
  for (let i = 0; i < size; i++) {
    const factor = gain[i] ?? 0;
    if (factor === 0) continue;
    for (let j = 0; j < size; j++) {
      const at = i * size + j;
      covariance[at] = (covariance[at] ?? 0) - factor * (cross[j] ?? 0);
    }
  }
  return { row, gain, innovation, variance };
}

/** Logarithm of the Gaussian density of an innovation. */
export function logDensity(innovation: number, variance: number): number {
  return -0.5 * (Math.log(2 * Math.PI * variance) + (innovation * innovation) / variance);
}
