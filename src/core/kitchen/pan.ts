import type { Nutrients } from '../problems/shapes.ts';
import type { YieldRow } from '../tables/yields.ts';
import type { Grams } from '../units/quantities.ts';
import type { NutrientAmount } from './nutrients.ts';

/** Something put raw into a pan. */
export interface PanIngredient {
  readonly name: string;
  readonly rawG: Grams;
  /** Per 100 g raw; `origin` tells one food from another when uncertainty adds up. */
  readonly per100g: NutrientAmount;
  /** Water per 100 g raw where a table knows it; else it is worked out from the macros. */
  readonly waterG?: Grams;
  /** How it is cooked, where that was said. */
  readonly form?: YieldRow;
}

/** One pan: raw in, cooked out. */
export interface Pan {
  readonly ingredients: readonly PanIngredient[];
  readonly cookedGrossG: Grams;
  readonly containerG: Grams;
  readonly drainedFatG: Grams;
}

/** Ash of plain food is about a gram per 100 g (common practice, no source); it only widens the bounds of the water. */
const ASH_G = 1;

/** Grams of water in 100 g of an ingredient: known, or what the macros leave room for. */
export function waterPer100g(ingredient: PanIngredient): Grams {
  if (ingredient.waterG !== undefined) return ingredient.waterG;
  const macros = macroGrams(ingredient.per100g.nutrients);
  return Math.max(0, 100 - macros - (macros > 0 ? ASH_G : 0));
}

/** Protein, fat and carbohydrate together. */
export function macroGrams(nutrients: Nutrients): Grams {
  return nutrients.proteinG + nutrients.fatG + nutrients.carbohydrateG;
}
