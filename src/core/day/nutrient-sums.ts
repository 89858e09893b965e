import type { Nutrients } from '../problems/shapes.ts';
import { roundTo } from '../units/rounding.ts';

const REQUIRED = ['energyKcal', 'proteinG', 'fatG', 'carbohydrateG'] as const;
const OPTIONAL = ['fibreG', 'sugarsG', 'saturatedFatG', 'sodiumMg', 'potassiumMg'] as const;
export type OptionalNutrient = (typeof OPTIONAL)[number];

/** An amount of something with known nutrients: `per` holds them for `factor` = 1. */
export interface Portion {
  readonly per: Nutrients;
  readonly factor: number;
}

/**
 * Adds up portions. An optional nutrient that one of them does not know is unknown in the sum, so it is left out: part of a sum
 * would read as the whole. Rounded to a millionth, which only takes the binary dust off.
 */
export function sumNutrients(portions: readonly Portion[]): Nutrients {
  const sum: Nutrients = { energyKcal: 0, proteinG: 0, fatG: 0, carbohydrateG: 0 };
  for (const key of REQUIRED) {
    sum[key] = roundTo(
      portions.reduce((total, portion) => total + portion.per[key] * portion.factor, 0),
      6,
    );
  }
  for (const key of OPTIONAL) {
    const total = knownTotal(portions, key);
    if (total !== undefined) sum[key] = roundTo(total, 6);
  }
  return sum;
}

function knownTotal(portions: readonly Portion[], key: OptionalNutrient): number | undefined {
  let total = 0;
  for (const { per, factor } of portions) {
    const value = per[key];
    if (value === undefined) return undefined;
    total += value * factor;
  }
  return total;
}

/** Sum of a nutrient with the unknown counted as nothing: what the cost of a plan goes by. */
export function countedTotal(portions: readonly Portion[], key: keyof Nutrients): number {
  return portions.reduce((total, { per, factor }) => total + (per[key] ?? 0) * factor, 0);
}
