import { comparePlans, type ComparedMeal } from '../day/compare-plans.ts';
import type { DayAnswer } from '../day/day-answer.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import { foodIdOf } from '../kitchen/item-nutrients.ts';
import type { ClockMinutes } from '../units/quantities.ts';
import { formatClock } from '../units/clock.ts';
import type { DaySheet, ReadItem } from './day-sheet.ts';

const NO_MEAL_LEFT = 'No meal is left to plan today.';
const NO_FOOD =
  'No meal is planned: nothing is in stock. Put in stock what is in the fridge and the cupboard, then plan again.';

type AdoptedMeal = DataOf<'plan-adopted'>['meals'][number];

/**
 * What a newly adopted plan changed for the rest of the day, in sentences (RUN-09). The first plan of a day that holds a meal changes nothing: it is
 * told by its meals' times. A day without meals says whether it is the food that is missing (RUN-33).
 */
export function planChanges(
  before: DaySheet,
  adopted: DataOf<'plan-adopted'>,
  read: ReadItem,
  now: ClockMinutes | undefined,
  hasFood: boolean,
): readonly string[] {
  if (adopted.meals.length === 0) return [hasFood ? NO_MEAL_LEFT : NO_FOOD];
  const times = adopted.meals.map((meal) => meal.at).join(', ');
  if (!before.plan || before.meals.length === 0) return [`Meals at ${times}.`];
  const open = before.meals.filter((meal) => !meal.eaten && !meal.skipped).map((meal) => meal.planned);
  const changes = comparePlans(
    open.map((meal) => compared(meal, read)),
    adopted.meals.map((meal) => compared(meal, read)),
  );
  const from = now === undefined ? '' : ` from ${formatClock(now)}`;
  return changes.length === 0 ? [`Nothing changes${from}: meals at ${times}.`] : changes;
}

/** So far off is said beside what changed, not under the reasons alone (common practice, no source). */
const FAR_OFF = [
  ['proteinG', 'protein', 10],
  ['carbohydrateG', 'carbohydrate', 20],
  ['fatG', 'fat', 10],
] as const;

/** What the day would end far short of or over when the plan is eaten as it stands (RUN-34). */
export function planMisses(deviation: DayAnswer['deviation']): readonly string[] {
  const far = FAR_OFF.filter(([key, , most]) => Math.abs(deviation[key]) > most);
  if (far.length === 0) return [];
  const parts = far.map(([key, name]) => {
    const side = deviation[key] < 0 ? 'short' : 'over';
    return `${Math.round(Math.abs(deviation[key]))} g of ${name} ${side}`;
  });
  return [`This plan misses the targets: ${parts.join(', ')}.`];
}

function compared(meal: AdoptedMeal, read: ReadItem): ComparedMeal {
  return {
    at: meal.at,
    items: meal.items.flatMap((item) => {
      const food = foodIdOf(item);
      return food === undefined || item.grams === undefined
        ? []
        : [{ food, name: read(item)?.name ?? 'a food', grams: item.grams }];
    }),
  };
}
