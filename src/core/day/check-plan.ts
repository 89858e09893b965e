import { parseClock } from '../units/clock.ts';
import type { AnsweredMeal } from './day-answer.ts';
import type { RequestFood } from './day-request.ts';
import type { DaySituation } from './day-situation.ts';
import { mealRole } from './meal-role.ts';

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
  const pinned = day.request.pinned.some((pin) => pin.at === meal.at);
  if (pinned) return [];
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
  if (food.portionsG) return food.portionsG.some((portion) => Math.abs(portion - grams) < DUST);
  const step = food.unitG ?? 1;
  return Math.abs(grams / step - Math.round(grams / step)) < DUST;
}

function brokenStock(day: DaySituation, meals: readonly AnsweredMeal[]): string[] {
  return day.request.foods.flatMap((food) => {
    const planned = meals.flatMap((meal) => meal.items).filter((item) => item.food === food.id);
    const totalG = planned.reduce((sum, item) => sum + item.grams, 0);
    if (food.availableG !== undefined && totalG > food.availableG + DUST && freeItems(day, meals, food.id)) {
      return [`more ${food.id} than there is`];
    }
    const portions = [...(food.portionsG ?? [])];
    for (const item of planned) {
      const place = portions.findIndex((portion) => Math.abs(portion - item.grams) < DUST);
      if (food.portionsG && place < 0 && freeItems(day, meals, food.id))
        return [`a portion of ${food.id} twice`];
      portions.splice(place, 1);
    }
    return [];
  });
}

/** What is pinned stands whatever the count says; only what was planned freely can break it. */
function freeItems(day: DaySituation, meals: readonly AnsweredMeal[], id: string): boolean {
  return meals.some(
    (meal) =>
      !day.request.pinned.some((pin) => pin.at === meal.at) && meal.items.some((item) => item.food === id),
  );
}
