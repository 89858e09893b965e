import type { KilocaloriesPerDay, Kilograms } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** Fat-free masses of the adults these equations were drawn from, kg. */
const FAT_FREE = { low: 30, high: 110 } as const;

function fromFatFree(fatFreeKg: Kilograms, intercept: number, slope: number): Studied<KilocaloriesPerDay> {
  return withinStudied(
    [{ quantity: 'fatFreeKg', found: fatFreeKg, ...FAT_FREE }],
    () => intercept + slope * fatFreeKg,
  );
}

/** 500 + 22 LBM kcal per day. Source key: cunningham-1980. Good in athletes. */
export function restingCunningham1980(fatFreeKg: Kilograms): Studied<KilocaloriesPerDay> {
  return fromFatFree(fatFreeKg, 500, 22);
}

/** 370 + 21.6 FFM kcal per day; the textbook "Katch-McArdle" is the same. Source key: cunningham-1991, from memory. */
export function restingCunningham1991(fatFreeKg: Kilograms): Studied<KilocaloriesPerDay> {
  return fromFatFree(fatFreeKg, 370, 21.6);
}

/** 413 + 19.7 FFM kcal per day, R2 0.64. Source key: mifflin-1990 (coefficients from memory). */
export function restingMifflinLean(fatFreeKg: Kilograms): Studied<KilocaloriesPerDay> {
  return fromFatFree(fatFreeKg, 413, 19.7);
}
