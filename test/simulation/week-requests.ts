import { randomStream } from '#core/random/random-stream.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { WeekDish, WeekFood, WeekRequest } from '#core/week/week-request.ts';

const FIRST = '2027-03-08';

/** Grams per 100 g of plain foods, rounded from the bundled table: oats, egg white, low-fat curd, banana, dry rice, peanut butter, broccoli, oil. */
const FOODS = [
  ['oats', 13, 68, 6.5, 10, 30, 100],
  ['egg white', 10, 1, 0, 0, 100, 300],
  ['curd', 12, 3, 1, 0, 100, 300],
  ['banana', 1, 23, 0.3, 2.6, 100, 240],
  ['rice', 7, 80, 0.7, 1.3, 30, 150],
  ['peanut butter', 22, 22, 50, 5, 10, 45],
  ['broccoli', 3, 5, 0.4, 3, 50, 300],
  ['oil', 0, 0, 100, 0, 3, 15],
] as const;

/** A week of an athlete with five dishes of her own, drawn from a seed. */
export function weekRequestOf(seed: number): WeekRequest {
  const chance = randomStream(seed, 'week requests');
  const between = (low: number, high: number) => low + (high - low) * chance.uniform();
  const dishes = Array.from({ length: 5 }, (_, index): WeekDish => {
    const portions = 4 + chance.integer(3);
    return {
      recipe: `dish-${index}`,
      name: `Dish ${index}`,
      perPortion: {
        proteinG: between(25, 45),
        carbohydrateG: between(5, 60),
        fatG: between(4, 16),
        fibreG: between(1, 8),
      },
      keepsDays: chance.uniform() < 0.2 ? 1 : 4,
      freezes: true,
      leastPortions: Math.ceil(portions / 2),
      mostPortions: portions * 2,
    };
  });
  const [protein, carbohydrate, fat] = [between(120, 200), between(110, 320), between(40, 75)];
  return {
    days: Array.from({ length: 7 }, (_, number) => ({
      date: addDays(FIRST, number),
      target: {
        proteinG: protein,
        carbohydrateG: carbohydrate * (number % 3 === 2 ? 0.7 : 1),
        fatG: fat,
        fibreG: 25,
      },
      cooking: true,
    })),
    dishes,
    ready: [],
    foods: FOODS.map(([name, proteinG, carbohydrateG, fatG, fibreG, minG, maxG]): WeekFood => {
      return { food: name, name, per100g: { proteinG, carbohydrateG, fatG, fibreG }, minG, maxG };
    }),
    rules: {
      portionsPerDay: { min: 2, max: 3 },
      sameDishPerDay: 2,
      wantedDishes: 3,
      toleratedPortions: 7,
      pansPerCookDay: 2,
      foodsPerDay: 6,
      freezer: true,
    },
  };
}
