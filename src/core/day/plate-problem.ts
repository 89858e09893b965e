import type { Grams, Kilocalories, Milligrams } from '../units/quantities.ts';

/**
 * The plate problem: how many steps (grams, eggs, slices) of each food go on each plate still open, so that the cost of
 * docs/spec/DAY.md is least. It is posed here, answered by a solver outside, and checked again here.
 */
export interface PlateProblem {
  readonly meals: readonly PlateMeal[];
  readonly foods: readonly PlateFood[];
  /** The day's targets minus what is eaten and pinned; below zero where that is already too much. */
  readonly left: MacroGrams;
  /** Fibre still missing to the day's minimum; absent where there is no minimum. */
  readonly fibreMissingG?: Grams;
  /** Sodium still allowed under the day's maximum; below zero where it is passed already; absent without a maximum. */
  readonly sodiumRoomMg?: Milligrams;
  readonly maxFoodsPerMeal: number;
}

/** Protein, carbohydrate, fat: the order of every triple in this room. */
export type MacroGrams = readonly [proteinG: Grams, carbohydrateG: Grams, fatG: Grams];

export interface PlateMeal {
  readonly target: MacroGrams;
  /** Fat above this costs extra (a meal before training). */
  readonly fatCapG?: Grams;
  /** Foods that must be on this plate; with `steps`, exactly so many. `food` is a place in the problem's foods. */
  readonly held: readonly HeldFood[];
}

export interface HeldFood {
  readonly food: number;
  readonly steps?: number;
}

export interface PlateFood {
  readonly id: string;
  /** Grams of one step: 1, or the unit, or the packed portion. */
  readonly stepG: Grams;
  /** Per step: protein, carbohydrate, fat in g; fibre in g; sodium in mg (unknown counted as 0). */
  readonly perStep: readonly [Grams, Grams, Grams, Grams, Milligrams];
  /** On a plate: none, or at least and at most so many steps. */
  readonly minSteps: number;
  readonly maxSteps: number;
  /** Steps in stock over all plates; Infinity where stock is not counted. */
  readonly stockSteps: number;
  /** What having it on a plate costs. */
  readonly plateCost: Kilocalories;
  /** At least one plate must carry a food of this `kin`. */
  readonly asked: boolean;
  /** Foods of one kin are the same thing in packed portions of different weight: one of them on a plate. */
  readonly kin: number;
}

/** Steps per meal and food: `steps[meal][food]`, whole numbers. */
export type PlateSteps = readonly (readonly number[])[];

/** kcal of mistake per gram of protein, carbohydrate, fat off the day's target (the energy factors 4, 4, 9). */
export const DAY_WEIGHTS: readonly [number, number, number] = [4, 4, 9];
/** The same per gram off a meal's target. */
export const MEAL_WEIGHTS: readonly [number, number, number] = [2, 2, 4.5];
export const FIBRE_WEIGHT = 4;
export const SODIUM_WEIGHT = 0.02;
export const FAT_BEFORE_TRAINING_WEIGHT = 9;
export const PLATE_COST = 5;
