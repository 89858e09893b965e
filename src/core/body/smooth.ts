import type { Gaussian, Row } from './gaussian.ts';
import type { Transition, Update } from './kalman.ts';
import { STATE, STATE_SIZE } from './state-layout.ts';

/**
 * What later readings say about an earlier belief: the adjoint vector and matrix of the modified Bryson-Frazier
 * smoother (bryson-frazier-1963, bierman-1973). It needs no inverse of a covariance, so states that are copies of
 * one another do not trouble it.
 */
export interface Adjoint {
  readonly size: number;
  readonly vector: Float64Array;
  readonly matrix: Float64Array;
}

export function emptyAdjoint(size: number = STATE_SIZE): Adjoint {
  return { size, vector: new Float64Array(size), matrix: new Float64Array(size * size) };
}

/** Carries the adjoint back over one reading: (I - K H)' L (I - K H) + H' H / S, and its vector. */
export function backOverUpdate(adjoint: Adjoint, { row, gain, innovation, variance }: Update): void {
  const { size, vector, matrix } = adjoint;
  const along = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += (matrix[i * size + j] ?? 0) * (gain[j] ?? 0);
    along[i] = sum;
  }
  const gainVector = dot(gain, vector);
  const gainAlong = dot(gain, along);
  for (let a = 0; a < row.places.length; a++) {
    const place = row.places[a] ?? 0;
    const factor = row.factors[a] ?? 0;
    vector[place] = (vector[place] ?? 0) - factor * (gainVector + innovation / variance);
    for (let j = 0; j < size; j++) {
      const taken = factor * (along[j] ?? 0);
      matrix[place * size + j] = (matrix[place * size + j] ?? 0) - taken;
      matrix[j * size + place] = (matrix[j * size + place] ?? 0) - taken;
    }
  }
  const both = gainAlong + 1 / variance;
  for (let a = 0; a < row.places.length; a++) {
    for (let b = 0; b < row.places.length; b++) {
      const at = (row.places[a] ?? 0) * size + (row.places[b] ?? 0);
      matrix[at] = (matrix[at] ?? 0) + both * (row.factors[a] ?? 0) * (row.factors[b] ?? 0);
    }
  }
}

/** Carries the adjoint back over a day: A' l and A' L A. */
export function backOverDay(adjoint: Adjoint, transition: Transition): void {
  const { size, vector, matrix } = adjoint;
  const back = new Float64Array(size);
  const half = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    const row = transition[i];
    if (!row) continue;
    for (let k = 0; k < row.places.length; k++) {
      const place = row.places[k] ?? 0;
      const factor = row.factors[k] ?? 0;
      back[place] = (back[place] ?? 0) + factor * (vector[i] ?? 0);
      for (let j = 0; j < size; j++)
        half[place * size + j] = (half[place * size + j] ?? 0) + factor * (matrix[i * size + j] ?? 0);
    }
  }
  vector.set(back);
  matrix.fill(0);
  for (let j = 0; j < size; j++) {
    const row = transition[j];
    if (!row) continue;
    for (let k = 0; k < row.places.length; k++) {
      const place = row.places[k] ?? 0;
      const factor = row.factors[k] ?? 0;
      for (let i = 0; i < size; i++)
        matrix[i * size + place] = (matrix[i * size + place] ?? 0) + factor * (half[i * size + j] ?? 0);
    }
  }
}

/** Before a new scale nothing is learnt from what its offset turned out to be. */
export function backOverNewScale({ size, vector, matrix }: Adjoint): void {
  const place = STATE.scaleOffset;
  vector[place] = 0;
  for (let i = 0; i < size; i++) {
    matrix[place * size + i] = 0;
    matrix[i * size + place] = 0;
  }
}

/** Mean and variance of a functional in the light of what came later: m - P l and P - P L P along the row. */
export function smoothedAlong(
  belief: Gaussian,
  adjoint: Adjoint,
  row: Row,
): { readonly mean: number; readonly variance: number } {
  const { size, mean, covariance } = belief;
  const cross = new Float64Array(size);
  let expected = 0;
  let variance = 0;
  for (let k = 0; k < row.places.length; k++) {
    const place = row.places[k] ?? 0;
    const factor = row.factors[k] ?? 0;
    expected += factor * (mean[place] ?? 0);
    for (let j = 0; j < size; j++) cross[j] = (cross[j] ?? 0) + factor * (covariance[place * size + j] ?? 0);
  }
  for (let k = 0; k < row.places.length; k++)
    variance += (row.factors[k] ?? 0) * (cross[row.places[k] ?? 0] ?? 0);
  expected -= dot(cross, adjoint.vector);
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += (adjoint.matrix[i * size + j] ?? 0) * (cross[j] ?? 0);
    variance -= (cross[i] ?? 0) * sum;
  }
  return { mean: expected, variance: Math.max(0, variance) };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
