import * as v from 'valibot';
import type { Catalogue } from '#core/kitchen/catalogue.ts';
import { foodOfIngredient } from '#core/kitchen/recipe/adopt-recipe.ts';
import type { ForeignRecipe } from '#core/kitchen/recipe/read-recipe-json-ld.ts';
import type { Recipe } from '#core/kitchen/recipe-food.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { ingredientLine, rawGrams } from '../cook-draft.ts';

/** A recipe as it is being typed, or as a file brought it in. */
export const recipeDraft = v.strictObject({
  name: v.string(),
  lines: v.array(ingredientLine),
  /** Ingredients of a file that name no food known here: as written, with their grams where it says them. */
  open: v.array(v.strictObject({ text: v.string(), grams: v.optional(v.number()) })),
  steps: v.string(),
  slices: v.optional(v.number()),
  cookedG: v.optional(v.number()),
});
export type RecipeDraft = v.InferOutput<typeof recipeDraft>;

export const emptyRecipe: RecipeDraft = { name: '', lines: [], open: [], steps: '' };

/** Starts from the recipe where there is one. */
export function recipeDraftOf(recipe: Recipe | undefined): RecipeDraft {
  if (!recipe) return emptyRecipe;
  const { slices, cookedG } = recipe.yields;
  return {
    name: recipe.name,
    lines: recipe.ingredients.map(({ food, rawG, form }) => ({
      food,
      amount: rawG,
      unit: 'g',
      ...(form !== undefined && { form }),
    })),
    open: [],
    steps: recipe.steps.join('\n'),
    ...(slices !== undefined && { slices }),
    ...(cookedG !== undefined && { cookedG }),
  };
}

/** A recipe of a file, the foods it names looked up; what is not known stays to be chosen. */
export function draftOfForeign(foreign: ForeignRecipe, catalogue: Catalogue): RecipeDraft {
  const draft: RecipeDraft = { name: foreign.name, lines: [], open: [], steps: foreign.steps.join('\n') };
  for (const line of foreign.ingredients) {
    const food = foodOfIngredient(catalogue, line);
    const grams = line.grams === undefined ? undefined : roundTo(line.grams, 1);
    if (food === undefined) draft.open.push({ text: line.text, ...(grams !== undefined && { grams }) });
    else draft.lines.push({ food, unit: 'g', ...(grams !== undefined && { amount: grams }) });
  }
  return {
    ...draft,
    ...(foreign.slices !== undefined && { slices: foreign.slices }),
    ...(foreign.cookedG !== undefined && { cookedG: foreign.cookedG }),
  };
}

/** The recipe as typed. The first thing that is missing is answered with its field and the remedy. */
export function readRecipeDraft(typed: RecipeDraft, id: string): Outcome<Recipe> {
  const name = typed.name.trim();
  if (name === '') return missing('name', 'The recipe has no name.', 'Enter what the dish is called.');
  const [first] = typed.open;
  if (first) {
    return missing('open', `"${first.text}" is no food yet.`, 'Choose the food it is, or leave it out.');
  }
  if (typed.lines.length === 0) {
    return missing('ingredients', 'The recipe has no ingredients.', 'Add what goes in raw, with its weight.');
  }
  const ingredients: Recipe['ingredients'] = [];
  for (const [index, { food, amount, unit, form }] of typed.lines.entries()) {
    if (amount === undefined || rawGrams(amount, unit) < 0.1) {
      return missing(
        `ingredients.${index}.amount`,
        'One ingredient has no raw weight.',
        'Weigh it, or take it off the list.',
      );
    }
    ingredients.push({ food, rawG: rawGrams(amount, unit), ...(form !== undefined && { form }) });
  }
  const { slices, cookedG } = typed;
  if (slices === undefined && cookedG === undefined) {
    return missing(
      'slices',
      'The recipe does not say what it makes.',
      'Enter the number of slices, the cooked weight, or both.',
    );
  }
  return answered({
    recipe: id,
    name,
    ingredients,
    steps: typed.steps
      .split('\n')
      .map((step) => step.trim())
      .filter((step) => step !== ''),
    yields: { ...(cookedG !== undefined && { cookedG }), ...(slices !== undefined && { slices }) },
  });
}

function missing(path: string, message: string, remedy: string): Outcome<never> {
  return refused(`kitchen/recipe-${path.replace(/\W+/g, '-')}`, path, message, remedy);
}
