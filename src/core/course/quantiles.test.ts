import { describe, expect, it } from 'vitest';
import { meanOf, quantileOf, spreadOf, standardDeviationOf } from './quantiles.ts';

describe('quantiles', () => {
  it('[CRS-02] quantiles are those of type 7 (Hyndman and Fan 1996, Am Stat 50:361; default of R): 1..5 at 5 % is 1.2', () => {
    const sorted = Float64Array.of(1, 2, 3, 4, 5);
    expect(quantileOf(sorted, 0.05)).toBeCloseTo(1.2, 12);
    expect(quantileOf(sorted, 0.5)).toBe(3);
    expect(quantileOf(sorted, 1)).toBe(5);
  });

  it('[CRS-02] a spread sorts a copy and rounds', () => {
    const values = Float64Array.of(5, 1, 4, 2, 3);
    expect(spreadOf(values, 2)).toEqual({ mean: 3, q05: 1.2, q95: 4.8 });
    expect([...values]).toEqual([5, 1, 4, 2, 3]);
  });

  it('[CRS-02] mean and standard deviation (n - 1)', () => {
    expect(meanOf(Float64Array.of(2, 4, 4, 4, 5, 5, 7, 9))).toBe(5);
    expect(standardDeviationOf(Float64Array.of(2, 4, 4, 4, 5, 5, 7, 9))).toBeCloseTo(Math.sqrt(32 / 7), 12);
    expect(meanOf(new Float64Array(0))).toBe(0);
    expect(standardDeviationOf(Float64Array.of(3))).toBe(0);
  });
});
