import { describe, expect, it } from 'vitest';
import { runSeries } from './run-series.ts';
import { repsAhead } from './strength-ahead.ts';
import type { StrengthSet } from './strength-filter.ts';

const set = (loadKg: number, reps: number, place: number, more: Partial<StrengthSet> = {}): StrengthSet => ({
  dayNumber: 21_000,
  session: 'first',
  loadKg,
  reps,
  before: place,
  ...more,
});

function expectedAt(loadKg: number, sets: readonly StrengthSet[]): number {
  const { belief } = runSeries(sets);
  if (!belief) throw new Error('no belief');
  return repsAhead(belief, loadKg, { dayNumber: 21_003, session: 'next', before: 0 }).median;
}

describe('the first sets of a series', () => {
  it('[GYM-23] light sets logged first do not hide strength that a far heavier one shows', () => {
    const light = set(20, 10, 0);
    expect(expectedAt(100, [light, set(100, 8, 1)])).toBeGreaterThanOrEqual(6);
    expect(expectedAt(100, [light, set(20, 10, 1), set(100, 8, 2)])).toBeGreaterThanOrEqual(6);
  });

  it('[GYM-23] once it is known what is lifted, one set far too heavy is a slip of the thumb', () => {
    const known = [0, 1, 2, 3, 4].map((place) => set(100, 8, place, { rir: 1 }));
    const { suspects } = runSeries([...known, set(220, 8, 5, { rir: 1 })]);
    expect(suspects).toHaveLength(1);
    expect(expectedAt(100, [...known, set(220, 8, 5, { rir: 1 })])).toBeLessThan(14);
  });
});
