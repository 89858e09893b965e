/**
 * A Gaussian belief about a state vector: its mean and its covariance, row by row. Mutable on purpose: a filter
 * works through hundreds of days and must not allocate at each.
 */
export interface Gaussian {
  readonly size: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

export function gaussian(size: number): Gaussian {
  return { size, mean: new Float64Array(size), covariance: new Float64Array(size * size) };
}

export function copyGaussian(from: Gaussian): Gaussian {
  return { size: from.size, mean: from.mean.slice(), covariance: from.covariance.slice() };
}

/** A linear functional of the state: the places it reads and the factors it reads them with. */
export interface Row {
  readonly places: readonly number[];
  readonly factors: readonly number[];
}

export function meanAlong(belief: Gaussian, row: Row): number {
  let sum = 0;
  for (let k = 0; k < row.places.length; k++) {
    sum += (row.factors[k] ?? 0) * (belief.mean[row.places[k] ?? 0] ?? 0);
  }
  return sum;
}

/** Covariance of every state with the functional, into `out`. */
export function covarianceWith(belief: Gaussian, row: Row, out: Float64Array): void {
  const { size, covariance } = belief;
  out.fill(0);
  for (let k = 0; k < row.places.length; k++) {
    const factor = row.factors[k] ?? 0;
    const start = (row.places[k] ?? 0) * size;
    for (let j = 0; j < size; j++) out[j] = (out[j] ?? 0) + factor * (covariance[start + j] ?? 0);
  }
}

/** Variance of a functional that has been through `covarianceWith`. */
export function dotRow(row: Row, values: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < row.places.length; k++) {
    sum += (row.factors[k] ?? 0) * (values[row.places[k] ?? 0] ?? 0);
  }
  return sum;
}

/** Variance of a functional of the state. */
export function varianceAlong(belief: Gaussian, row: Row): number {
  const { size, covariance } = belief;
  let sum = 0;
  for (let i = 0; i < row.places.length; i++) {
    const start = (row.places[i] ?? 0) * size;
    for (let j = 0; j < row.places.length; j++) {
      sum += (row.factors[i] ?? 0) * (row.factors[j] ?? 0) * (covariance[start + (row.places[j] ?? 0)] ?? 0);
    }
  }
  return Math.max(0, sum);
}

/** Adds `variance` times the outer product of `direction` to the covariance. */
export function spread(belief: Gaussian, direction: Row, variance: number): void {
  const { size, covariance } = belief;
  for (let i = 0; i < direction.places.length; i++) {
    const start = (direction.places[i] ?? 0) * size;
    const scaled = variance * (direction.factors[i] ?? 0);
    for (let j = 0; j < direction.places.length; j++) {
      const at = start + (direction.places[j] ?? 0);
      covariance[at] = (covariance[at] ?? 0) + scaled * (direction.factors[j] ?? 0);
    }
  }
}
