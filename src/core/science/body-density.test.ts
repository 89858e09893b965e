import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brozek } from './brozek.ts';
import { girthsToDensity } from './girths-to-density.ts';
import { siri } from './siri.ts';
import { skinfoldFourSites } from './skinfold-four-sites.ts';
import { skinfoldSevenSites } from './skinfold-seven-sites.ts';
import { skinfoldThreeSites } from './skinfold-three-sites.ts';
import type { Studied } from './studied-range.ts';

function valueOf(answer: Studied<number>): number {
  if (!answer.studied) throw new Error(`outside: ${answer.outside.quantity}`);
  return answer.value;
}
const fatOf = (density: Studied<number>) => valueOf(siri(valueOf(density)));

describe('fat from density', () => {
  it('[EST-23] Siri 1961 and Brozek 1963 at four densities', () => {
    const rows = [
      [1.05, 21.43, 21.04],
      [1.07, 12.62, 12.9],
      [1.085, 6.22, 7],
      [1.0958, 1.72, 2.85],
    ] as const;
    for (const [density, bySiri, byBrozek] of rows) {
      expect(valueOf(siri(density))).toBeCloseTo(bySiri, 1.9);
      expect(valueOf(brozek(density))).toBeCloseTo(byBrozek, 1.9);
    }
  });

  it('[EST-23] the columns of the 252-man set from its densities (Johnson 1996; X16)', () => {
    // case: density, Siri, Brozek as printed
    const rows = [
      [1, 1.0708, 12.3, 12.6],
      [2, 1.0853, 6.1, 6.9],
      [9, 1.09, 4.1, 5.1],
      [36, 1.0101, 40.1, 38.2],
      [172, 1.0983, 0.7, 1.9],
      [216, 0.995, 47.5, 45.1],
    ] as const;
    for (const [, density, bySiri, byBrozek] of rows) {
      expect(Math.abs(valueOf(siri(density)) - bySiri)).toBeLessThan(0.15);
      expect(Math.abs(valueOf(brozek(density)) - byBrozek)).toBeLessThan(0.15);
    }
  });

  it('[EST-23] Brozek reads above Siri below about 17 % fat, and fat falls as density rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.062, max: 1.1, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.01, noNaN: true }),
        (density, more) => {
          expect(valueOf(brozek(density))).toBeGreaterThan(valueOf(siri(density)));
          expect(valueOf(siri(density + more))).toBeLessThan(valueOf(siri(density)));
        },
      ),
      { seed: 20270111 },
    );
  });
});

