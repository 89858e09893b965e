import type { FoldSum } from './skinfold-seven-sites.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** c and m of D = c - m log10 S by sex and age (table 5 of the source), from the age on. */
const TABLE = {
  male: [
    { from: 17, c: 1.162, m: 0.063 },
    { from: 20, c: 1.1631, m: 0.0632 },
    { from: 30, c: 1.1422, m: 0.0544 },
    { from: 40, c: 1.162, m: 0.07 },
    { from: 50, c: 1.1715, m: 0.0779 },
  ],
  female: [
    { from: 16, c: 1.1549, m: 0.0678 },
    { from: 20, c: 1.1599, m: 0.0717 },
    { from: 30, c: 1.1423, m: 0.0632 },
    { from: 40, c: 1.1333, m: 0.0612 },
    { from: 50, c: 1.1339, m: 0.0645 },
  ],
} as const;

/**
 * Body density from four folds (biceps, triceps, subscapular, suprailiac), D = c - m log10 S.
 * Source key: durnin-womersley-1974; men 17 to 72, women 16 to 68 years.
 */
export function skinfoldFourSites({ sex, age, sumMm }: FoldSum): Studied<number> {
  const rows = TABLE[sex];
  const [low, high] = sex === 'male' ? [17, 72] : [16, 68];
  return withinStudied(
    [
      { quantity: 'ageYears', found: age, low, high },
      { quantity: 'sumMm', found: sumMm, low: 10, high: 210 },
    ],
    () => {
      const { c, m } = rows.findLast(({ from }) => age >= from) ?? rows[0];
      return c - m * Math.log10(sumMm);
    },
  );
}
