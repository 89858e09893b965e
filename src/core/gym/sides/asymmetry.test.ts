import { describe, expect, it } from 'vitest';
import { asymmetryPercent, symmetryAngle, symmetryIndex } from './asymmetry.ts';

// Formulas as catalogued in Bishop 2018; the figures are their arithmetic on 100 against 88.
describe('asymmetry by the index of its test', () => {
  it('[GYM-50] one side at a time: the difference over the stronger side (Bishop 2018): 12.00 %', () => {
    expect(asymmetryPercent(88, 100, 'one side at a time')).toBeCloseTo(12, 10);
    expect(asymmetryPercent(100, 88, 'one side at a time')).toBeCloseTo(-12, 10);
  });

  it('[GYM-50] both at once: the difference over the sum (Bishop 2018): 6.38 %', () => {
    expect(asymmetryPercent(88, 100, 'both at once')).toBeCloseTo(6.38, 2);
  });

  it('[GYM-50] symmetry index over the mean (Robinson 1987): 12.77 %; symmetry angle (Zifchock 2008): 4.06 %', () => {
    expect(symmetryIndex(88, 100)).toBeCloseTo(12.77, 2);
    expect(symmetryAngle(88, 100)).toBeCloseTo(4.06, 2);
  });

  it('[GYM-50] equal sides are nought by every index', () => {
    expect([asymmetryPercent(50, 50, 'both at once'), symmetryIndex(50, 50), symmetryAngle(50, 50)]).toEqual([
      0, 0, 0,
    ]);
  });
});
