import { answered, refused, type Outcome } from '../problems/problem.ts';
import { roundTo } from '../units/rounding.ts';
import { totalsOfDay, weekCost, weekFaults, type DrawnWeek } from './week-cost.ts';
import { columns, daysOfPortion } from './week-model.ts';
import type { PlannedDay, PlannedFood, PlannedPan, PlannedPortions, WeekPlan } from './week-plan.ts';
import type { WeekRequest } from './week-request.ts';

/** What a solver found for the model: the value of each column, and a cost that no plan is below. */
export interface SolvedModel {
  readonly values: Readonly<Record<string, number>>;
  readonly bound: number;
}

/** Dishes and pans of a solved model; the foods beside them are filled in day by day. */
export function readDishes(request: WeekRequest, values: SolvedModel['values']): DrawnWeek {
  const whole = (name: string) => Math.round(values[name] ?? 0);
  const pans = request.dishes.flatMap((dish, r) =>
    request.days.flatMap(({ date, cooking }, day): PlannedPan[] => {
      const portions = cooking ? whole(columns.portions(r, day)) : 0;
      return portions > 0 ? [{ date, recipe: dish.recipe, portions }] : [];
    }),
  );
  return {
    days: request.days.map(({ date, target }, day) => {
      const dishes = dishesOn(request, day, whole);
      return { date, target, dishes, foods: [], totals: totalsOfDay(request, { dishes, foods: [] }) };
    }),
    pans: pans.sort((a, b) => (a.date < b.date ? -1 : 1)),
  };
}

/** Whether a solution parts a portion between two pans, which no kitchen does. */
export function partsPortions(request: WeekRequest, values: SolvedModel['values']): boolean {
  return request.dishes.some((_, r) =>
    request.days.some(({ cooking }, cookDay) => {
      if (!cooking) return false;
      return daysOfPortion(request, r, cookDay).some(({ day }) => {
        const portions = values[columns.eaten(r, cookDay, day)] ?? 0;
        return Math.abs(portions - Math.round(portions)) > 1e-4;
      });
    }),
  );
}

/** A day with the foods that a solved fill gives it. */
export function withFoods(request: WeekRequest, day: PlannedDay, values: SolvedModel['values']): PlannedDay {
  const foods = request.foods.flatMap((food, f): PlannedFood[] => {
    const grams = Math.round(values[columns.grams(f, 0)] ?? 0) * (food.unitG ?? 1);
    return grams > 0 ? [{ food: food.food, grams: roundTo(grams, 1) }] : [];
  });
  return { ...day, foods, totals: totalsOfDay(request, { dishes: day.dishes, foods }) };
}

/** The finished plan; cost and limits are counted anew from it (WEK-03). */
export function judgedWeek(request: WeekRequest, week: DrawnWeek, bound: number): Outcome<WeekPlan> {
  const [fault] = weekFaults(request, week);
  if (fault === undefined) return answered(judged(request, week, bound));
  return refused(
    'week/unsound',
    '',
    `The plan that was found breaks a limit (${fault}).`,
    'Plan again; if it comes back, ask for fewer days.',
  );
}

/** A drawn week with its cost and what decided it. */
export function judged(request: WeekRequest, week: DrawnWeek, bound: number): WeekPlan {
  const cost = weekCost(request, week);
  const least = Math.min(Math.max(0, bound), cost.total);
  const gap = cost.total > 0 ? (cost.total - least) / cost.total : 0;
  const cookDays = new Set(week.pans.map((pan) => pan.date)).size;
  return {
    ...week,
    cost: cost.total,
    bound: least,
    gap,
    why: [
      `${week.days.length} days planned together: ${count(week.pans.length, 'pan')} on ${count(cookDays, 'day')} at the stove.`,
      `Missing the targets costs ${roundTo(cost.macros, 0)} kcal of mistake over all days, cooking ${roundTo(cost.cooking, 0)}, repeats and missing variety ${roundTo(cost.variety, 0)}, freezing ${roundTo(cost.frozen, 0)}, leftovers ${roundTo(cost.waste, 0)}, money ${roundTo(cost.money, 0)}.`,
      gap < 0.0005
        ? 'No plan costs less: proven by the solver.'
        : `No plan can cost less than ${roundTo(least, 0)}: at most ${roundTo((cost.total - least) / week.days.length, 1)} kcal of mistake a day could still be gained.`,
    ],
  };
}

function count(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? '' : 's'}`;
}

function dishesOn(request: WeekRequest, day: number, whole: (name: string) => number): PlannedPortions[] {
  const fromPans = request.dishes.flatMap((dish, r) =>
    request.days.flatMap(({ date: cookedOn, cooking }, cookDay): PlannedPortions[] => {
      const eaten = cooking ? daysOfPortion(request, r, cookDay).find((one) => one.day === day) : undefined;
      const portions = eaten ? whole(columns.eaten(r, cookDay, day)) : 0;
      if (!eaten || portions === 0) return [];
      return [{ from: 'pan', recipe: dish.recipe, cookedOn, portions, frozen: eaten.frozen }];
    }),
  );
  const ready = request.ready.flatMap((one, b): PlannedPortions[] => {
    const portions = whole(columns.ready(b, day));
    return portions > 0 ? [{ from: 'ready', batch: one.batch, portions }] : [];
  });
  return [...ready, ...fromPans];
}
