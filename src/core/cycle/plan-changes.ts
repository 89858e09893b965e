import { comparePlans, type ComparedMeal } from '../day/compare-plans.ts';
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
 * What a newly adopted plan changed for the rest of the day, in sentences (RUN-09). The first plan of a day changes nothing: it is
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
  if (!before.plan) return [`Meals at ${times}.`];
  const open = before.meals.filter((meal) => !meal.eaten && !meal.skipped).map((meal) => meal.planned);
  const changes = comparePlans(
    open.map((meal) => compared(meal, read)),
    adopted.meals.map((meal) => compared(meal, read)),
  );
  const from = now === undefined ? '' : ` from ${formatClock(now)}`;
  return changes.length === 0 ? [`Nothing changes${from}: meals at ${times}.`] : changes;
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
