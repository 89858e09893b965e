import { answered, refused, type Outcome } from '../../problems/problem.ts';
import { toGrams } from '../../units/mass.ts';
import type { Grams } from '../../units/quantities.ts';
import { GRAM } from './recipe-json-ld.ts';

/** One ingredient as a file of another program says it. */
export interface ForeignIngredient {
  /** As written: nothing of it is lost, whatever is understood of it. */
  readonly text: string;
  /** What is left when amount and unit are taken off. */
  readonly name: string;
  readonly grams?: Grams;
  /** An id of a food, where the file was written by this tool. */
  readonly food?: string;
  readonly form?: string;
}

export interface ForeignRecipe {
  readonly identifier?: string;
  readonly name: string;
  readonly ingredients: readonly ForeignIngredient[];
  readonly steps: readonly string[];
  readonly slices?: number;
  readonly cookedG?: Grams;
}

type JsonObject = Readonly<Record<string, unknown>>;

const MOST_CHARACTERS = 2_000_000;
const MOST_DEPTH = 40;
const MOST_RECIPES = 500;

/** Every schema.org Recipe in a JSON-LD text (BAT-55), alone, in a list or in an "@graph". */
export function readRecipeJsonLd(text: string): Outcome<readonly ForeignRecipe[]> {
  if (text.length > MOST_CHARACTERS) {
    return fault('recipe-too-big', 'The file is larger than any recipe.', 'Export fewer recipes at a time.');
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return fault(
      'recipe-not-json',
      'The file is not JSON, or it is cut off.',
      'Save the recipe as schema.org JSON-LD.',
    );
  }
  const found = recipesIn(parsed, 0).slice(0, MOST_RECIPES);
  if (found.length === 0) {
    return fault(
      'recipe-none',
      'There is no schema.org Recipe in the file.',
      'Look for "@type": "Recipe" in it, or export it again as JSON-LD.',
    );
  }
  const recipes: ForeignRecipe[] = [];
  for (const one of found) {
    const read = readOne(one);
    if (!read.ok) return read;
    recipes.push(read.value);
  }
  return answered(recipes);
}

function fault(code: string, message: string, remedy: string): Outcome<never> {
  return refused(`kitchen/${code}`, 'file', message, remedy);
}