describe('density from skinfolds', () => {
  it('[EST-23] seven sites (Jackson and Pollock 1978; Jackson, Pollock and Ward 1980), worked by hand', () => {
    const rows = [
      ['male', 50, 30, 1.082978, 7.07],
      ['male', 120, 25, 1.060515, 16.75],
      ['female', 60, 28, 1.067242, 13.81],
      ['female', 150, 35, 1.034654, 28.42],
    ] as const;
    for (const [sex, sumMm, age, density, fat] of rows) {
      expect(valueOf(skinfoldSevenSites({ sex, sumMm, age }))).toBeCloseTo(density, 6);
      expect(fatOf(skinfoldSevenSites({ sex, sumMm, age }))).toBeCloseTo(fat, 1.9);
    }
  });

  it('[EST-23] three sites, worked by hand', () => {
    const rows = [
      ['male', 20, 30, 1.085764, 5.9],
      ['male', 60, 25, 1.059103, 17.38],
      ['female', 30, 28, 1.067878, 13.54],
    ] as const;
    for (const [sex, sumMm, age, density, fat] of rows) {
      expect(Math.abs(valueOf(skinfoldThreeSites({ sex, sumMm, age })) - density)).toBeLessThan(6e-7);
      expect(fatOf(skinfoldThreeSites({ sex, sumMm, age }))).toBeCloseTo(fat, 1.9);
    }
  });

  it("[EST-23] Durnin and Womersley's printed table, men of 17 to 29 years (X17)", () => {
    const printed = [
      [15, 4.8],
      [20, 8.1],
      [25, 10.5],
      [30, 12.9],
    ] as const;
    for (const [sumMm, fat] of printed)
      expect(Math.abs(fatOf(skinfoldFourSites({ sex: 'male', age: 24, sumMm })) - fat)).toBeLessThan(0.25);
  });

  it('[EST-23] the same table at 40 mm by age, and a woman', () => {
    const printed = [
      [35, 1.055048, 19.2],
      [45, 1.049856, 21.4],
      [55, 1.0467, 22.9],
    ] as const;
    for (const [age, density, fat] of printed) {
      expect(valueOf(skinfoldFourSites({ sex: 'male', age, sumMm: 40 }))).toBeCloseTo(density, 6);
      expect(Math.abs(fatOf(skinfoldFourSites({ sex: 'male', age, sumMm: 40 })) - fat)).toBeLessThan(0.25);
    }
    expect(fatOf(skinfoldFourSites({ sex: 'female', age: 25, sumMm: 40 }))).toBeCloseTo(23.67, 1.9);
  });

  it('[EST-23] more fold is less density over the whole studied range, for every equation', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('male' as const, 'female' as const),
        fc.integer({ min: 18, max: 55 }),
        fc.double({ min: 14, max: 205, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        (sex, age, sumMm, more) => {
          for (const equation of [skinfoldThreeSites, skinfoldFourSites, skinfoldSevenSites])
            expect(valueOf(equation({ sex, age, sumMm: sumMm + more }))).toBeLessThan(
              valueOf(equation({ sex, age, sumMm })),
            );
        },
      ),
      { seed: 20270112, numRuns: 300 },
    );
  });

  it('[EST-25] beyond the turning point of the square, and beyond the ages, there is no answer', () => {
    expect(skinfoldThreeSites({ sex: 'male', age: 30, sumMm: 300 }).studied).toBe(false);
    expect(skinfoldSevenSites({ sex: 'female', age: 60, sumMm: 80 })).toMatchObject({
      outside: { quantity: 'ageYears', nearest: 55 },
    });
    expect(skinfoldFourSites({ sex: 'male', age: 16, sumMm: 40 }).studied).toBe(false);
  });
});

describe('density from tape (Hodgdon and Beckett 1984)', () => {
  it('[EST-23] worked values of two men and two women', () => {
    const man = (waistCm: number, neckCm: number) =>
      fatOf(girthsToDensity({ sex: 'male', heightCm: 178, neckCm, waistCm }));
    expect(man(85, 38)).toBeCloseTo(16.44, 1.9);
    expect(man(76, 40)).toBeCloseTo(6.92, 1.9);
    const woman = (waistCm: number, hipCm: number, neckCm: number, heightCm: number) =>
      fatOf(girthsToDensity({ sex: 'female', heightCm, neckCm, waistCm, hipCm }));
    expect(woman(70, 95, 32, 165)).toBeCloseTo(24.86, 1.9);
    expect(woman(64, 90, 31, 168)).toBeCloseTo(18.74, 1.9);
  });

  it('[EST-23] six men of the 252-man set (Johnson 1996): near stage the tape reads far too high', () => {
    // neck cm, abdomen cm, height in, percent by tape, percent by weighing (Siri)
    const rows = [
      [36.2, 85.2, 67.75, 18.96, 12.3],
      [38.5, 83, 72.25, 13.56, 6.1],
      [38.1, 82.5, 74, 12.79, 4.1],
      [38.4, 113.1, 65, 36.34, 40.1],
      [34, 75, 65.5, 13.48, 0.7],
      [41.2, 122.1, 64, 40.02, 47.5],
    ] as const;
    for (const [neckCm, waistCm, inches, byTape, weighed] of rows) {
      const found = fatOf(girthsToDensity({ sex: 'male', heightCm: inches * 2.54, neckCm, waistCm }));
      expect(found).toBeCloseTo(byTape, 1.9);
      if (weighed < 10) expect(found - weighed).toBeGreaterThan(6);
    }
  });

  it('[EST-25] a woman without a hip girth has no answer, and no default', () => {
    expect(girthsToDensity({ sex: 'female', heightCm: 165, neckCm: 32, waistCm: 70 }).studied).toBe(false);
  });
});
