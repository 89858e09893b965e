import type { DataOf } from '../journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import type { CatalogueFood } from './catalogue-food.ts';
import { scaleTotal, sumNutrients, type NutrientTotal } from './nutrients.ts';
import { batchStorage } from './batch-storage.ts';

export type Recipe = DataOf<'recipe-defined'>;
export type FoodLookup = (id: string) => CatalogueFood | undefined;

export const recipeFoodId = (recipe: string): string => `recipe:${recipe}`;

/** What a recipe comes to; per slice and per 100 g where its yield is known. */
export interface RecipeNutrients {
  readonly rawG: Grams;
  readonly total: NutrientTotal;
  readonly perSlice?: NutrientTotal;
  readonly per100g?: NutrientTotal;
  readonly sliceG?: Grams;
}

/** Adds up a recipe from its raw ingredients (BAT-50). Refuses an ingredient that is not in the catalogue. */
export function recipeNutrients(recipe: Recipe, foodOf: FoodLookup): Outcome<RecipeNutrients> {
  const parts = [];
  for (const [index, { food, rawG }] of recipe.ingredients.entries()) {
    const known = foodOf(food);
    if (!known) return unknownFood(food, `ingredients.${index}.food`);
    parts.push({ rawG, amount: { ...scaleTotal(known.per100g, rawG / 100), origin: known.per100g.origin } });
  }
  const total = sumNutrients(parts.map((part) => part.amount));
  const { cookedG, slices } = recipe.yields;
  return answered({
    rawG: parts.reduce((sum, part) => sum + part.rawG, 0),
    total,
    ...(slices !== undefined && { perSlice: scaleTotal(total, 1 / slices) }),
    ...(cookedG !== undefined && { per100g: scaleTotal(total, 100 / cookedG) }),
    ...(cookedG !== undefined && slices !== undefined && { sliceG: cookedG / slices }),
  });
}

/** A recipe as a food; undefined until its cooked weight is known. */
export function recipeFood(recipe: Recipe, foodOf: FoodLookup): CatalogueFood | undefined {
  const nutrients = recipeNutrients(recipe, foodOf);
  if (!nutrients.ok || !nutrients.value.per100g) return undefined;
  const { per100g, sliceG } = nutrients.value;
  const id = recipeFoodId(recipe.recipe);
  const parts = recipe.ingredients.map(({ food }) => foodOf(food)).filter((food) => food !== undefined);
  return {
    id,
    name: recipe.name,
    synonyms: [],
    origin: 'recipe',
    state: 'cooked',
    per100g: { ...per100g, origin: id },
    storage: batchStorage(parts, 'strict').storage,
    aisle: 'own recipes',
    serving:
      sliceG === undefined ? { minG: 50, maxG: 600 } : { minG: sliceG, maxG: sliceG * 6, unitG: sliceG },
    measures: sliceG === undefined ? [] : [{ amount: 1, unit: 'slice', grams: sliceG }],
    basis: 'mass balance',
  };
}

export function unknownFood(food: string, path: string): Outcome<never> {
  return refused(
    'kitchen/unknown-food',
    path,
    `The food "${food}" is not in the table and not among the own foods.`,
    'Define it in the Kitchen, or bring in the journal that holds it.',
  );
}
