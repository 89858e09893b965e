import type { DataOf } from '../journal/kinds/registry.ts';
import type { Available } from '../kitchen/available.ts';
import { plateItemOf } from '../kitchen/item-nutrients.ts';
import type { ClockMinutes, Grams } from '../units/quantities.ts';
import { formatClock } from '../units/clock.ts';
import type { DaySheet } from './day-sheet.ts';

type Adopted = DataOf<'plan-adopted'>;
type AdoptedMeal = Adopted['meals'][number];

/** A plan as the day's planner answers it. */
export interface AnsweredPlan {
  readonly cost: number;
  readonly gap: number;
  readonly meals: readonly {
    readonly at: string;
    readonly role: AdoptedMeal['role'];
    readonly target: AdoptedMeal['target'];
    readonly items: readonly { readonly food: string; readonly grams: Grams }[];
  }[];
}

export interface AdoptInputs {
  readonly sheet: DaySheet;
  readonly plan: AnsweredPlan;
  readonly cause: Adopted['cause'];
  readonly now?: ClockMinutes;
  readonly available: ReadonlyMap<string, Available>;
}

/**
 * The answered plan as the fact "plan-adopted": slots new to this day, packed portions named by their number (those that must
 * go first first), meals that stood pinned still pinned (RUN-07).
 */
export function adoptPlan({ sheet, plan, cause, now, available }: AdoptInputs): Adopted {
  const taken = new Set([
    ...sheet.meals.map((meal) => meal.slot),
    ...sheet.eaten.flatMap((meal) => meal.fact.data.slot ?? []),
  ]);
  const pick = portionPicker(available);
  const pinnedAt = new Set(
    sheet.meals
      .filter((meal) => meal.planned.pinned && !meal.eaten && !meal.skipped)
      .map((meal) => meal.planned.at),
  );
  let number = 0;
  const newSlot = (): string => {
    do number += 1;
    while (taken.has(`meal-${number}`));
    return `meal-${number}`;
  };
  return {
    ...(now !== undefined && { now: formatClock(now) }),
    cause,
    meals: plan.meals.map(({ at, role, target, items }) => ({
      slot: newSlot(),
      at,
      role,
      target: { proteinG: target.proteinG, carbohydrateG: target.carbohydrateG, fatG: target.fatG },
      items: items.map(({ food, grams }) => plateItemOf(food, grams, pick(food, grams))),
      pinned: pinnedAt.has(at),
    })),
    cost: plan.cost,
    gap: plan.gap,
  };
}

/** Gives each packed portion once: the first of the wanted weight, in the order they should go. */
function portionPicker(
  available: ReadonlyMap<string, Available>,
): (food: string, grams: Grams) => number | undefined {
  const given = new Set<string>();
  return (food, grams) => {
    const portions = available.get(food)?.portions ?? [];
    const found = portions.find(
      ({ portion, grams: weight }) => Math.abs(weight - grams) < 1 && !given.has(`${food} ${portion}`),
    );
    if (found) given.add(`${food} ${found.portion}`);
    return found?.portion;
  };
}
