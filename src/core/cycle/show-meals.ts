import type { ShowTask } from '../course/show-day.ts';
import type { DayRequest, RequestFood } from '../day/day-request.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import { formatClock } from '../units/clock.ts';
import type { ClockMinutes, Grams, Kilograms } from '../units/quantities.ts';
import { gentleFoods } from './gentle-foods.ts';

type Adopted = DataOf<'plan-adopted'>;
export type ShowMeal = ShowTask & { readonly meal: NonNullable<ShowTask['meal']> };

/** A food on a plate, and how much of it. */
export interface Weighed {
  readonly food: string;
  readonly grams: Grams;
}

export interface ShowMealInputs {
  readonly date: string;
  readonly massKg: Kilograms;
  readonly plannable: readonly RequestFood[];
  /** What the meals before it took out of the stock. */
  readonly taken: readonly Weighed[];
}

/** How long a small meal may take; the planner places nothing else in it. */
const MEAL_MINUTES = 30;
const BUDGET_MS = 150;

export function mealsOf(tasks: readonly ShowTask[]): readonly ShowMeal[] {
  return tasks.filter((task): task is ShowMeal => task.meal !== undefined);
}

/**
 * One small meal of the show day as the day's planner is asked (CRS-30): its macros at its time, from what the stock still
 * holds, foods with little fibre first.
 */
export function showMealRequest(meal: ShowMeal, inputs: ShowMealInputs): DayRequest {
  const { date, massKg, plannable, taken } = inputs;
  return {
    date,
    athlete: { massKg },
    targets: meal.meal,
    events: { wake: formatClock(meal.at), sleep: formatClock(meal.at + MEAL_MINUTES) },
    rules: {
      meals: { min: 1, max: 1 },
      minGapMinutes: 0,
      mealToTrainingMinutes: 0,
      lastMealToSleepMinutes: 0,
      maxFoodsPerMeal: 4,
      fatBeforeTrainingMaxG: 500,
    },
    eaten: [],
    foods: gentleFoods(plannable.flatMap((food) => lessTaken(food, taken))),
    pinned: [],
    fixed: [],
    budgetMs: BUDGET_MS,
  };
}

/** What is left of a food; nothing where it is used up. Each packed portion goes once. */
function lessTaken(food: RequestFood, taken: readonly Weighed[]): readonly RequestFood[] {
  const grams = taken.filter((one) => one.food === food.id).map((one) => one.grams);
  if (grams.length === 0) return [food];
  if (food.portionsG) {
    const portionsG = [...food.portionsG];
    for (const weight of grams) {
      const at = portionsG.findIndex((portion) => Math.abs(portion - weight) < 1);
      if (at >= 0) portionsG.splice(at, 1);
    }
    return portionsG.length === 0 ? [] : [{ ...food, portionsG }];
  }
  if (food.availableG === undefined) return [food];
  const left = food.availableG - grams.reduce((sum, one) => sum + one, 0);
  return left < food.minG ? [] : [{ ...food, availableG: left, maxG: Math.min(food.maxG, left) }];
}

/**
 * The day's meals after the stage was moved: a meal that stood where the sheet had one goes with it; eaten ones and those at
 * times of their own stay. `extra` is the bite for a long wait, if there is one.
 */
export function movedMeals(
  meals: Adopted['meals'],
  before: readonly ShowTask[],
  after: readonly ShowTask[],
  extra: Adopted['meals'][number] | undefined,
): Adopted['meals'] {
  const to = new Map<ClockMinutes, ClockMinutes>();
  mealsOf(before).forEach((task, k) => {
    const moved = mealsOf(after)[k];
    if (moved) to.set(task.at, moved.at);
  });
  const times = new Map([...to].map(([from, at]) => [formatClock(from), formatClock(at)]));
  const moved = meals.map((meal) => ({ ...meal, at: times.get(meal.at) ?? meal.at }));
  return [...moved, ...(extra ? [extra] : [])].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/** The meal that a moved stage added, if the wait is long enough for one. */
export function biteAdded(before: readonly ShowTask[], after: readonly ShowTask[]): ShowMeal | undefined {
  // It comes only once all others are past, so it is the last.
  return mealsOf(after).length > mealsOf(before).length ? mealsOf(after).at(-1) : undefined;
}