function recipesIn(value: unknown, depth: number): JsonObject[] {
  if (depth > MOST_DEPTH) return [];
  if (Array.isArray(value)) return value.flatMap((part) => recipesIn(part, depth + 1));
  if (!isObject(value)) return [];
  const types = asList(value['@type']).map((type) => String(type).replace(/^https?:\/\/schema\.org\//, ''));
  return types.includes('Recipe') ? [value] : recipesIn(value['@graph'] ?? [], depth + 1);
}

function readOne(recipe: JsonObject): Outcome<ForeignRecipe> {
  const name = plainText(recipe['name']);
  const ingredients = ingredientsOf(recipe);
  if (name === undefined) {
    return fault('recipe-no-name', 'A recipe in the file has no name.', 'Give it a "name" in the file.');
  }
  if (ingredients.length === 0) {
    return fault(
      'recipe-no-ingredients',
      `The recipe "${name}" lists no ingredients.`,
      'Give it "recipeIngredient" in the file.',
    );
  }
  const identifier = plainText(recipe['identifier']);
  return answered({
    ...(identifier !== undefined && { identifier }),
    name: name.slice(0, 120),
    ingredients,
    steps: stepsOf(recipe['recipeInstructions'], 0),
    ...yieldOf(recipe['recipeYield'] ?? recipe['yield']),
  });
}

function ingredientsOf(recipe: JsonObject): ForeignIngredient[] {
  const supplies = asList(recipe['supply']).flatMap((supply) => {
    const read = isObject(supply) ? supplied(supply) : undefined;
    return read ? [read] : [];
  });
  const lines = asList(recipe['recipeIngredient'] ?? recipe['ingredients']).flatMap((line) => {
    const text = plainText(line);
    return text === undefined ? [] : [readIngredientLine(text)];
  });
  return supplies.length > 0 && supplies.length >= lines.length ? supplies : lines;
}

function supplied(supply: JsonObject): ForeignIngredient | undefined {
  const name = plainText(supply['name']);
  const quantity = supply['requiredQuantity'];
  const food = plainText(supply['identifier']);
  const form = plainText(supply['description']);
  if (name === undefined || !isObject(quantity)) return undefined;
  const value = Number(quantity['value']);
  if (quantity['unitCode'] !== GRAM || !Number.isFinite(value) || value <= 0) return undefined;
  return {
    text: `${value} g ${name}`,
    name,
    grams: value,
    ...(food !== undefined && { food }),
    ...(form !== undefined && { form }),
  };
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅓': ' 1/3',
  '⅔': ' 2/3',
};
const AMOUNT =
  /^(\d+\/\d+|\d+(?:[.,]\d+)?(?:\s+\d+\/\d+)?)\s*(kg|g|grams?|oz|ounces?|lbs?|pounds?|mg)?\b\.?\s*(?:of\s+)?(.*)$/i;

/** "1.5 lb minced turkey (raw)": grams where the unit is one of mass; a cup or a piece is left to be weighed. */
export function readIngredientLine(text: string): ForeignIngredient {
  const plain = text.replace(/[½¼¾⅓⅔]/g, (sign) => FRACTIONS[sign] ?? sign).trim();
  const [, amount, unit, rest] = AMOUNT.exec(plain) ?? [];
  if (amount === undefined || rest === undefined || rest.trim() === '') return { text, name: plain };
  const grams = unit === undefined ? undefined : massOf(numberIn(amount), unit.toLowerCase());
  return { text, name: rest.trim(), ...(grams !== undefined && grams > 0 && { grams }) };
}

function numberIn(amount: string): number {
  return amount
    .replace(',', '.')
    .split(/\s+/)
    .map((part) => {
      const [over, under] = part.split('/').map(Number);
      return (over ?? 0) / (under ?? 1);
    })
    .reduce((sum, part) => sum + part, 0);
}

function massOf(amount: number, unit: string): Grams {
  if (unit === 'mg') return amount / 1000;
  if (unit === 'kg') return amount * 1000;
  if (unit.startsWith('g')) return amount;
  return toGrams(amount, unit.startsWith('o') ? 'oz' : 'lb');
}

function stepsOf(instructions: unknown, depth: number): string[] {
  if (depth > MOST_DEPTH) return [];
  return asList(instructions)
    .flatMap((step) => {
      if (typeof step === 'string') return step.split(/\n+/);
      if (!isObject(step)) return [];
      const parts = step['itemListElement'] ?? step['steps'];
      if (parts !== undefined) return stepsOf(parts, depth + 1);
      return [plainText(step['text']) ?? plainText(step['name']) ?? ''];
    })
    .map((step) => (plainText(step) ?? '').slice(0, 600))
    .filter((step) => step !== '');
}

/** "12 slices", "serves 4", 4, "900 g", or several of them. */
function yieldOf(value: unknown): { slices?: number; cookedG?: Grams } {
  const found: { slices?: number; cookedG?: Grams } = {};
  for (const one of asList(value)) {
    const text = plainText(isObject(one) ? one['value'] : one) ?? '';
    const mass = /(\d+(?:[.,]\d+)?)\s*(kg|g|oz|lb)\b/i.exec(text);
    const count = /(\d+)/.exec(text);
    if (mass?.[1] !== undefined && mass[2] !== undefined) {
      found.cookedG ??= massOf(numberIn(mass[1]), mass[2].toLowerCase());
    } else if (count) {
      const slices = Number(count[1]);
      if (slices >= 1 && slices <= 500) found.slices ??= slices;
    }
  }
  return found;
}

function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function asList(value: unknown): readonly unknown[] {
  return value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];
}

/** Text without markup; tags in it are dropped, as other programs' exports often carry them. */
function plainText(value: unknown): string | undefined {
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'string') return undefined;
  const text = value
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return text === '' ? undefined : text;
}
