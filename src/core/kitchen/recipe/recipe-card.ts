import { answered, type Outcome } from '../../problems/problem.ts';
import { roundTo } from '../../units/rounding.ts';
import { nutrientNames, nutrientWords, type NutrientTotal } from '../nutrients.ts';
import { recipeNutrients, type FoodLookup, type Recipe } from '../recipe-food.ts';

export interface CardRow {
  readonly name: string;
  readonly value: string;
}

/** What is given away with a recipe: the dish, its weights, what a portion holds. Nothing of the person who cooks it. */
export interface RecipeCard {
  readonly title: string;
  readonly makes: string;
  /** "1 slice", "100 g" or "the whole recipe". */
  readonly portion: string;
  readonly perPortion: readonly CardRow[];
  readonly ingredients: readonly CardRow[];
  readonly steps: readonly string[];
}

/** The card of a recipe (BAT-54): macros per portion with what the labels leave open. */
export function recipeCard(recipe: Recipe, foodOf: FoodLookup): Outcome<RecipeCard> {
  const nutrients = recipeNutrients(recipe, foodOf);
  if (!nutrients.ok) return nutrients;
  const { perSlice, per100g, sliceG, total } = nutrients.value;
  const slice = sliceG === undefined ? '1 slice' : `1 slice (${roundTo(sliceG, 0)} g)`;
  return answered({
    title: recipe.name,
    makes: yieldWords(recipe),
    portion: perSlice ? slice : per100g ? '100 g' : 'the whole recipe',
    perPortion: nutrientRows(perSlice ?? per100g ?? total),
    ingredients: recipe.ingredients.map(({ food, rawG }) => ({
      name: foodOf(food)?.name ?? food,
      value: `${roundTo(rawG, 1)} g`,
    })),
    steps: recipe.steps,
  });
}

/** "12 slices, 900 g cooked". */
export function yieldWords({ yields }: Recipe): string {
  const { slices, cookedG } = yields;
  const parts = [
    ...(slices === undefined ? [] : [`${slices} ${slices === 1 ? 'slice' : 'slices'}`]),
    ...(cookedG === undefined ? [] : [`${roundTo(cookedG, 0)} g cooked`]),
  ];
  return parts.length === 0 ? 'yield not entered' : parts.join(', ');
}

/** Every known nutrient as text: value, what is not known of it, unit. */
export function nutrientRows(total: NutrientTotal): CardRow[] {
  return nutrientNames.flatMap((name) => {
    const value = total.nutrients[name];
    if (value === undefined) return [];
    const { label, unit } = nutrientWords[name];
    const decimals = unit === 'g' ? 1 : 0;
    const least = total.atLeast.some((bound) => bound === name) ? 'at least ' : '';
    const spread = total.spread[name] ?? 0;
    const open = roundTo(spread, decimals) > 0 ? ` ± ${roundTo(spread, decimals)}` : '';
    return [{ name: label, value: `${least}${roundTo(value, decimals)}${open} ${unit}` }];
  });
}
