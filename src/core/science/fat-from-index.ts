import type { Percent } from '#core/units/quantities.ts';
import type { BodySize } from './resting-energy-mifflin.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/**
 * Percent fat from body-mass index: men 0.14 A + 37.31 ln BMI - 103.94, women 0.14 A + 39.96 ln BMI - 102.01.
 * Source key: jackson-2002 (read in an open implementation). 17 to 65 years, BMI 17 to 46. Wrong for muscular people: any measurement is better.
 */
export function fatFromIndex({ sex, massKg, heightCm, age }: BodySize): Studied<Percent> {
  const index = massKg / (heightCm / 100) ** 2;
  return withinStudied(
    [
      { quantity: 'ageYears', found: age, low: 17, high: 66 },
      { quantity: 'bodyMassIndex', found: index, low: 17, high: 46 },
    ],
    () => fatPercentFromIndex(sex, age, index),
  );
}

/** The bare equation, for models that must start somewhere. */
export function fatPercentFromIndex(sex: BodySize['sex'], age: number, index: number): Percent {
  const [slope, intercept] = sex === 'male' ? [37.31, -103.94] : [39.96, -102.01];
  return 0.14 * age + slope * Math.log(index) + intercept;
}
