import { randomStream } from '#core/random/random-stream.ts';
import { tableFoods } from '#core/tables/foods.ts';
import type { DayRequest } from '#core/day/day-request.ts';
import { formatClock } from '#core/units/clock.ts';

/** A day to plan as an athlete might meet it, the same for the same seed. Every clock time is `shift` minutes later. */
export function dayRequestOf(seed: number, foods = 16, meals = 5, shift = 0): DayRequest {
  const chance = randomStream(seed, 'day requests');
  const pick = (low: number, high: number) => low + chance.integer(high - low + 1);
  const served = tableFoods.filter((food) => food.state !== 'raw' || food.per100g.proteinG < 5);
  const chosen = new Set<number>();
  while (chosen.size < foods) chosen.add(chance.integer(served.length));
  const wake = pick(320, 520);
  const training = chance.uniform() < 0.8;
  const at = (minutes: number) => formatClock(minutes + shift);
  return {
    date: '2027-03-01',
    now: at(wake + pick(0, 300)),
    athlete: { massKg: pick(55, 105) },
    targets: {
      proteinG: pick(120, 240),
      carbohydrateG: pick(110, 330),
      fatG: pick(38, 85),
      fibreG: { min: 25 },
      sodiumMg: { max: 3500 },
    },
    events: {
      wake: at(wake),
      sleep: at(wake + pick(900, 1000)),
      ...(training && { training: { start: at(wake + pick(240, 600)), minutes: 90 } }),
    },
    rules: {
      meals: { min: Math.min(3, meals), max: meals },
      minGapMinutes: 150,
      mealToTrainingMinutes: 60,
      lastMealToSleepMinutes: 30,
      maxFoodsPerMeal: 5,
      fatBeforeTrainingMaxG: 15,
    },
    eaten: [],
    foods: [...chosen].flatMap((place) => {
      const food = served[place];
      if (!food) return [];
      const scarce = chance.uniform() < 0.3;
      return [
        {
          id: food.id,
          per100g: food.per100g,
          ...food.serving,
          ...(scarce && { availableG: Math.round(food.serving.maxG * (1 + chance.uniform())) }),
          asked: false,
          banned: false,
          dislike: 0,
        },
      ];
    }),
    budgetMs: 250,
    pinned: [],
    fixed: [],
  };
}
