import type { Ledger } from '../journal/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import { tableFoods } from '../tables/foods.ts';
import type { RicePolicy } from '../tables/storage-clock.ts';
import { strengthAt } from './batch-containers.ts';
import { batchEvents, eatFromBatches, type OpenBatches } from './batch-events.ts';
import {
  asPreferred,
  fromDefinition,
  fromTable,
  type CatalogueFood,
  type FoodPreference,
} from './catalogue-food.ts';
import { batchFood, batchFoodId, cookedBatch, type CookedBatch } from './cooked-batch.ts';
import { eventsOf, play } from './kitchen-event.ts';
import { recipeFood, recipeFoodId, type Recipe } from './recipe-food.ts';

/** Every food there is to eat or cook with: bundled, own, cooked, recipes. Drawn from the journal, holds no stock. */
export interface Catalogue {
  /**
   * A food by its id. With a moment: as it was defined then, so that a new label does not rewrite last month; a
   * correction of the old entry does.
   */
  food(id: string, atMs?: number): CatalogueFood | undefined;
  /** Foods to pick from: bundled, own and recipes, not the batches. */
  foods(): readonly CatalogueFood[];
  preference(id: string): FoodPreference | undefined;
  batch(id: string): CookedBatch | undefined;
  batches(): ReadonlyMap<string, CookedBatch>;
  recipe(id: string): Recipe | undefined;
  recipes(): readonly Recipe[];
  /** Nutrients per gram of a batch's portion (0: the pan) at a moment, against those it was cooked with (BAT-23). */
  strength(batch: string, portion: number, atMs: number): number;
  readonly rice: RicePolicy;
  /** Batches of the journal that cannot be: each with its entry and the remedy. */
  readonly problems: readonly Problem[];
}

interface Version {
  readonly fromMs: number;
  readonly food: CatalogueFood;
}

const bundled = new Map(tableFoods.map((food) => [food.id, fromTable(food)]));

/** Draws the catalogue from the journal. */
export function createCatalogue(ledger: Ledger): Catalogue {
  const preferences = new Map(ledger.of('food-preferred').map((fact) => [fact.data.food, fact.data]));
  const own = new Map<string, Version[]>();
  for (const { data, epochMs } of ledger.of('food-defined')) {
    const version = { fromMs: epochMs, food: asPreferred(fromDefinition(data), preferences.get(data.food)) };
    own.set(data.food, [...(own.get(data.food) ?? []), version]);
  }
  const recipes = new Map(ledger.of('recipe-defined').map((fact) => [fact.data.recipe, fact.data]));
  const rice = ledger.latest('rice-rule-chosen')?.data.rule ?? 'strict';
  const batches = new Map<string, CookedBatch>();
  const cooked = new Map<string, CatalogueFood>();
  const problems: Problem[] = [];

  function plainFood(id: string, atMs?: number): CatalogueFood | undefined {
    const versions = own.get(id);
    if (versions) return versionAt(versions, atMs);
    const known = bundled.get(id);
    return known && asPreferred(known, preferences.get(id));
  }

  function food(id: string, atMs?: number): CatalogueFood | undefined {
    const made = cooked.get(id);
    if (made) return asPreferred(made, preferences.get(id));
    if (!id.startsWith(RECIPE_PREFIX)) return plainFood(id, atMs);
    const recipe = recipes.get(id.slice(RECIPE_PREFIX.length));
    const dish = recipe && recipeFood(recipe, (part) => plainFood(part, atMs));
    return dish && asPreferred(dish, preferences.get(id));
  }

  for (const fact of ledger.of('batch-cooked')) {
    const batch = cookedBatch(fact, (id) => food(id, fact.epochMs), rice);
    if (batch.ok) {
      batches.set(batch.value.batch, batch.value);
      cooked.set(batchFoodId(batch.value.batch), batchFood(batch.value));
    } else problems.push(batch.problem);
  }

  return {
    food,
    foods: () => pickable(food, [...own.keys()], [...recipes.keys()]),
    preference: (id) => preferences.get(id),
    batch: (id) => batches.get(id),
    batches: () => batches,
    recipe: (id) => recipes.get(id),
    recipes: () => [...recipes.values()],
    strength: strengths(ledger, batches),
    rice,
    problems,
  };
}

const RECIPE_PREFIX = recipeFoodId('');

function versionAt(versions: readonly Version[], atMs: number | undefined): CatalogueFood | undefined {
  if (atMs === undefined) return versions.at(-1)?.food;
  return (versions.findLast((version) => version.fromMs <= atMs) ?? versions[0])?.food;
}

function pickable(
  food: Catalogue['food'],
  own: readonly string[],
  recipes: readonly string[],
): readonly CatalogueFood[] {
  const ids = new Set([...own, ...recipes.map(recipeFoodId), ...bundled.keys()]);
  return [...ids].map((id) => food(id)).filter((known) => known !== undefined);
}

/** Batches are followed only where one was ever weighed again; else everything has the strength it was cooked with. */
function strengths(ledger: Ledger, batches: ReadonlyMap<string, CookedBatch>): Catalogue['strength'] {
  let open: OpenBatches | undefined;
  return (batch, portion, atMs) => {
    if (ledger.of('batch-reweighed').length === 0) return 1;
    open ??= followed(ledger, batches);
    const of = open.get(batch);
    return of ? strengthAt(of, portion, atMs) : 1;
  };
}

function followed(ledger: Ledger, batches: ReadonlyMap<string, CookedBatch>): OpenBatches {
  const open: OpenBatches = new Map();
  const ever = Number.POSITIVE_INFINITY;
  // Notes are the stock's to tell.
  const unheard = () => undefined;
  play([
    ...batchEvents(ledger, batches, open, unheard, ever),
    ...eventsOf(ledger.of('meal-eaten'), ever, (fact) => eatFromBatches(fact, open, unheard)),
  ]);
  return open;
}
