import { answered, refused, type Outcome } from '../../problems/problem.ts';
import type { Grams } from '../../units/quantities.ts';
import { roundTo } from '../../units/rounding.ts';
import type { NutrientTotal } from '../nutrients.ts';
import { nutrientWords } from '../nutrients.ts';
import { recipeNutrients, type FoodLookup, type Recipe } from '../recipe-food.ts';

export type TargetMacro = 'proteinG' | 'carbohydrateG' | 'fatG' | 'energyKcal';

/** What the recipe should come to. */
export type ScaleWish =
  /** As many slices of the same size. */
  | { readonly by: 'slices'; readonly slices: number }
  /** The same number of slices, each with so much of one macro. */
  | { readonly by: 'macro'; readonly macro: TargetMacro; readonly perSlice: number };

export interface ScaledRecipe {
  /** Raw weights as they go into the pan, whole grams from 10 g on, tenths below. */
  readonly recipe: Recipe;
  readonly factor: number;
  readonly perSlice: NutrientTotal;
  readonly why: readonly string[];
}

/** Below this a gram more or less is a tenth of it. */
const WHOLE_GRAMS_FROM = 10;
const MOST_FACTOR = 50;

/** A recipe larger or smaller (BAT-53): every raw weight by the same factor, nutrients summed anew from the rounded weights. */
export function scaleRecipe(recipe: Recipe, wish: ScaleWish, foodOf: FoodLookup): Outcome<ScaledRecipe> {
  const now = recipeNutrients(recipe, foodOf);
  if (!now.ok) return now;
  const { slices } = recipe.yields;
  if (slices === undefined || !now.value.perSlice) {
    return refused(
      'kitchen/recipe-not-sliced',
      'yields.slices',
      `The recipe "${recipe.name}" does not say how many slices it makes.`,
      'Enter its number of slices in the recipe.',
    );
  }
  const factor =
    wish.by === 'slices' ? wish.slices / slices : wish.perSlice / now.value.perSlice.nutrients[wish.macro];
  if (!Number.isFinite(factor) || factor <= 0 || factor > MOST_FACTOR) return cannotScale(recipe, wish);
  const scaled = scaledBy(recipe, factor, wish.by === 'slices' ? Math.round(wish.slices) : slices);
  const after = recipeNutrients(scaled, foodOf);
  if (!after.ok) return after;
  const { perSlice = after.value.total } = after.value;
  return answered({
    recipe: scaled,
    factor,
    perSlice,
    why: whyScaled(wish, factor, now.value.perSlice, perSlice),
  });
}

function scaledBy(recipe: Recipe, factor: number, slices: number): Recipe {
  const { cookedG } = recipe.yields;
  return {
    ...recipe,
    ingredients: recipe.ingredients.map((line) => ({ ...line, rawG: kitchenGrams(line.rawG * factor) })),
    yields: { slices, ...(cookedG !== undefined && { cookedG: Math.max(1, roundTo(cookedG * factor, 0)) }) },
  };
}

/** Grams as a kitchen scale can weigh them. */
export function kitchenGrams(grams: Grams): Grams {
  return Math.max(0.1, roundTo(grams, grams < WHOLE_GRAMS_FROM ? 1 : 0));
}

function cannotScale(recipe: Recipe, wish: ScaleWish): Outcome<never> {
  if (wish.by === 'slices') {
    return refused(
      'kitchen/cannot-scale',
      'slices',
      `${wish.slices} slices cannot be made of "${recipe.name}".`,
      `Ask for 1 to ${(recipe.yields.slices ?? 1) * MOST_FACTOR} slices.`,
    );
  }
  return refused(
    'kitchen/cannot-scale',
    'perSlice',
    `"${recipe.name}" cannot be scaled to ${wish.perSlice} ${nutrientWords[wish.macro].unit} of ${nutrientWords[wish.macro].label} a slice.`,
    'Ask for an amount above 0 of something that is in it.',
  );
}

function whyScaled(wish: ScaleWish, factor: number, before: NutrientTotal, after: NutrientTotal): string[] {
  const times = `Every raw weight times ${roundTo(factor, 3)}, rounded to what a kitchen scale shows.`;
  if (wish.by === 'slices') return [times, 'A slice stays as large as it was.'];
  const { label, unit } = nutrientWords[wish.macro];
  return [
    `A slice has ${roundTo(before.nutrients[wish.macro], 1)} ${unit} of ${label}; ${roundTo(wish.perSlice, 1)} ${unit} were asked for.`,
    times,
    `With the rounded weights a slice has ${roundTo(after.nutrients[wish.macro], 1)} ${unit}.`,
  ];
}

/** Grams of the cooked dish that hold so much of one macro (BAT-53); undefined where it was never weighed cooked. */
export function gramsHolding(
  per100g: NutrientTotal | undefined,
  macro: TargetMacro,
  wanted: number,
): Grams | undefined {
  const holds = per100g?.nutrients[macro] ?? 0;
  return holds > 0 ? roundTo((100 * wanted) / holds, 0) : undefined;
}
