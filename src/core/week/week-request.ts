import type { Grams } from '../units/quantities.ts';

export interface Macros {
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
  /** As a target: the least there should be. */
  readonly fibreG: Grams;
}
/** Off target either way, or too little: fibre above its least costs nothing. */
export const macroNames = ['proteinG', 'carbohydrateG', 'fatG', 'fibreG'] as const;

export interface WeekDay {
  readonly date: string;
  readonly target: Macros;
  /** Whether something may be cooked on it. */
  readonly cooking: boolean;
}

/** A recipe as the week may cook it. */
export interface WeekDish {
  readonly recipe: string;
  readonly name: string;
  readonly perPortion: Macros;
  /** Days it may be eaten from the fridge, the day it is cooked counted: 1 is that day only. */
  readonly keepsDays: number;
  readonly freezes: boolean;
  /** A smaller or a larger pan is not cooked. */
  readonly leastPortions: number;
  readonly mostPortions: number;
  /** Ingredients of one portion, where every price is known. */
  readonly centsPerPortion?: number;
}

/** Cooked before and still there. */
export interface ReadyDish {
  readonly batch: string;
  /** The recipe it was cooked by: it counts as that dish. */
  readonly recipe?: string;
  readonly name: string;
  readonly perPortion: Macros;
  readonly portions: number;
  /** Index of the last day it may be eaten on; frozen portions have none. */
  readonly lastDay?: number;
}

/** Eaten as it is, beside the dishes. */
export interface WeekFood {
  readonly food: string;
  readonly name: string;
  readonly per100g: Macros;
  readonly minG: Grams;
  readonly maxG: Grams;
  readonly unitG?: Grams;
  readonly centsPer100g?: number;
}

/** Raw and bought for the plan that stands: it is out unless one of these dishes is cooked in time. */
export interface BoughtRaw {
  readonly food: string;
  readonly recipes: readonly string[];
  /** Index of the last day it may be cooked on. */
  readonly lastDay: number;
  /** Portions it is meant for. */
  readonly portions: number;
}

export interface WeekRules {
  readonly portionsPerDay: { readonly min: number; readonly max: number };
  /** Portions of one dish on one day, at most. */
  readonly sameDishPerDay: number;
  /** Different dishes wanted over the days. */
  readonly wantedDishes: number;
  /** Portions of one dish over the days that are no bore yet. */
  readonly toleratedPortions: number;
  readonly pansPerCookDay: number;
  readonly foodsPerDay: number;
  readonly freezer: boolean;
}

export interface WeekRequest {
  readonly days: readonly WeekDay[];
  readonly dishes: readonly WeekDish[];
  readonly ready: readonly ReadyDish[];
  readonly foods: readonly WeekFood[];
  readonly bought?: readonly BoughtRaw[];
  readonly rules: WeekRules;
}

/**
 * What a week costs, in kilocalories of mistake, as the day's plan counts (4, 4 and 9 a gram off target, 4 a gram of fibre short). All but these
 * are common practice, no source: what an evening at the stove, a dish too often, or food thrown away is worth.
 */
export const weekWeights = {
  proteinG: 4,
  carbohydrateG: 4,
  fatG: 9,
  fibreG: 4,
  cookDay: 80,
  pan: 40,
  dishMissing: 60,
  portionTooOften: 20,
  portionFrozen: 6,
  /** Cooked and not eaten within the days, or not in time. */
  portionWasted: 60,
  cent: 0.1,
} as const;
