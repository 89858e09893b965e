import type { DayRequest, RequestFood } from '../day/day-request.ts';
import { foodIdOf } from '../kitchen/item-nutrients.ts';
import { knownNutrients, type NutrientTotal } from '../kitchen/nutrients.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { formatClock } from '../units/clock.ts';
import type { ClockMinutes, Kilograms } from '../units/quantities.ts';
import { clamp } from '../units/rounding.ts';
import type { DaySheet, SheetMeal } from './day-sheet.ts';
import { gentleFoods } from './gentle-foods.ts';

export interface PlanInputs {
  readonly sheet: DaySheet;
  /** What may go on a plate: from stock, packed portions, foods planned freely. */
  readonly plannable: readonly RequestFood[];
  /** Absent: plan the whole day from waking. */
  readonly now?: ClockMinutes;
  readonly massKg: Kilograms;
  /** Foods that the week counts on today; the plan reaches for them first. */
  readonly weekFoods?: ReadonlySet<string>;
  readonly budgetMs?: number;
}

/**
 * The request for the rest of today, as `stagewright day` would be asked: what is eaten counts with its uncertainty,
 * pinned meals keep time and grams, wishes of the day are carried (RUN-05). Refuses while the day has no shape or no targets.
 */
export function planRequest(inputs: PlanInputs): Outcome<DayRequest> {
  const { sheet, now } = inputs;
  const { shape, targets } = sheet;
  if (!shape) {
    return refused(
      'day/no-shape',
      'shape',
      'When this day begins and ends is not entered yet.',
      'Enter waking and sleep.',
    );
  }
  if (!targets) {
    return refused(
      'day/no-targets',
      'targets',
      'This day has no targets yet.',
      'Enter protein, carbohydrate and fat for it.',
    );
  }
  const { data } = targets;
  return answered({
    date: sheet.day,
    ...(now !== undefined && { now: formatClock(now) }),
    athlete: { massKg: inputs.massKg },
    targets: {
      proteinG: data.proteinG,
      carbohydrateG: data.carbohydrateG,
      fatG: data.fatG,
      ...(data.fibreMinG !== undefined && { fibreG: { min: data.fibreMinG } }),
      ...(data.sodiumMaxMg !== undefined && { sodiumMg: { max: data.sodiumMaxMg } }),
    },
    events: {
      wake: formatClock(mealsFrom(sheet, shape)),
      sleep: formatClock(shape.sleep),
      ...(shape.training && {
        training: { start: formatClock(shape.training.start), minutes: shape.training.minutes },
      }),
    },
    rules: rulesOf(shape),
    eaten: sheet.eaten.map((meal) => ({ at: formatClock(meal.at), items: [asGuess(meal.total)] })),
    foods: wishedFoods(inputs),
    pinned: sheet.meals.filter((meal) => standsPinned(meal, now)).map(pinnedMeal),
    fixed: (sheet.wishes?.data.fixed ?? []).map(({ at, food, grams }) => ({ at, food, grams })),
    budgetMs: inputs.budgetMs ?? 250,
  });
}

/** Meals start at waking, or after the day's cardio where that is done before food and nothing is eaten yet. */
function mealsFrom(sheet: DaySheet, shape: NonNullable<DaySheet['shape']>): ClockMinutes {
  const fasted = shape.cardio.filter((session) => session.beforeFood);
  const ends = fasted.map((session) => session.start + session.minutes).filter((end) => end < shape.sleep);
  return sheet.eaten.length > 0 ? shape.wake : Math.max(shape.wake, ...ends);
}

function rulesOf(shape: NonNullable<DaySheet['shape']>): DayRequest['rules'] {
  const { rules } = shape;
  return {
    meals: { min: rules.meals?.min ?? 3, max: rules.meals?.max ?? 5 },
    minGapMinutes: rules.minGapMinutes ?? 150,
    mealToTrainingMinutes: rules.mealToTrainingMinutes ?? 60,
    lastMealToSleepMinutes: rules.lastMealToSleepMinutes ?? 30,
    maxFoodsPerMeal: rules.maxFoodsPerMeal ?? 5,
    fatBeforeTrainingMaxG: rules.fatBeforeTrainingMaxG ?? 15,
  };
}

/** What was eaten enters as one sum with its relative uncertainty in energy; nothing eaten is ever altered. */
function asGuess(total: NutrientTotal): DayRequest['eaten'][number]['items'][number] {
  const { energyKcal } = total.nutrients;
  const spread = energyKcal > 0 ? (100 * (total.spread.energyKcal ?? 0)) / energyKcal : 0;
  return { nutrients: knownNutrients(total), spreadPercent: clamp(spread, 0, 100) };
}

function standsPinned(meal: SheetMeal, now: ClockMinutes | undefined): boolean {
  const open = meal.eaten === undefined && meal.skipped === undefined;
  return open && meal.planned.pinned && (now === undefined || meal.at >= now);
}

function pinnedMeal(meal: SheetMeal): DayRequest['pinned'][number] {
  const items = meal.planned.items.flatMap((item) => {
    const food = foodIdOf(item);
    return food === undefined || item.grams === undefined ? [] : [{ food, grams: item.grams }];
  });
  return { at: formatClock(meal.at), items };
}

/** A food of the week's plan costs this much less on today's plates (common practice, no source). */
const AS_THE_WEEK_HAS_IT = -3;

function wishedFoods({ sheet, plannable, weekFoods }: PlanInputs): RequestFood[] {
  const asked = new Set(sheet.wishes?.data.asked ?? []);
  const banned = new Set(sheet.wishes?.data.banned ?? []);
  const foods = sheet.targets?.data.fibreMaxG === undefined ? plannable : gentleFoods(plannable);
  return foods.map((food) => ({
    ...food,
    dislike: weekFoods?.has(food.id) === true ? Math.min(food.dislike, AS_THE_WEEK_HAS_IT) : food.dislike,
    asked: asked.has(food.id),
    banned: banned.has(food.id),
  }));
}
