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
  const mean = transition.map((row) => meanAlong(belief, row));
  propagateCovariance(belief, transition);
  belief.mean.set(mean);
}

/** Covariance half of the predict step: the plain product that `moveCovariance` is held against. */
export function propagateCovariance(belief: Gaussian, transition: Transition): void {
  const { size, covariance } = belief;
  const half = new Float64Array(size * size);
  for (const [i, { places, factors }] of transition.entries())
    for (const [k, place] of places.entries())
      for (let j = 0; j < size; j++)
        half[i * size + j] =
          (half[i * size + j] ?? 0) + (factors[k] ?? 0) * (covariance[place * size + j] ?? 0);
  for (let i = 0; i < size; i++)
    for (const [j, { places, factors }] of transition.entries())
      covariance[i * size + j] = places.reduce(
        (sum, place, k) => sum + (factors[k] ?? 0) * (half[i * size + place] ?? 0),
        0,
      );
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
