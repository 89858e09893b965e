import type { PlateItem } from '../journal/kinds/plate-item.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import type { Catalogue } from './catalogue.ts';
import type { CatalogueFood } from './catalogue-food.ts';
import { batchFoodId } from './cooked-batch.ts';
import { RECTANGULAR } from './label-spread.ts';
import {
  nutrientNames,
  scaleTotal,
  sumNutrients,
  type NutrientAmount,
  type NutrientName,
  type NutrientTotal,
} from './nutrients.ts';
import { recipeFoodId, recipeNutrients, unknownFood } from './recipe-food.ts';

const BATCH_PREFIX = batchFoodId('');
const RECIPE_PREFIX = recipeFoodId('');

/**
 * What something on a plate holds, with its uncertainty (BAT-51). `atMs` is when it was eaten: labels and re-weighed portions
 * count as they were then. Refuses what the catalogue does not know.
 */
export function nutrientsOfItem(
  catalogue: Catalogue,
  item: PlateItem,
  atMs?: number,
): Outcome<NutrientAmount> {
  switch (item.source) {
    case 'food':
      return amount(catalogue.food(item.food, atMs), item.food, item.grams);
    case 'recipe':
      return recipeAmount(catalogue, item.recipe, item.grams, atMs);
    case 'batch': {
      const id = batchFoodId(item.batch);
      const strength = catalogue.strength(item.batch, item.portion ?? 0, atMs ?? Number.POSITIVE_INFINITY);
      return amount(catalogue.food(id), id, item.grams, strength);
    }
    case 'slices':
      return slicesAmount(catalogue, item.recipe, item.slices, atMs);
    case 'guess':
      return answered(guessed(item));
  }
}

/** The sum of a plate; problems of items that are not known are answered beside it, so that the rest still counts. */
export function nutrientsOfItems(
  catalogue: Catalogue,
  items: readonly PlateItem[],
  atMs?: number,
): { readonly total: NutrientTotal; readonly parts: readonly Outcome<NutrientAmount>[] } {
  const parts = items.map((item) => nutrientsOfItem(catalogue, item, atMs));
  return { total: sumNutrients(parts.flatMap((part) => (part.ok ? [part.value] : []))), parts };
}

/** A food of the catalogue as a plate names it. */
export function plateItemOf(foodId: string, grams: Grams, portion?: number): PlateItem {
  if (foodId.startsWith(BATCH_PREFIX)) {
    const batch = foodId.slice(BATCH_PREFIX.length);
    return { source: 'batch', batch, grams, ...(portion !== undefined && { portion }) };
  }
  if (foodId.startsWith(RECIPE_PREFIX)) {
    return { source: 'recipe', recipe: foodId.slice(RECIPE_PREFIX.length), grams };
  }
  return { source: 'food', food: foodId, grams };
}

/** The catalogue id of a plate's item; undefined for a guess. */
export function foodIdOf(item: PlateItem): string | undefined {
  switch (item.source) {
    case 'food':
      return item.food;
    case 'batch':
      return batchFoodId(item.batch);
    case 'recipe':
    case 'slices':
      return recipeFoodId(item.recipe);
    case 'guess':
      return undefined;
  }
}

function amount(
  food: CatalogueFood | undefined,
  id: string,
  grams: Grams,
  strength = 1,
): Outcome<NutrientAmount> {
  if (!food) return unknownFood(id, 'food');
  return answered({ ...scaleTotal(food.per100g, (grams / 100) * strength), origin: food.per100g.origin });
}

function recipeAmount(
  catalogue: Catalogue,
  recipe: string,
  grams: Grams,
  atMs: number | undefined,
): Outcome<NutrientAmount> {
  const id = recipeFoodId(recipe);
  const food = catalogue.food(id, atMs);
  if (!food && catalogue.recipe(recipe)) {
    return refused(
      'kitchen/recipe-not-weighed',
      'recipe',
      `The recipe "${catalogue.recipe(recipe)?.name ?? recipe}" has no cooked weight, so a gram of it holds nothing known.`,
      'Weigh it once cooked and enter the weight in the recipe.',
    );
  }
  return amount(food, id, grams);
}

/** By the slice the cooked weight does not matter: a slice is its share of what went in raw. */
function slicesAmount(
  catalogue: Catalogue,
  id: string,
  slices: number,
  atMs: number | undefined,
): Outcome<NutrientAmount> {
  const recipe = catalogue.recipe(id);
  if (!recipe) return unknownFood(recipeFoodId(id), 'recipe');
  const nutrients = recipeNutrients(recipe, (food) => catalogue.food(food, atMs));
  if (!nutrients.ok) return nutrients;
  if (!nutrients.value.perSlice) {
    return refused(
      'kitchen/recipe-not-sliced',
      'recipe',
      `The recipe "${recipe.name}" does not say how many slices it makes.`,
      'Enter its number of slices in the recipe.',
    );
  }
  return answered({ ...scaleTotal(nutrients.value.perSlice, slices), origin: recipeFoodId(id) });
}

/** A guess may be off by its spread either way, anything in between as likely. */
function guessed(item: Extract<PlateItem, { source: 'guess' }>): NutrientAmount {
  const spread: { [Name in NutrientName]?: number } = {};
  for (const name of nutrientNames) {
    const value = item.nutrients[name];
    if (value !== undefined) spread[name] = value * (item.spreadPercent / 100) * RECTANGULAR;
  }
  return { nutrients: item.nutrients, atLeast: [], spread, origin: `guess:${item.name}` };
}
