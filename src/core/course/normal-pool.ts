import { randomStream } from '#core/random/random-stream.ts';

/** A power of two, so that reading on wraps by a mask. */
export const POOL_BITS = 17;
export const POOL_SIZE = 1 << POOL_BITS;

/**
 * A table of standard normals, drawn once by seed. Each path reads on from a place of its own, so that a run over
 * thousands of paths and days costs no draws, and every run of the same seed meets the same chance (CRS-03).
 */
export function normalPool(seed: number, purpose: string): Float64Array {
  const stream = randomStream(seed, purpose);
  const pool = new Float64Array(POOL_SIZE);
  for (let i = 0; i < POOL_SIZE; i++) pool[i] = stream.normal();
  return pool;
}
