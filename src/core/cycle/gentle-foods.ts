import type { RequestFood } from '../day/day-request.ts';
import { clamp } from '../units/rounding.ts';

/** What a gram of fibre in 100 kcal adds to the price of a food, in kcal of mistake (common practice, no source). */
const PRICE_PER_FIBRE_G = 4;
/** The dearest a food may be. */
const DEAREST = 100;

/** On days that ask for little fibre the foods that carry much of it are planned last (CRS-28); none is banned. */
export function gentleFoods(foods: readonly RequestFood[]): RequestFood[] {
  return foods.map((food) => {
    const { energyKcal, fibreG = 0 } = food.per100g;
    const fibreIn100Kcal = energyKcal > 0 ? (100 * fibreG) / energyKcal : 0;
    return { ...food, dislike: clamp(food.dislike + PRICE_PER_FIBRE_G * fibreIn100Kcal, -5, DEAREST) };
  });
}
