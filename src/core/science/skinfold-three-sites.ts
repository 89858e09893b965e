import type { FoldSum } from './skinfold-seven-sites.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/**
 * Body density from three folds. Men: chest, abdomen, thigh, 1.10938 - 0.0008267 S + 0.0000016 S2 - 0.0002574 A
 * (jackson-pollock-1978, SEE 0.0077). Women: triceps, suprailiac, thigh, 1.0994921 - 0.0009929 S + 0.0000023 S2 -
 * 0.0001392 A (jackson-pollock-1980, SEE about 0.0086, from memory; some prints have 1.0994291, which moves fat by 0.03 points).
 */
export function skinfoldThreeSites({ sex, age, sumMm }: FoldSum): Studied<number> {
  const male = sex === 'male';
  return withinStudied(
    [
      { quantity: 'ageYears', found: age, low: 18, high: male ? 61 : 55 },
      { quantity: 'sumMm', found: sumMm, low: 6, high: male ? 258 : 215 },
    ],
    () =>
      male
        ? 1.10938 - 0.0008267 * sumMm + 0.0000016 * sumMm ** 2 - 0.0002574 * age
        : 1.0994921 - 0.0009929 * sumMm + 0.0000023 * sumMm ** 2 - 0.0001392 * age,
  );
}
