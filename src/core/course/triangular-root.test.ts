import { describe, expect, it } from 'vitest';
import { triangularRoot } from './triangular-root.ts';

function product(root: Float64Array, size: number): number[] {
  const out: number[] = [];
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      let sum = 0;
      for (let k = 0; k < size; k++) sum += (root[i * size + k] ?? 0) * (root[j * size + k] ?? 0);
      out.push(sum);
    }
  return out;
}

describe('triangularRoot', () => {
  it('[CRS-02] the root of the textbook matrix (4 12 -16; 12 37 -43; -16 -43 98) is (2; 6 1; -8 5 3)', () => {
    const root = triangularRoot(Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98), 3);
    expect([...root]).toEqual([2, 0, 0, 6, 1, 0, -8, 5, 3]);
  });

  it('[CRS-02] a certain state and a mixture of earlier ones have a root too', () => {
    const matrix = [1, 0, 1, 0, 0, 0, 1, 0, 1];
    const root = triangularRoot(Float64Array.from(matrix), 3);
    product(root, 3).forEach((value, i) => expect(value).toBeCloseTo(matrix[i] ?? Number.NaN, 12));
  });
});
