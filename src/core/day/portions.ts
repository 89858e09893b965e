import type { DayRequest } from './day-request.ts';
import type { Portion } from './nutrient-sums.ts';

type Item = DayRequest['eaten'][number]['items'][number];

/** Everything eaten so far, weighed or guessed. */
export function eatenPortions(request: DayRequest): readonly Portion[] {
  return request.eaten.flatMap((meal) => meal.items.map((item) => portionOf(request, item)));
}

/** What is on each pinned plate, in the order of the request. */
export function pinnedPortions(request: DayRequest): readonly (readonly Portion[])[] {
  return request.pinned.map((meal) => meal.items.map((item) => portionOf(request, item)));
}

/** The food has been looked up when the request was read. */
export function portionOf(request: DayRequest, item: Item): Portion {
  if ('nutrients' in item) return { per: item.nutrients, factor: 1 };
  const food = request.foods.find((candidate) => candidate.id === item.food);
  if (food === undefined) throw new RangeError(`no food "${item.food}"`);
  return { per: food.per100g, factor: item.grams / 100 };
}
