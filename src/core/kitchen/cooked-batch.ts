import type { Fact } from '../journal/ledger.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { RicePolicy } from '../tables/storage-clock.ts';
import { yieldRow } from '../tables/yields.ts';
import { batchStorage, type BatchStorage } from './batch-storage.ts';
import type { CatalogueFood } from './catalogue-food.ts';
import { balancePan, type PanBalance } from './mass-balance.ts';
import type { Pan, PanIngredient } from './pan.ts';
import { unknownFood, type FoodLookup } from './recipe-food.ts';
import type { Grams } from '../units/quantities.ts';

export const batchFoodId = (batch: string): string => `batch:${batch}`;

/** A batch as the journal has it, its mass balance drawn. */
export interface CookedBatch {
  readonly batch: string;
  /** The entry it was written in. */
  readonly entry: string;
  readonly name: string;
  readonly cookedAtMs: number;
  /** The recipe it was cooked by. */
  readonly recipe?: string;
  readonly balance: PanBalance;
  readonly storage: BatchStorage;
  /** Raw foods in the pan: per gram cooked, so many grams of each. */
  readonly ingredients: readonly { readonly food: string; readonly name: string; readonly rawG: Grams }[];
}

/** Raw weights by food id and the weighed pan, as the app enters them and the journal keeps them. */
export interface PanByFood {
  readonly ingredients: readonly {
    readonly food: string;
    readonly rawG: Grams;
    readonly form?: string | undefined;
  }[];
  readonly containerG: Grams;
  readonly cookedGrossG: Grams;
  readonly drainedFatG?: Grams | undefined;
}

/** Looks the foods of a pan up. Refuses unknown foods and unknown forms by name. */
export function resolvePan(
  pan: PanByFood,
  foodOf: FoodLookup,
): Outcome<{ readonly pan: Pan; readonly foods: readonly CatalogueFood[] }> {
  const ingredients: PanIngredient[] = [];
  const foods: CatalogueFood[] = [];
  for (const [index, { food, rawG, form }] of pan.ingredients.entries()) {
    const known = foodOf(food);
    if (!known) return unknownFood(food, `ingredients.${index}.food`);
    const row = form === undefined ? undefined : yieldRow(form);
    if (form !== undefined && !row) return unknownForm(form, index);
    foods.push(known);
    ingredients.push({
      name: known.name,
      rawG,
      per100g: known.per100g,
      ...(known.waterG !== undefined && { waterG: known.waterG }),
      ...(row && { form: row }),
    });
  }
  const { containerG, cookedGrossG, drainedFatG = 0 } = pan;
  return answered({ pan: { ingredients, containerG, cookedGrossG, drainedFatG }, foods });
}

function unknownForm(form: string, index: number): Outcome<never> {
  return refused(
    'kitchen/unknown-form',
    `ingredients.${index}.form`,
    `"${form}" is not a row of the yield table.`,
    'Pick how it is cooked from the list, or leave it out.',
  );
}

interface Remembered {
  readonly rice: RicePolicy;
  readonly foods: readonly (CatalogueFood | undefined)[];
  readonly outcome: Outcome<CookedBatch>;
}

/** A pan's balance depends on its fact, its foods and the rice rule alone: while all are the same, it is not drawn again. */
const remembered = new WeakMap<Fact<'batch-cooked'>, Remembered>();

/** A batch of the journal with its balance. A fact that cannot be is answered as a problem at its entry, never thrown. */
export function cookedBatch(
  fact: Fact<'batch-cooked'>,
  foodOf: FoodLookup,
  rice: RicePolicy,
): Outcome<CookedBatch> {
  const foods = fact.data.ingredients.map(({ food }) => foodOf(food));
  const before = remembered.get(fact);
  if (before?.rice === rice && before.foods.every((food, index) => food === foods[index])) {
    return before.outcome;
  }
  const outcome = drawBatch(fact, foodOf, rice);
  remembered.set(fact, { rice, foods, outcome });
  return outcome;
}

function drawBatch(
  { data, entry, epochMs }: Fact<'batch-cooked'>,
  foodOf: FoodLookup,
  rice: RicePolicy,
): Outcome<CookedBatch> {
  const resolved = resolvePan(data, foodOf);
  if (!resolved.ok) return { ok: false, problem: { ...resolved.problem, path: entry.id } };
  const balance = balancePan(resolved.value.pan);
  if (!balance.ok) return { ok: false, problem: { ...balance.problem, path: entry.id } };
  const { foods } = resolved.value;
  return answered({
    batch: data.batch,
    entry: entry.id,
    name: data.name,
    cookedAtMs: epochMs,
    ...(data.recipe !== undefined && { recipe: data.recipe }),
    balance: balance.value,
    storage: batchStorage(foods, rice),
    ingredients: data.ingredients.map(({ food, rawG }, index) => ({
      food,
      name: foods[index]?.name ?? food,
      rawG,
    })),
  });
}

const asFood = new WeakMap<CookedBatch, CatalogueFood>();

/** A cooked batch as a food per 100 g, as the mass balance has it. One batch is one food, however often it is asked for. */
export function batchFood(batch: CookedBatch): CatalogueFood {
  const known = asFood.get(batch) ?? makeBatchFood(batch);
  asFood.set(batch, known);
  return known;
}

function makeBatchFood(batch: CookedBatch): CatalogueFood {
  const id = batchFoodId(batch.batch);
  return {
    id,
    name: batch.name,
    synonyms: batch.ingredients.map((ingredient) => ingredient.name),
    origin: 'batch',
    state: 'cooked',
    per100g: { ...batch.balance.per100gCooked, origin: id },
    storage: batch.storage.storage,
    aisle: 'cooked',
    serving: { minG: 50, maxG: 600 },
    measures: [],
    basis: 'mass balance',
  };
}
