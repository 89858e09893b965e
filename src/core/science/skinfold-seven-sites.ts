import type { Millimetres, Years } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** Sex, age, and the sum of folds at the equation's own sites. */
export interface FoldSum {
  readonly sex: 'male' | 'female';
  readonly age: Years;
  readonly sumMm: Millimetres;
}

/**
 * Body density from seven folds (chest, midaxillary, triceps, subscapular, abdomen, suprailiac, thigh):
 * men 1.112 - 0.00043499 S + 0.00000055 S2 - 0.00028826 A (jackson-pollock-1978, 18 to 61 years, SEE 0.0078);
 * women 1.097 - 0.00046971 S + 0.00000056 S2 - 0.00012828 A (jackson-pollock-1980, 18 to 55 years, SEE 0.0083).
 * Sums above the turning point of the square are outside: there more fold would mean less fat.
 */
export function skinfoldSevenSites({ sex, age, sumMm }: FoldSum): Studied<number> {
  const male = sex === 'male';
  return withinStudied(
    [
      { quantity: 'ageYears', found: age, low: 18, high: male ? 61 : 55 },
      { quantity: 'sumMm', found: sumMm, low: 14, high: male ? 395 : 419 },
    ],
    () =>
      male
        ? 1.112 - 0.00043499 * sumMm + 0.00000055 * sumMm ** 2 - 0.00028826 * age
        : 1.097 - 0.00046971 * sumMm + 0.00000056 * sumMm ** 2 - 0.00012828 * age,
  );
}
