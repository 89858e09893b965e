import type { PlateItem } from '../../journal/kinds/plate-item.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Recipe } from '../recipe-food.ts';

export interface RecipeShare {
  readonly recipe: Recipe;
  /** Part of the whole recipe, 0.25 for two slices of eight. */
  readonly share: number;
}

/** What part of a recipe something on a plate is; undefined where it is no recipe or its yield is not known. */
export function recipeShare(catalogue: Catalogue, item: PlateItem): RecipeShare | undefined {
  if (item.source !== 'recipe' && item.source !== 'slices') return undefined;
  const recipe = catalogue.recipe(item.recipe);
  if (!recipe) return undefined;
  const { cookedG, slices } = recipe.yields;
  const whole = item.source === 'slices' ? slices : cookedG;
  const part = item.source === 'slices' ? item.slices : item.grams;
  return whole === undefined ? undefined : { recipe, share: part / whole };
}
