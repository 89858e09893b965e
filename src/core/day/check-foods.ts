import { answered, type Outcome, refused } from '../problems/problem.ts';
import type { DayRequest, RequestFood } from './day-request.ts';

/** Protein, fat and carbohydrate of 100 g; a label's rounding may carry the sum a little above 100. */
const MACROS_PER_100G_MAX = 105;

/** Foods agree with themselves, and every food named elsewhere is one of them. */
export function checkFoods(request: DayRequest): Outcome<true> {
  const seen = new Map<string, number>();
  for (const [index, food] of request.foods.entries()) {
    const first = seen.get(food.id);
    if (first !== undefined) {
      return refused(
        'day/food-twice',
        `foods.${index}.id`,
        `The food "${food.id}" is listed twice, at places ${first} and ${index}.`,
        'List it once, with all there is of it in availableG.',
      );
    }
    seen.set(food.id, index);
    const fault = checkFood(food, `foods.${index}`);
    if (!fault.ok) return fault;
  }
  return checkNames(request, seen);
}

function checkFood(food: RequestFood, path: string): Outcome<true> {
  const { proteinG, fatG, carbohydrateG } = food.per100g;
  const macrosG = proteinG + fatG + carbohydrateG;
  if (macrosG > MACROS_PER_100G_MAX) {
    return refused(
      'day/macros-over-100',
      `${path}.per100g`,
      `100 g of "${food.id}" cannot hold ${Math.round(macrosG)} g of protein, fat and carbohydrate.`,
      'Check whether the values are per serving, or per 100 g of the dry weight.',
    );
  }
  if (food.minG > food.maxG) {
    return refused(
      'day/serving-crossed',
      `${path}.minG`,
      `"${food.id}" is to be at least ${food.minG} g and at most ${food.maxG} g on a plate.`,
      'Make minG no greater than maxG.',
    );
  }
  if (food.portionsG !== undefined && (food.unitG !== undefined || food.availableG !== undefined)) {
    return refused(
      'day/portions-and-units',
      `${path}.portionsG`,
      `"${food.id}" has packed portions and a unit or a stock weight besides.`,
      'Give portionsG alone: it says both what there is and how it may be divided.',
    );
  }
  if (food.asked && food.banned) {
    return refused(
      'day/asked-and-banned',
      `${path}.asked`,
      `"${food.id}" is asked for and banned today.`,
      'Keep one of the two.',
    );
  }
  return answered(true);
}

function checkNames(request: DayRequest, known: ReadonlyMap<string, number>): Outcome<true> {
  for (const list of ['eaten', 'pinned'] as const) {
    for (const [m, meal] of request[list].entries()) {
      for (const [i, item] of meal.items.entries()) {
        if ('food' in item && !known.has(item.food))
          return unknownFood(item.food, `${list}.${m}.items.${i}.food`);
      }
    }
  }
  for (const [i, wish] of request.fixed.entries()) {
    const index = known.get(wish.food);
    if (index === undefined) return unknownFood(wish.food, `fixed.${i}.food`);
    if (request.foods[index]?.banned) {
      return refused(
        'day/fixed-and-banned',
        `fixed.${i}.food`,
        `"${wish.food}" is fixed in a meal and banned today.`,
        'Keep one of the two.',
      );
    }
  }
  return answered(true);
}

function unknownFood(id: string, path: string): Outcome<true> {
  return refused(
    'day/unknown-food',
    path,
    `"${id}" is not among the foods of this request.`,
    'Add it to "foods" with its nutrients, or correct its id.',
  );
}
