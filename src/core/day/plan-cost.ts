import type { Kilocalories } from '../units/quantities.ts';
import type { DayRequest } from './day-request.ts';
import type { MealRole } from './meal-role.ts';
import { countedTotal, type Portion } from './nutrient-sums.ts';
import {
  DAY_WEIGHTS,
  FAT_BEFORE_TRAINING_WEIGHT,
  FIBRE_WEIGHT,
  MEAL_WEIGHTS,
  PLATE_COST,
  SODIUM_WEIGHT,
  type MacroGrams,
} from './plate-problem.ts';
import { eatenPortions, portionOf } from './portions.ts';

/** A meal as answered: what the cost is counted of. */
export interface CountedMeal {
  readonly role: MealRole;
  readonly target: MacroGrams;
  readonly items: readonly { readonly food: string; readonly grams: number }[];
}

/**
 * What a plan costs in kcal of mistake, counted from the request and the answered grams alone: not from what the solver was
 * given, so that a slip in posing would show (DAY-20).
 */
export function planCost(request: DayRequest, meals: readonly CountedMeal[], fatCapG: number): Kilocalories {
  const plates = meals.map(({ items }) => items.map((item) => portionOf(request, item)));
  const all = [...eatenPortions(request), ...plates.flat()];
  return (
    dayCost(request, all) +
    meals.reduce((sum, meal, m) => sum + mealCost(request, meal, plates[m] ?? [], fatCapG), 0)
  );
}

function dayCost(request: DayRequest, all: readonly Portion[]): Kilocalories {
  const { targets } = request;
  const target: MacroGrams = [targets.proteinG, targets.carbohydrateG, targets.fatG];
  const macros = macroSums(all);
  const off = target.reduce<number>(
    (sum, grams, k) => sum + (DAY_WEIGHTS[k] ?? 0) * Math.abs((macros[k] ?? 0) - grams),
    0,
  );
  const fibre = targets.fibreG ? Math.max(0, targets.fibreG.min - countedTotal(all, 'fibreG')) : 0;
  const sodium = targets.sodiumMg ? Math.max(0, countedTotal(all, 'sodiumMg') - targets.sodiumMg.max) : 0;
  return off + FIBRE_WEIGHT * fibre + SODIUM_WEIGHT * sodium;
}

function mealCost(
  request: DayRequest,
  meal: CountedMeal,
  plate: readonly Portion[],
  fatCapG: number,
): Kilocalories {
  const macros = macroSums(plate);
  const off = meal.target.reduce<number>(
    (sum, grams, k) => sum + (MEAL_WEIGHTS[k] ?? 0) * Math.abs((macros[k] ?? 0) - grams),
    0,
  );
  const fat = meal.role === 'before-training' ? Math.max(0, macros[2] - fatCapG) : 0;
  const foods = meal.items.reduce((sum, { food }) => sum + PLATE_COST + dislikeOf(request, food), 0);
  return off + FAT_BEFORE_TRAINING_WEIGHT * fat + foods;
}

function dislikeOf(request: DayRequest, id: string): Kilocalories {
  return request.foods.find((food) => food.id === id)?.dislike ?? 0;
}

function macroSums(portions: readonly Portion[]): MacroGrams {
  return [
    countedTotal(portions, 'proteinG'),
    countedTotal(portions, 'carbohydrateG'),
    countedTotal(portions, 'fatG'),
  ];
}
