import type { SourceKey } from '../tables/sources.ts';
import { waterPer100g, type PanIngredient } from './pan.ts';

/** Cooked weight per raw weight of one ingredient: from `low` to `high` is plausible, above `most` cannot be. */
export interface YieldBounds {
  readonly low: number;
  readonly high: number;
  readonly most: number;
  readonly source: SourceKey;
}

/** Above this the scale or the ingredient list is wrong, not the cook. Common practice, no source. */
const MOST_WITHOUT_WATER = 1.05;
/** Ground rice boiled in water comes to 7.2 times its dry weight, the most of the yield table. */
const MOST_PLAUSIBLE_UPTAKE = 8;
const MOST_POSSIBLE_UPTAKE = 15;
/** No meat pan weighs less than this share of its raw weight; fried bacon, the lowest published, keeps 0.32. */
const LEAST_OF_MEAT = 0.3;

/**
 * Bounds of one ingredient. With a form: the band of its row. Without: at least what is left when all water and fat
 * are gone, at most the raw weight; starch that came dry takes up water, as much as the cook gives it.
 */
export function yieldBounds(ingredient: PanIngredient, waterIsListed: boolean): YieldBounds {
  const { form } = ingredient;
  if (form) {
    const [low, high] = [form.band.low / 100, form.band.high / 100];
    return { low, high, most: Math.max(high * 1.5, MOST_WITHOUT_WATER), source: form.source };
  }
  const { nutrients } = ingredient.per100g;
  const solids = 1 - waterPer100g(ingredient) / 100;
  if (isDryStarch(ingredient)) {
    const high = waterIsListed ? 1 : MOST_PLAUSIBLE_UPTAKE;
    return { low: solids * 0.9, high, most: MOST_POSSIBLE_UPTAKE, source: 'common-practice' };
  }
  const withoutFat = Math.max(0, solids - nutrients.fatG / 100);
  const meat = nutrients.proteinG >= 10 && solids < 0.6 && nutrients.carbohydrateG < 5;
  return {
    low: meat ? Math.max(withoutFat, LEAST_OF_MEAT) : withoutFat,
    high: 1,
    most: MOST_WITHOUT_WATER,
    source: 'common-practice',
  };
}

/** Rice, oats, pasta, pulses as they come from the packet; not sugar, honey or dried fruit. */
function isDryStarch(ingredient: PanIngredient): boolean {
  if (ingredient.form) return ingredient.form.percent > 150;
  const { carbohydrateG, sugarsG = 0 } = ingredient.per100g.nutrients;
  return carbohydrateG >= 40 && waterPer100g(ingredient) < 20 && sugarsG < carbohydrateG / 2;
}

/** Whether the water the dry starch takes up stands in the list itself. */
export function listsItsWater(ingredients: readonly PanIngredient[]): boolean {
  const sum = (some: readonly PanIngredient[]) => some.reduce((total, { rawG }) => total + rawG, 0);
  const waters = ingredients.filter((one) => waterPer100g(one) > 95 && one.per100g.nutrients.energyKcal < 10);
  return waters.length > 0 && sum(waters) >= sum(ingredients.filter(isDryStarch));
}
