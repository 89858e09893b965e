import type { CatalogueFood } from '../kitchen/catalogue-food.ts';
import { rawEquivalent } from '../kitchen/derive-yield.ts';
import { kitchenGrams } from '../kitchen/recipe/scale-recipe.ts';
import type { Recipe } from '../kitchen/recipe-food.ts';
import { yieldRow } from '../tables/yields.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import type { Need } from './shopping-list.ts';
import type { PlannedDay, PlannedPan } from './week-plan.ts';

/** Grams of one portion where a recipe says its weight but no slices. Common practice, no source. */
const PORTION_G = 350;

/** Into how many portions a recipe is divided. */
export function portionsOf({ yields }: Recipe): number {
  return yields.slices ?? Math.max(1, Math.round((yields.cookedG ?? PORTION_G) / PORTION_G));
}

export interface PanToCook {
  readonly date: string;
  readonly recipe: string;
  readonly name: string;
  readonly portions: number;
  readonly ingredients: readonly { readonly food: string; readonly name: string; readonly rawG: Grams }[];
  /** What it should weigh cooked, by the recipe or by the yields of its parts; absent where neither says. */
  readonly expectedG?: Grams;
  readonly expectedBy?: 'recipe' | 'yields';
  /** Portions for days past its time in the fridge. */
  readonly freeze: number;
  readonly eatenOn: readonly string[];
  readonly steps: readonly string[];
}

/** A pan of the plan as it is cooked: raw weights, what it should weigh, what goes into the freezer (WEK-05). */
export function panToCook(
  pan: PlannedPan,
  recipe: Recipe,
  days: readonly Pick<PlannedDay, 'date' | 'dishes'>[],
  nameOf: (food: string) => string,
): PanToCook {
  const factor = pan.portions / portionsOf(recipe);
  const eaten = days.flatMap((day) =>
    day.dishes.flatMap((dish) =>
      dish.from === 'pan' && dish.recipe === pan.recipe && dish.cookedOn === pan.date ? [{ day, dish }] : [],
    ),
  );
  return {
    date: pan.date,
    recipe: pan.recipe,
    name: recipe.name,
    portions: pan.portions,
    ingredients: recipe.ingredients.map(({ food, rawG }) => ({
      food,
      name: nameOf(food),
      rawG: kitchenGrams(rawG * factor),
    })),
    ...expectedWeight(recipe, factor),
    freeze: eaten.reduce((sum, { dish }) => sum + (dish.frozen ? dish.portions : 0), 0),
    eatenOn: eaten.map(({ day }) => day.date),
    steps: recipe.steps,
  };
}

function expectedWeight(recipe: Recipe, factor: number): Pick<PanToCook, 'expectedG' | 'expectedBy'> {
  if (recipe.yields.cookedG !== undefined) {
    return { expectedG: roundTo(recipe.yields.cookedG * factor, 0), expectedBy: 'recipe' };
  }
  let grams = 0;
  for (const { rawG, form } of recipe.ingredients) {
    const row = form === undefined ? undefined : yieldRow(form);
    if (!row) return {};
    grams += (rawG * row.percent) / 100;
  }
  return { expectedG: roundTo(grams * factor, 0), expectedBy: 'yields' };
}

/** What a plan needs raw: the pans not yet cooked and the foods of the days; cooked table foods as the raw weight behind them. */
export function needsOf(
  pans: readonly PanToCook[],
  days: readonly Pick<PlannedDay, 'date' | 'foods'>[],
  foodOf: (food: string) => CatalogueFood | undefined,
): Need[] {
  return [
    ...pans.flatMap((pan) =>
      pan.ingredients.map(({ food, rawG }) => ({ food, grams: rawG, date: pan.date })),
    ),
    ...days.flatMap(({ date, foods }) =>
      foods.map(({ food, grams }) => {
        const raw = foodOf(food)?.state === 'cooked' ? rawEquivalent(food, grams) : undefined;
        return raw ? { food: raw.food, grams: raw.grams, date } : { food, grams, date };
      }),
    ),
  ];
}
