import type { DayRequest } from './day-request.ts';
import type { DaySituation } from './day-situation.ts';
import { holdFoods } from './hold-foods.ts';
import { mealTargets } from './meal-targets.ts';
import { countedTotal, type Portion } from './nutrient-sums.ts';
import { foodOnPlates } from './plate-foods.ts';
import type { MacroGrams, PlateFood, PlateProblem } from './plate-problem.ts';
import { eatenPortions, pinnedPortions } from './portions.ts';
import type { Schedule, ScheduledMeal } from './schedule.ts';

/** The plate problem of a scheduled day, with what had to be left out of it. */
export interface PosedPlates {
  readonly problem: PlateProblem;
  /** The schedule's free meals, in the order of the problem's meals. */
  readonly free: readonly ScheduledMeal[];
  /** A target for every scheduled meal, pinned ones too; they add up to what is left of the day. */
  readonly targets: readonly MacroGrams[];
  /** Foods that cannot be planned and why, each the start of a sentence. */
  readonly unusable: readonly string[];
  /** Wishes that could not be taken up as they were, each as a sentence. */
  readonly notes: readonly string[];
}

/** Poses the plate problem of the day: docs/spec/DAY.md, "Plates". */
export function posePlates(day: DaySituation, schedule: Schedule): PosedPlates {
  const { request } = day;
  const eaten = eatenPortions(request);
  const pinned = pinnedPortions(request);
  const targets = targetsOf(day, schedule, macrosLeft(request, eaten), pinned);
  const free = schedule.meals.filter((meal) => meal.pinned === undefined);
  const { foods, unusable } = foodsOnPlates(request);
  const { held, asked, notes } = holdFoods(day, free, foods);
  const spent = [...eaten, ...pinned.flat()];
  const { fibreG, sodiumMg } = request.targets;
  const problem: PlateProblem = {
    meals: free.map((meal, m) => ({
      target: targets[schedule.meals.indexOf(meal)] ?? [0, 0, 0],
      ...(meal.role === 'before-training' ? { fatCapG: day.rules.fatBeforeTrainingMaxG } : {}),
      held: held[m] ?? [],
    })),
    foods: foods.map((food) => ({ ...food, asked: asked.has(food.kin) })),
    left: macrosLeft(request, spent),
    ...(fibreG ? { fibreMissingG: fibreG.min - countedTotal(spent, 'fibreG') } : {}),
    ...(sodiumMg ? { sodiumRoomMg: sodiumMg.max - countedTotal(spent, 'sodiumMg') } : {}),
    maxFoodsPerMeal: day.rules.maxFoodsPerMeal,
  };
  return { problem, free, targets, unusable, notes };
}

function macrosLeft(request: DayRequest, spent: readonly Portion[]): MacroGrams {
  const { targets } = request;
  return [
    targets.proteinG - countedTotal(spent, 'proteinG'),
    targets.carbohydrateG - countedTotal(spent, 'carbohydrateG'),
    targets.fatG - countedTotal(spent, 'fatG'),
  ];
}

/** A pinned meal's target is what is on its plate, cut where that is more than is left; the free meals share the rest. */
function targetsOf(
  day: DaySituation,
  schedule: Schedule,
  left: MacroGrams,
  pinned: readonly (readonly Portion[])[],
): readonly MacroGrams[] {
  const room: [number, number, number] = [Math.max(0, left[0]), Math.max(0, left[1]), Math.max(0, left[2])];
  const ofPinned = new Map<number, MacroGrams>();
  for (const { pinned: index } of schedule.meals) {
    if (index === undefined) continue;
    const plate = pinned[index] ?? [];
    const target: MacroGrams = [
      Math.min(room[0], countedTotal(plate, 'proteinG')),
      Math.min(room[1], countedTotal(plate, 'carbohydrateG')),
      Math.min(room[2], countedTotal(plate, 'fatG')),
    ];
    ofPinned.set(index, target);
    for (const k of [0, 1, 2] as const) room[k] -= target[k];
  }
  const free = schedule.meals.filter((meal) => meal.pinned === undefined);
  const shares = mealTargets(
    free.map((meal) => meal.role),
    room,
    day.rules.fatBeforeTrainingMaxG,
  );
  return schedule.meals.map(
    (meal) =>
      (meal.pinned === undefined ? shares[free.indexOf(meal)] : ofPinned.get(meal.pinned)) ?? [0, 0, 0],
  );
}

function foodsOnPlates(request: DayRequest): {
  readonly foods: readonly PlateFood[];
  readonly unusable: readonly string[];
} {
  const foods: PlateFood[] = [];
  const unusable: string[] = [];
  for (const [kin, food] of request.foods.entries()) {
    const pinned = request.pinned.flatMap((meal) =>
      meal.items.flatMap((item) => (item.food === food.id ? [item.grams] : [])),
    );
    const ways = foodOnPlates(food, kin, pinned);
    if (ways.usable) foods.push(...ways.foods);
    else unusable.push(ways.because);
  }
  return { foods, unusable };
}
