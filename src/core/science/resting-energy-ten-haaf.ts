import type { KilocaloriesPerDay, Kilograms, Years } from '#core/units/quantities.ts';
import type { BodySize } from './resting-energy-mifflin.ts';
import { type RangeCheck, type Studied, withinStudied } from './studied-range.ts';

function ages(age: Years): RangeCheck {
  return { quantity: 'ageYears', found: age, low: 18, high: 35 };
}

/** 22.771 FFM + 484.264 kcal per day. 90 recreational athletes of 18 to 35 years. Source key: ten-haaf-2014 (coefficients from memory). */
export function restingTenHaafLean(fatFreeKg: Kilograms, age: Years): Studied<KilocaloriesPerDay> {
  return withinStudied([ages(age)], () => 22.771 * fatFreeKg + 484.264);
}

/** 11.936 W + 587.728 H - 8.129 A + 191.027 for men + 29.279 kcal per day (W kg, H m, A years). Source key: ten-haaf-2014 (coefficients from memory). */
export function restingTenHaafWeight({ sex, massKg, heightCm, age }: BodySize): Studied<KilocaloriesPerDay> {
  return withinStudied(
    [ages(age)],
    () =>
      11.936 * massKg + (587.728 * heightCm) / 100 - 8.129 * age + (sex === 'male' ? 191.027 : 0) + 29.279,
  );
}
