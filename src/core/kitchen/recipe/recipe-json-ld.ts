import { roundTo } from '../../units/rounding.ts';
import { nutrientNames, type NutrientName, type NutrientTotal } from '../nutrients.ts';
import { recipeNutrients, type FoodLookup, type Recipe } from '../recipe-food.ts';

/** Properties of schema.org's NutritionInformation by our names; source schema-org-recipe. Potassium has none there. */
export const NUTRITION_PROPERTIES = {
  energyKcal: ['calories', 'kcal'],
  proteinG: ['proteinContent', 'g'],
  fatG: ['fatContent', 'g'],
  carbohydrateG: ['carbohydrateContent', 'g'],
  fibreG: ['fiberContent', 'g'],
  sugarsG: ['sugarContent', 'g'],
  saturatedFatG: ['saturatedFatContent', 'g'],
  sodiumMg: ['sodiumContent', 'mg'],
} as const satisfies { readonly [Name in NutrientName]?: readonly [string, string] };

/** UN/CEFACT common code of the gram, which schema.org asks for. */
export const GRAM = 'GRM';

/**
 * A recipe as schema.org Recipe (BAT-55). `recipeIngredient` is for people; `supply` says the same for a reader of our own:
 * the food's id and its grams. Nothing of the person is written.
 */
export function recipeJsonLd(recipe: Recipe, foodOf: FoodLookup): Record<string, unknown> {
  const { slices, cookedG } = recipe.yields;
  const nameOf = (food: string) => foodOf(food)?.name ?? food;
  const yields = [
    ...(slices === undefined ? [] : [`${slices} ${slices === 1 ? 'slice' : 'slices'}`]),
    ...(cookedG === undefined ? [] : [`${roundTo(cookedG, 1)} g`]),
  ];
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    identifier: recipe.recipe,
    name: recipe.name,
    ...(yields.length > 0 && { recipeYield: yields.length === 1 ? yields[0] : yields }),
    recipeIngredient: recipe.ingredients.map(({ food, rawG }) => `${roundTo(rawG, 2)} g ${nameOf(food)}`),
    supply: recipe.ingredients.map(({ food, rawG, form }) => ({
      '@type': 'HowToSupply',
      identifier: food,
      name: nameOf(food),
      ...(form !== undefined && { description: form }),
      requiredQuantity: { '@type': 'QuantitativeValue', value: roundTo(rawG, 2), unitCode: GRAM },
    })),
    recipeInstructions: recipe.steps.map((text) => ({ '@type': 'HowToStep', text })),
    ...nutritionOf(recipe, foodOf),
  };
}

function nutritionOf(recipe: Recipe, foodOf: FoodLookup): Record<string, unknown> {
  const nutrients = recipeNutrients(recipe, foodOf);
  if (!nutrients.ok) return {};
  const { perSlice, per100g } = nutrients.value;
  const portion = perSlice ?? per100g;
  if (!portion) return {};
  return {
    nutrition: {
      '@type': 'NutritionInformation',
      servingSize: perSlice ? '1 slice' : '100 g',
      ...propertiesOf(portion),
    },
  };
}

/** A lower bound is no figure for another program: what is only partly known stays out. */
function propertiesOf({ nutrients, atLeast }: NutrientTotal): Record<string, string> {
  const written: Record<string, string> = {};
  for (const name of nutrientNames) {
    const value = nutrients[name];
    if (name === 'potassiumMg' || value === undefined || atLeast.some((bound) => bound === name)) continue;
    const [property, unit] = NUTRITION_PROPERTIES[name];
    written[property] = `${roundTo(value, 1)} ${unit}`;
  }
  return written;
}
