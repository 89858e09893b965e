import type { Nutrients } from '../problems/shapes.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';

const requiredNutrients = ['energyKcal', 'proteinG', 'fatG', 'carbohydrateG'] as const;
const optionalNutrients = ['fibreG', 'sugarsG', 'saturatedFatG', 'sodiumMg', 'potassiumMg'] as const;
export const nutrientNames = [...requiredNutrients, ...optionalNutrients] as const;
export type OptionalNutrient = (typeof optionalNutrients)[number];
export type NutrientName = (typeof nutrientNames)[number];

/** What a nutrient is called in a sentence, and its unit. */
export const nutrientWords = {
  energyKcal: { label: 'energy', unit: 'kcal' },
  proteinG: { label: 'protein', unit: 'g' },
  fatG: { label: 'fat', unit: 'g' },
  carbohydrateG: { label: 'carbohydrate', unit: 'g' },
  fibreG: { label: 'fibre', unit: 'g' },
  sugarsG: { label: 'sugars', unit: 'g' },
  saturatedFatG: { label: 'saturated fat', unit: 'g' },
  sodiumMg: { label: 'sodium', unit: 'mg' },
  potassiumMg: { label: 'potassium', unit: 'mg' },
} as const satisfies Record<NutrientName, { label: string; unit: string }>;

/** Standard uncertainty of each nutrient, in the nutrient's own unit; absent where none is stated. */
export type Spread = { readonly [Name in NutrientName]?: number };

/**
 * Nutrients of some real amount. An optional nutrient that a part does not know is summed over the parts that do and
 * named in `atLeast`: the figure is a lower bound. Where no part knows it, it is absent.
 */
export interface NutrientTotal {
  readonly nutrients: Nutrients;
  readonly atLeast: readonly OptionalNutrient[];
  readonly spread: Spread;
}

/** One part of a sum. Parts of the same origin (the same food) err together, parts of different origins do not. */
export interface NutrientAmount extends NutrientTotal {
  readonly origin: string;
}

/** Nutrients of so many grams of a food; unknown stays unknown. */
export function nutrientsOf(per100g: Nutrients, grams: Grams): Nutrients {
  return scaleNutrients(per100g, grams / 100);
}

export function scaleNutrients(nutrients: Nutrients, factor: number): Nutrients {
  const scaled: Nutrients = {
    energyKcal: nutrients.energyKcal * factor,
    proteinG: nutrients.proteinG * factor,
    fatG: nutrients.fatG * factor,
    carbohydrateG: nutrients.carbohydrateG * factor,
  };
  for (const name of optionalNutrients) {
    const value = nutrients[name];
    if (value !== undefined) scaled[name] = value * factor;
  }
  return scaled;
}

function scaleSpread(spread: Spread, factor: number): Spread {
  const scaled: { -readonly [Name in NutrientName]?: number } = {};
  for (const name of nutrientNames) {
    const value = spread[name];
    if (value !== undefined) scaled[name] = value * Math.abs(factor);
  }
  return scaled;
}

export function scaleTotal(total: NutrientTotal, factor: number): NutrientTotal {
  return {
    nutrients: scaleNutrients(total.nutrients, factor),
    atLeast: total.atLeast,
    spread: scaleSpread(total.spread, factor),
  };
}

/** A known composition without stated uncertainty, as a part of a sum. */
export function exactly(nutrients: Nutrients, origin: string): NutrientAmount {
  return { nutrients, atLeast: [], spread: {}, origin };
}

/**
 * Adds up amounts. Uncertainty combines as source jcgm-100 (5.1.2) has it: within an origin straight, between origins by
 * the root of the sum of squares.
 */
export function sumNutrients(parts: readonly NutrientAmount[]): NutrientTotal {
  const nutrients: Nutrients = { energyKcal: 0, proteinG: 0, fatG: 0, carbohydrateG: 0 };
  for (const name of requiredNutrients) {
    for (const part of parts) nutrients[name] += part.nutrients[name];
  }
  const atLeast: OptionalNutrient[] = [];
  for (const name of optionalNutrients) {
    const known = parts.map((part) => part.nutrients[name]).filter((value) => value !== undefined);
    const complete = known.length === parts.length && parts.every((part) => !part.atLeast.includes(name));
    if (known.length > 0 || parts.length === 0)
      nutrients[name] = known.reduce((sum, value) => sum + value, 0);
    if (!complete) atLeast.push(name);
  }
  return { nutrients, atLeast, spread: combinedSpread(parts) };
}

function combinedSpread(parts: readonly NutrientAmount[]): Spread {
  const byOrigin = new Map<string, { [Name in NutrientName]?: number }>();
  for (const { origin, spread } of parts) {
    const own = byOrigin.get(origin) ?? {};
    for (const name of nutrientNames) {
      const value = spread[name];
      if (value !== undefined) own[name] = (own[name] ?? 0) + value;
    }
    byOrigin.set(origin, own);
  }
  const squares: { [Name in NutrientName]?: number } = {};
  for (const own of byOrigin.values()) {
    for (const name of nutrientNames) {
      const value = own[name];
      if (value !== undefined) squares[name] = (squares[name] ?? 0) + value * value;
    }
  }
  for (const name of nutrientNames) {
    const square = squares[name];
    if (square !== undefined) squares[name] = Math.sqrt(square);
  }
  return squares;
}

/** What is wholly known: lower bounds left out, so that part of a sum never reads as the whole. */
export function knownNutrients(total: NutrientTotal): Nutrients {
  const known = { ...total.nutrients };
  for (const name of total.atLeast) delete known[name];
  return known;
}

/** Rounded for an answer; four decimals only take the binary dust off. */
export function roundNutrients(nutrients: Nutrients, decimals = 4): Nutrients {
  const rounded: Nutrients = { ...nutrients };
  for (const name of nutrientNames) {
    const value = nutrients[name];
    if (value !== undefined) rounded[name] = roundTo(value, decimals);
  }
  return rounded;
}
