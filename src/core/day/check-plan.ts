import { parseClock } from '../units/clock.ts';
import type { AnsweredMeal } from './day-answer.ts';
import type { RequestFood } from './day-request.ts';
import type { DaySituation } from './day-situation.ts';
import { mealRole } from './meal-role.ts';
import type { PlateSteps } from './plate-problem.ts';
import type { PosedPlates } from './pose-plates.ts';

const DUST = 1e-6;

/**
 * Holds a plan against every limit of the day, from the request alone (DAY-21). Answers what is broken, a sentence each; none for
 * a plan that may be eaten. A solver is never trusted: an answer is given only when this finds nothing.
 */
export function checkPlan(day: DaySituation, meals: readonly AnsweredMeal[]): readonly string[] {
  return [
    ...brokenTimes(day, meals),
    ...meals.flatMap((meal) => brokenPlate(day, meal)),
    ...brokenStock(day, meals),
  ];
}

/** Holds the solver's steps against the wishes that were posed: foods held on a plate, foods asked for today (DAY-18, DAY-19). */
export function brokenWishes({ problem }: PosedPlates, steps: PlateSteps): readonly string[] {
  const { foods } = problem;
  const missing = [...new Set(foods.filter((food) => food.asked).map((food) => food.kin))].filter(
    (kin) => !steps.some((plate) => plate.some((count, f) => count > 0 && foods[f]?.kin === kin)),
  );
  const unheld = problem.meals.flatMap(({ held }, m) =>
    held.filter(({ food, steps: wanted }) => {
      const count = steps[m]?.[food] ?? 0;
      const kept = steps[m]?.some((other, f) => other > 0 && foods[f]?.kin === foods[food]?.kin);
      return wanted === undefined ? !kept : count !== wanted;
    }),
  );
  return [
    ...missing.map((kin) => `${foods.find((food) => food.kin === kin)?.id} is asked for and missing`),
    ...unheld.map(({ food }) => `${foods[food]?.id} is not on the plate that holds it`),
  ];
}

function brokenTimes(day: DaySituation, meals: readonly AnsweredMeal[]): string[] {
  const broken: string[] = [];
  const planned = meals.map((meal) => parseClock(meal.at) ?? Number.NaN);
  const pinned = new Set(day.pinned.map((pin) => pin.at));
  for (const [m, at] of planned.entries()) {
    if (pinned.has(at)) continue;
    if (at < (day.now ?? day.wake)) broken.push(`meal ${m} lies before now`);
    if (at > day.sleep - day.rules.lastMealToSleepMinutes) broken.push(`meal ${m} lies too near sleep`);
    const { training } = day;
    if (training && at > training.start - day.rules.mealToTrainingMinutes && at < training.end) {
      broken.push(`meal ${m} lies in training or just before it`);
    }
    if (meals[m]?.role !== mealRole(at, day)) broken.push(`meal ${m} has another role at its time`);
  }
  const times = [...day.eatenAt, ...planned];
  for (const [t, later] of times.entries()) {
    const earlier = times[t - 1];
    const free = t >= day.eatenAt.length && !pinned.has(later);
    if (free && earlier !== undefined && later - earlier < day.rules.minGapMinutes)
      broken.push(`meal at ${later} comes too soon`);
  }
  return broken;
}

function brokenPlate(day: DaySituation, meal: AnsweredMeal): string[] {
  if (isPinned(day, meal)) return [];
  const broken: string[] = [];
  if (meal.items.length > day.rules.maxFoodsPerMeal) broken.push(`${meal.at}: too many foods`);
  if (new Set(meal.items.map((item) => item.food)).size < meal.items.length)
    broken.push(`${meal.at}: a food twice`);
  for (const { food: id, grams } of meal.items) {
    const food = day.request.foods.find((one) => one.id === id);
    if (!food) broken.push(`${meal.at}: unknown food ${id}`);
    else if (food.banned) broken.push(`${meal.at}: ${id} is banned`);
    else if (!servable(food, grams)) broken.push(`${meal.at}: ${grams} g of ${id} cannot be served`);
  }
  return broken;
}

function servable(food: RequestFood, grams: number): boolean {
  if (grams < food.minG - DUST || grams > food.maxG + DUST) return false;
  return (food.portionsG ?? [food.unitG ?? 1]).some((step) => isMultiple(grams, step));
}

function isMultiple(grams: number, step: number): boolean {
  const steps = Math.round(grams / step);
  return steps >= 1 && Math.abs(grams - steps * step) < DUST;
}

function brokenStock(day: DaySituation, meals: readonly AnsweredMeal[]): string[] {
  return day.request.foods.flatMap((food) => {
    const free = gramsOf(
      food.id,
      meals.filter((meal) => !isPinned(day, meal)),
    );
    if (free.length === 0) return [];
    const pinned = gramsOf(food.id, day.request.pinned);
    const totalG = [...free, ...pinned].reduce((sum, grams) => sum + grams, 0);
    if (food.availableG !== undefined && totalG > food.availableG + DUST) {
      return [`more ${food.id} than there is`];
    }
    if (food.portionsG && !packed(free, withoutPinned(food.portionsG, pinned))) {
      return [`more portions of ${food.id} than are packed`];
    }
    return [];
  });
}

function gramsOf(
  id: string,
  meals: readonly { readonly items: readonly { readonly food: string; readonly grams: number }[] }[],
): readonly number[] {
  return meals.flatMap((meal) => meal.items.flatMap((item) => (item.food === id ? [item.grams] : [])));
}

/** A pinned portion is the one of its weight, else the smallest that covers it. */
function withoutPinned(portions: readonly number[], pinned: readonly number[]): readonly number[] {
  const left = [...portions].sort((a, b) => a - b);
  for (const grams of pinned) {
    const exact = left.findIndex((portion) => Math.abs(portion - grams) < 0.5);
    const place = exact >= 0 ? exact : left.findIndex((portion) => portion >= grams);
    if (place >= 0) left.splice(place, 1);
  }
  return left;
}

/** Can these plates be filled, each with portions of one weight? */
function packed(plates: readonly number[], portions: readonly number[]): boolean {
  const [grams, ...others] = plates;
  if (grams === undefined) return true;
  return [...new Set(portions)].some((weight) => {
    const count = Math.round(grams / weight);
    if (!isMultiple(grams, weight) || portions.filter((one) => one === weight).length < count) return false;
    const left = [...portions];
    for (let taken = 0; taken < count; taken++) left.splice(left.indexOf(weight), 1);
    return packed(others, left);
  });
}

function isPinned(day: DaySituation, meal: { readonly at: string }): boolean {
  return day.request.pinned.some((pin) => pin.at === meal.at);
}
