import type { Centimetres, KilocaloriesPerDay, Kilograms, Years } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** Sex, size and age: what resting energy is foretold from when body composition is not known. */
export interface BodySize {
  readonly sex: 'male' | 'female';
  readonly massKg: Kilograms;
  readonly heightCm: Centimetres;
  readonly age: Years;
}

/**
 * Resting energy, kcal per day, unrounded: 9.99 W + 6.25 H - 4.92 A + 166 for men - 161 (W kg, H cm, A years).
 * Population: 498 healthy adults of 19 to 78 years, R2 0.71. Source key: mifflin-1990.
 * Not checked against the studied range: see `restingMifflinStudied`.
 */
export function restingMifflin({ sex, massKg, heightCm, age }: BodySize): KilocaloriesPerDay {
  return 9.99 * massKg + 6.25 * heightCm - 4.92 * age + (sex === 'male' ? 5 : -161);
}

/** The rounded form in common use: 10 W + 6.25 H - 5 A + 5 for men, - 161 for women. Source key: mifflin-1990. */
export function restingMifflinRounded({ sex, massKg, heightCm, age }: BodySize): KilocaloriesPerDay {
  return 10 * massKg + 6.25 * heightCm - 5 * age + (sex === 'male' ? 5 : -161);
}

/** `restingMifflin` within 19 to 78 years; outside it an answer that says so. */
export function restingMifflinStudied(size: BodySize): Studied<KilocaloriesPerDay> {
  return withinStudied([{ quantity: 'ageYears', found: size.age, low: 19, high: 78 }], () =>
    restingMifflin(size),
  );
}
