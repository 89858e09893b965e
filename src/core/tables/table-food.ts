import type { Nutrients } from '../problems/shapes.ts';
import type { Grams, Percent } from '../units/quantities.ts';
import type { FoodSection } from './food-section.ts';
import { storageClasses, type StorageClass } from './storage-clock.ts';
import { cellList, cellNumber, cellWord, readTextTable, requiredNumber } from './text-table.ts';

const foodStates = ['raw', 'cooked', 'dry', 'frozen', 'as-is'] as const;
export type FoodState = (typeof foodStates)[number];

/** Specific factors, kilocalories per gram, as stored with the food; source merrill-watt-1973. */
export interface EnergyFactors {
  readonly protein: number;
  readonly fat: number;
  /** Absent where the food has no carbohydrate to speak of. */
  readonly carbohydrate?: number;
}

/** A household measure of this very food: 1 "large" egg of 50 g. */
export interface HouseholdWeight {
  readonly amount: number;
  readonly unit: string;
  readonly grams: Grams;
}

/** Least and most of it on one plate when a plan is made; `unitG` where only whole units make sense. */
export interface Serving {
  readonly minG: Grams;
  readonly maxG: Grams;
  readonly unitG?: Grams;
}

export interface TableFood {
  /** "usda-sr28:13498". */
  readonly id: string;
  /** USDA number of five digits. */
  readonly ndb: string;
  readonly name: string;
  /** Other words an athlete would type. */
  readonly synonyms: readonly string[];
  readonly group: string;
  readonly aisle: string;
  readonly state: FoodState;
  readonly storage: StorageClass;
  readonly serving: Serving;
  /** Per 100 g of the edible part. Carbohydrate is by difference and holds the fibre. Absent is unknown. */
  readonly per100g: Nutrients;
  readonly waterG: Grams;
  readonly ashG: Grams;
  /** Absent where the energy was not worked out from factors (oils, label foods, recipes). */
  readonly energyFactors?: EnergyFactors;
  /** Share of the weight as bought that is not eaten (shell, skin, bone). */
  readonly refusePercent: Percent;
  readonly measures: readonly HouseholdWeight[];
  readonly source: 'usda-sr28';
}

export const tableFoodId = (ndb: string): string => `usda-sr28:${ndb}`;

/**
 * Reads a section. Columns: USDA number | name | synonyms | state | storage class | serving "least-most" or
 * "least-most/unit" in g | energy kcal, protein, fat, saturated fat, carbohydrate, fibre, sugars g, sodium,
 * potassium mg, water, ash g | energy factors protein/fat/carbohydrate | refuse % | household measures.
 */
export function readFoodSection(section: FoodSection): TableFood[] {
  return readTextTable(section.rows, 10).map((cells) => {
    const [ndb = '', name = '', synonyms, state, storage, serving, composition, factors, refuse, measures] =
      cells;
    const energyFactors = readFactors(factors);
    return {
      id: tableFoodId(ndb),
      ndb,
      name,
      synonyms: cellList(synonyms, ','),
      group: section.group,
      aisle: state === 'frozen' ? 'frozen' : section.aisle,
      state: cellWord(state, foodStates),
      storage: cellWord(storage, storageClasses),
      serving: readServing(serving),
      ...readComposition(composition),
      ...(energyFactors && { energyFactors }),
      refusePercent: requiredNumber(refuse),
      measures: cellList(measures, ';').map(readMeasure),
      source: 'usda-sr28',
    };
  });
}

function readComposition(cell: string | undefined): Pick<TableFood, 'per100g' | 'waterG' | 'ashG'> {
  const values = cellList(cell, ' ');
  if (values.length !== 11) throw new RangeError(`eleven figures belong in a composition: ${String(cell)}`);
  const [energyKcal, proteinG, fatG, saturated, carbohydrateG, fibre, sugars, sodium, potassium, water, ash] =
    values;
  const optional = {
    fibreG: cellNumber(fibre),
    sugarsG: cellNumber(sugars),
    saturatedFatG: cellNumber(saturated),
    sodiumMg: cellNumber(sodium),
    potassiumMg: cellNumber(potassium),
  };
  const per100g: Nutrients = {
    energyKcal: requiredNumber(energyKcal),
    proteinG: requiredNumber(proteinG),
    fatG: requiredNumber(fatG),
    carbohydrateG: requiredNumber(carbohydrateG),
  };
  for (const name of ['fibreG', 'sugarsG', 'saturatedFatG', 'sodiumMg', 'potassiumMg'] as const) {
    const value = optional[name];
    if (value !== undefined) per100g[name] = value;
  }
  return { per100g, waterG: requiredNumber(water), ashG: requiredNumber(ash) };
}

function readFactors(cell: string | undefined): EnergyFactors | undefined {
  const [protein, fat, carbohydrate] = cellList(cell, '/');
  if (protein === undefined) return undefined;
  const forCarbohydrate = cellNumber(carbohydrate);
  return {
    protein: requiredNumber(protein),
    fat: requiredNumber(fat),
    ...(forCarbohydrate !== undefined && { carbohydrate: forCarbohydrate }),
  };
}

function readServing(cell: string | undefined): Serving {
  const match = /^([\d.]+)-([\d.]+)(?:\/([\d.]+))?$/.exec(cell ?? '');
  if (!match) throw new RangeError(`not a serving: ${String(cell)}`);
  const unitG = match[3] === undefined ? undefined : requiredNumber(match[3]);
  return {
    minG: requiredNumber(match[1]),
    maxG: requiredNumber(match[2]),
    ...(unitG !== undefined && { unitG }),
  };
}

function readMeasure(text: string): HouseholdWeight {
  const match = /^([\d.]+) (.+)=([\d.]+)$/.exec(text);
  if (!match) throw new RangeError(`not a measure: ${text}`);
  return { amount: requiredNumber(match[1]), unit: match[2] ?? '', grams: requiredNumber(match[3]) };
}
