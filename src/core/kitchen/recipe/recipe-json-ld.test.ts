import { describe, expect, it } from 'vitest';
import type { DataOf } from '../../journal/kinds/registry.ts';
import { createLedger } from '../../journal/ledger.ts';
import { createCatalogue } from '../catalogue.ts';
import { adoptRecipe } from './adopt-recipe.ts';
import { readIngredientLine, readRecipeJsonLd } from './read-recipe-json-ld.ts';
import { recipeJsonLd } from './recipe-json-ld.ts';

const catalogue = createCatalogue(createLedger([]));
const foodOf = (id: string) => catalogue.food(id);

const pot: DataOf<'recipe-defined'> = {
  recipe: 'pot',
  name: 'Lentil pot',
  ingredients: [
    { food: 'usda-sr28:16069', rawG: 300 },
    { food: 'usda-sr28:23557', rawG: 500.5, form: 'beef-mince-95-5-crumbles' },
  ],
  steps: ['Brown the beef.', 'Simmer for 35 minutes.'],
  yields: { cookedG: 1400, slices: 5 },
};

/** Properties and types that schema.org lists for each type used here (source schema-org-recipe, read from its type pages). */
const VOCABULARY: Readonly<Record<string, readonly string[]>> = {
  Recipe: [
    'identifier',
    'name',
    'recipeYield',
    'recipeIngredient',
    'supply',
    'recipeInstructions',
    'nutrition',
  ],
  HowToSupply: ['identifier', 'name', 'description', 'requiredQuantity'],
  QuantitativeValue: ['value', 'unitCode'],
  HowToStep: ['text'],
  NutritionInformation: [
    'servingSize',
    'calories',
    'proteinContent',
    'fatContent',
    'carbohydrateContent',
    'fiberContent',
    'sugarContent',
    'saturatedFatContent',
    'sodiumContent',
  ],
};

function strayProperties(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(strayProperties);
  if (typeof value !== 'object' || value === null) return [];
  const type = String(Reflect.get(value, '@type'));
  return Object.entries(value).flatMap(([key, part]) => [
    ...(key.startsWith('@') || VOCABULARY[type]?.includes(key) ? [] : [`${type}.${key}`]),
    ...strayProperties(part),
  ]);
}

describe('a recipe as schema.org Recipe', () => {
  it('[BAT-55] uses the vocabulary and nothing else', () => {
    const written = recipeJsonLd(pot, foodOf);
    expect(strayProperties(written)).toEqual([]);
    expect(written).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Recipe',
      recipeYield: ['5 slices', '1400 g'],
      recipeIngredient: ['300 g lentils, dry', '500.5 g minced beef 95/5, raw'],
      nutrition: { servingSize: '1 slice', calories: '348.3 kcal', proteinContent: '36.2 g' },
    });
  });

  it('[BAT-55] comes in again as the same recipe', () => {
    const read = readRecipeJsonLd(JSON.stringify(recipeJsonLd(pot, foodOf)));
    if (!read.ok || !read.value[0]) throw new Error('not read');
    const back = adoptRecipe(catalogue, read.value[0]);
    expect(back.ok && back.value).toEqual(pot);
  });

  it('[BAT-55] reads what other programs write: graphs, sections, yields as numbers, markup', () => {
    const text = JSON.stringify({
      '@graph': [
        { '@type': 'WebPage', name: 'A page' },
        {
          '@type': ['https://schema.org/Recipe', 'NewsArticle'],
          name: 'Soup <b>bread</b>',
          recipeYield: 4,
          recipeIngredient: ['1 1/2 lb potatoes', '½ oz butter', '2 cups water', 'salt'],
          recipeInstructions: [
            { '@type': 'HowToSection', itemListElement: [{ '@type': 'HowToStep', text: 'Peel.' }] },
            'Boil.\nServe.',
          ],
        },
      ],
    });
    const read = readRecipeJsonLd(text);
    if (!read.ok) throw new Error(read.problem.message);
    const [soup] = read.value;
    expect(soup).toMatchObject({ name: 'Soup bread', slices: 4, steps: ['Peel.', 'Boil.', 'Serve.'] });
    expect(soup?.ingredients.map(({ name, grams }) => [name, grams && Math.round(grams)])).toEqual([
      ['potatoes', 680],
      ['butter', 14],
      ['cups water', undefined],
      ['salt', undefined],
    ]);
  });

  it('[BAT-55] reads weights in every unit of mass; a pound is 453.59237 g by definition', () => {
    expect(readIngredientLine('1 lb minced turkey').grams).toBeCloseTo(453.59237, 5);
    expect(readIngredientLine('0,5 kg rice')).toMatchObject({ grams: 500, name: 'rice' });
    expect(readIngredientLine('3 eggs')).toEqual({ text: '3 eggs', name: 'eggs' });
  });

  it('[BAT-56] guesses no food: what is not known is named with its words', () => {
    const adopted = adoptRecipe(catalogue, {
      name: 'Mystery',
      ingredients: [{ text: '200 g sea wrack', name: 'sea wrack', grams: 200 }],
      steps: [],
      slices: 2,
    });
    expect(!adopted.ok && adopted.problem.message).toContain('200 g sea wrack');
  });

  it.each([
    ['not JSON', '{"@type":', 'kitchen/recipe-not-json'],
    ['another thing', '{"@type":"Person","name":"x"}', 'kitchen/recipe-none'],
    ['no name', '{"@type":"Recipe","recipeIngredient":["1 g salt"]}', 'kitchen/recipe-no-name'],
    ['no ingredients', '{"@type":"Recipe","name":"x"}', 'kitchen/recipe-no-ingredients'],
    ['nested without end', `${'['.repeat(5000)}${']'.repeat(5000)}`, 'kitchen/recipe-none'],
  ])('[BAT-55] refuses a file with %s, by name', (_, text, code) => {
    const read = readRecipeJsonLd(text);
    expect(!read.ok && read.problem.code).toBe(code);
  });
});
