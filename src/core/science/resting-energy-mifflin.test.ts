import { describe, expect, it } from 'vitest';
import { restingMifflin, restingMifflinRounded, restingMifflinStudied } from './resting-energy-mifflin.ts';

/** Source: Mifflin MD, St Jeor ST, et al. Am J Clin Nutr 1990;51:241; worked by hand from the printed equations. */
describe('resting energy', () => {
  it.each([
    [{ sex: 'male', massKg: 90, heightCm: 178, age: 30 }, 1869.0, 1867.5],
    [{ sex: 'male', massKg: 80, heightCm: 180, age: 25 }, 1806.2, 1805],
    [{ sex: 'female', massKg: 60, heightCm: 165, age: 28 }, 1331.9, 1330.25],
  ] as const)('[EST-10] %o', (size, unrounded, rounded) => {
    expect(restingMifflin(size)).toBeCloseTo(unrounded, 1);
    expect(restingMifflinRounded(size)).toBeCloseTo(rounded, 6);
  });

  it('[EST-10] outside 19 to 78 years it says so', () => {
    const size = { sex: 'male', massKg: 80, heightCm: 180, age: 85 } as const;
    expect(restingMifflinStudied(size)).not.toEqual(restingMifflinStudied({ ...size, age: 40 }));
  });
});
