import { answered, refused, type Outcome } from '../../problems/problem.ts';
import { yieldRow } from '../../tables/yields.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Recipe } from '../recipe-food.ts';
import type { ForeignIngredient, ForeignRecipe } from './read-recipe-json-ld.ts';

/** The food of the catalogue that an ingredient names: by its id, else by its exact name. Nothing is guessed (BAT-56). */
export function foodOfIngredient(catalogue: Catalogue, line: ForeignIngredient): string | undefined {
  if (line.food !== undefined && catalogue.food(line.food)) return line.food;
  const wanted = line.name.toLowerCase();
  return catalogue.foods().find((food) => food.name.toLowerCase() === wanted)?.id;
}

/** A recipe of a file as the journal keeps it. Refuses the first ingredient without a known food or without grams, by name. */
export function adoptRecipe(catalogue: Catalogue, foreign: ForeignRecipe): Outcome<Recipe> {
  const ingredients: Recipe['ingredients'] = [];
  for (const [index, line] of foreign.ingredients.entries()) {
    const food = foodOfIngredient(catalogue, line);
    if (food === undefined) {
      return refused(
        'kitchen/ingredient-not-known',
        `ingredients.${index}`,
        `"${line.text}" in "${foreign.name}" is no food of the table and none of the own foods.`,
        'Name it as the food table does, or bring the recipe in on the Recipes screen and choose the food there.',
      );
    }
    if (line.grams === undefined) {
      return refused(
        'kitchen/ingredient-not-weighed',
        `ingredients.${index}`,
        `"${line.text}" in "${foreign.name}" has no weight.`,
        'Give it in grams, ounces or pounds.',
      );
    }
    const form = line.form !== undefined && yieldRow(line.form) ? line.form : undefined;
    ingredients.push({ food, rawG: line.grams, ...(form !== undefined && { form }) });
  }
  const { slices, cookedG } = foreign;
  return answered({
    recipe: foreign.identifier ?? recipeIdOf(foreign.name),
    name: foreign.name,
    ingredients,
    steps: [...foreign.steps],
    yields: { ...(cookedG !== undefined && { cookedG }), ...(slices !== undefined && { slices }) },
  });
}

/** The same name gives the same recipe, so that a file taken in twice adds nothing. */
export function recipeIdOf(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `recipe-${plain === '' ? 'unnamed' : plain.slice(0, 60)}`;
}
