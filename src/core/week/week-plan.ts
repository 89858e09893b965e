import type { Grams } from '../units/quantities.ts';
import type { Macros } from './week-request.ts';

/** Portions of a dish on a day: from a pan of the plan, or from what was ready before. */
export type PlannedPortions =
  | {
      readonly from: 'pan';
      readonly recipe: string;
      readonly cookedOn: string;
      readonly portions: number;
      /** Past its days in the fridge: frozen when cooked, thawed for this day. */
      readonly frozen: boolean;
    }
  | { readonly from: 'ready'; readonly batch: string; readonly portions: number };

export interface PlannedFood {
  readonly food: string;
  readonly grams: Grams;
}

export interface PlannedDay {
  readonly date: string;
  readonly target: Macros;
  readonly dishes: readonly PlannedPortions[];
  readonly foods: readonly PlannedFood[];
  readonly totals: Macros;
}

export interface PlannedPan {
  readonly date: string;
  readonly recipe: string;
  readonly portions: number;
}

export interface WeekPlan {
  readonly days: readonly PlannedDay[];
  readonly pans: readonly PlannedPan[];
  /** Counted anew from the plan itself, kilocalories of mistake. */
  readonly cost: number;
  /** No plan costs less: proven by the solver. */
  readonly bound: number;
  /** (cost - bound) / cost. */
  readonly gap: number;
  readonly why: readonly string[];
}
