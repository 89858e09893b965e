import { describe, expect, it } from 'vitest';
import { weighDoubt } from './weigh-in.ts';

describe('a weigh-in that looks like a slip', () => {
  it('[EST-60] pounds typed as kilograms are asked about', () => {
    expect(weighDoubt(141.1, 64)).toEqual({ kind: 'pounds as kilograms', meantKg: expect.closeTo(64, 1) });
    expect(weighDoubt(29.0, 64)).toEqual({ kind: 'kilograms as pounds', meantKg: expect.closeTo(63.9, 1) });
  });

  it('[EST-60] an ordinary morning is not', () => {
    for (const massKg of [62.2, 63.1, 64, 65.4, 66])
      expect(weighDoubt(massKg, 64), String(massKg)).toBeUndefined();
    expect(weighDoubt(64, undefined)).toBeUndefined();
    expect(weighDoubt(74, 64)).toEqual({ kind: 'far off' });
  });
});
