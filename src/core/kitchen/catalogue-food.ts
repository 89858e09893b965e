import type { DataOf } from '../journal/kinds/registry.ts';
import { isStorageClass, type StorageClass } from '../tables/storage-clock.ts';
import type { FoodState, HouseholdWeight, Serving, TableFood } from '../tables/table-food.ts';
import type { SourceKey } from '../tables/sources.ts';
import type { Grams } from '../units/quantities.ts';
import { labelSpread } from './label-spread.ts';
import { exactly, type NutrientAmount } from './nutrients.ts';

/** A food as every part of the tool meets it, whether bundled, the athlete's own, cooked or a recipe. */
export interface CatalogueFood {
  /** "usda-sr28:13498", an own id, "batch:<batch>" or "recipe:<recipe>". */
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly origin: 'table' | 'own' | 'batch' | 'recipe';
  readonly state: FoodState;
  /** Per 100 g; lower bounds named, rounding of a label as standard uncertainty. */
  readonly per100g: NutrientAmount;
  readonly waterG?: Grams;
  readonly storage: StorageClass;
  readonly aisle: string;
  readonly serving: Serving;
  readonly measures: readonly HouseholdWeight[];
  /** Where its figures come from: a published source, or what the athlete said. */
  readonly basis: SourceKey | DataOf<'food-defined'>['basis'] | 'mass balance';
}

export type FoodDefinition = DataOf<'food-defined'>;
export type FoodPreference = DataOf<'food-preferred'>;

export function fromTable(food: TableFood): CatalogueFood {
  return {
    id: food.id,
    name: food.name,
    synonyms: food.synonyms,
    origin: 'table',
    state: food.state,
    per100g: exactly(food.per100g, food.id),
    waterG: food.waterG,
    storage: food.storage,
    aisle: food.aisle,
    serving: food.serving,
    measures: food.measures,
    basis: food.source,
  };
}

const defined = new WeakMap<FoodDefinition, CatalogueFood>();

/** An own food. One definition is one food, however often the catalogue is drawn, so that what is worked out from it can be kept. */
export function fromDefinition(definition: FoodDefinition): CatalogueFood {
  const known = defined.get(definition) ?? makeOwnFood(definition);
  defined.set(definition, known);
  return known;
}

function makeOwnFood(definition: FoodDefinition): CatalogueFood {
  const { food, name, state, per100g, unit, label } = definition;
  return {
    id: food,
    name,
    synonyms: [],
    origin: 'own',
    state,
    per100g: { ...exactly(per100g, food), spread: label ? labelSpread(label) : {} },
    storage: storageOf(definition),
    aisle: definition.aisle ?? 'own foods',
    serving: unit ? wholeUnits(unit.grams) : defaultServing(state),
    measures: unit ? [{ amount: 1, unit: unit.name, grams: unit.grams }] : [],
    basis: definition.basis,
  };
}

/** Without a class of its own a food gets the strictest of its state; rice is told by its name. */
function storageOf({ storage, state, name }: FoodDefinition): StorageClass {
  if (storage !== undefined && isStorageClass(storage)) return storage;
  const rice = /\brice\b/i.test(name);
  const byState: Record<FoodState, StorageClass> = {
    raw: 'raw-mince',
    cooked: rice ? 'cooked-rice' : 'cooked-dish',
    dry: rice ? 'dry-rice' : 'dry',
    frozen: 'frozen-produce',
    'as-is': 'condiment',
  };
  return byState[state];
}

/** Servings of own foods until the athlete sets them. Common practice, no source. */
function defaultServing(state: FoodState): Serving {
  return state === 'dry' ? { minG: 10, maxG: 100 } : { minG: 30, maxG: 300 };
}

function wholeUnits(grams: Grams): Serving {
  return { minG: grams, maxG: grams * 6, unitG: grams };
}

interface Preferred {
  readonly preference: FoodPreference;
  readonly food: CatalogueFood;
}

const preferred = new WeakMap<CatalogueFood, Preferred>();

/** A food as this athlete uses it. */
export function asPreferred(food: CatalogueFood, preference: FoodPreference | undefined): CatalogueFood {
  if (!preference) return food;
  const before = preferred.get(food);
  if (before?.preference === preference) return before.food;
  const changed = applyPreference(food, preference);
  preferred.set(food, { preference, food: changed });
  return changed;
}

function applyPreference(food: CatalogueFood, preference: FoodPreference): CatalogueFood {
  const unitG = preference.unit?.grams ?? food.serving.unitG;
  const minG = preference.minG ?? (preference.unit ? preference.unit.grams : food.serving.minG);
  const maxG = Math.max(minG, preference.maxG ?? food.serving.maxG);
  const measures = preference.unit
    ? [{ amount: 1, unit: preference.unit.name, grams: preference.unit.grams }, ...food.measures]
    : food.measures;
  return { ...food, measures, serving: { minG, maxG, ...(unitG !== undefined && { unitG }) } };
}
