import type { DayRequest, RequestFood } from '#core/day/day-request.ts';
import { randomStream, type RandomStream } from '#core/random/random-stream.ts';
import { formatClock } from '#core/units/clock.ts';
import { dayRequestOf } from './day-requests.ts';

/**
 * A day with everything in it that makes planning hard: hardly any stock, odd units, packed portions, wishes against each other, pinned
 * and eaten meals, short days, narrow rules, targets of nothing. The same for the same seed; it may be refused, never break.
 */
export function oddDayRequestOf(seed: number): DayRequest {
  const chance = randomStream(seed, 'odd day requests');
  const pick = (low: number, high: number) => low + chance.integer(high - low + 1);
  const often = (share: number) => chance.uniform() < share;
  const plain = dayRequestOf(seed, often(0.1) ? pick(0, 3) : pick(4, 24));
  const foods = plain.foods.map((food) => oddFood(food, chance));
  const wake = pick(300, 540);
  const sleep = wake + pick(300, 1100);
  const now = pick(wake - 60, sleep + 30);
  const most = pick(1, 6);
  const anyFood = () => foods[chance.integer(foods.length)]?.id ?? '';
  return {
    ...plain,
    ...(often(0.6) && { now: formatClock(now) }),
    targets: {
      proteinG: often(0.1) ? 0 : pick(60, 280),
      carbohydrateG: often(0.1) ? 0 : pick(30, 500),
      fatG: often(0.1) ? 0 : pick(20, 120),
      ...(often(0.8) && { fibreG: { min: pick(0, 60) } }),
      ...(often(0.8) && { sodiumMg: { max: pick(0, 4000) } }),
    },
    events: {
      wake: formatClock(wake),
      sleep: formatClock(sleep),
      ...(often(0.7) && { training: { start: formatClock(pick(wake, sleep - 1)), minutes: pick(10, 180) } }),
    },
    rules: {
      meals: { min: Math.min(3, most), max: most },
      minGapMinutes: often(0.3) ? pick(0, 300) : 150,
      mealToTrainingMinutes: often(0.3) ? pick(0, 300) : 60,
      lastMealToSleepMinutes: often(0.2) ? pick(0, 200) : 30,
      maxFoodsPerMeal: often(0.3) ? pick(1, 7) : 5,
      fatBeforeTrainingMaxG: often(0.2) ? pick(0, 40) : 15,
    },
    foods,
    eaten: repeat(foods.length === 0 || often(0.6) ? 0 : pick(1, 3), () => ({
      at: formatClock(Math.max(0, pick(wake - 30, now + 20))),
      items: often(0.2)
        ? [{ nutrients: { energyKcal: 800, proteinG: 40, fatG: 35, carbohydrateG: 80 }, spreadPercent: 30 }]
        : repeat(pick(0, 4), () => ({ food: anyFood(), grams: pick(0, 400) })),
    })),
    pinned: repeat(foods.length === 0 || often(0.8) ? 0 : pick(1, 2), () => ({
      at: formatClock(pick(Math.max(wake, now), Math.max(wake, now) + 500)),
      items: [{ food: anyFood(), grams: pick(20, 300) }],
    })),
    fixed: repeat(foods.length === 0 || often(0.75) ? 0 : pick(1, 4), () => ({
      at: formatClock(pick(wake, sleep)),
      food: anyFood(),
      ...(often(0.6) && { grams: pick(10, 400) }),
    })),
  };
}

function oddFood(food: RequestFood, chance: RandomStream): RequestFood {
  const pick = (low: number, high: number) => low + chance.integer(high - low + 1);
  const often = (share: number) => chance.uniform() < share;
  const { availableG: _stock, unitG: _unit, ...bare } = food;
  const wishes = {
    asked: often(0.1),
    banned: false,
    dislike: often(0.1) ? pick(-5, 30) : 0,
  };
  if (often(0.08)) {
    const portionsG = repeat(pick(0, 5), () => pick(3, 6) * 45 + (often(0.3) ? 7 : 0));
    return { ...bare, ...wishes, minG: Math.min(food.minG, 50), portionsG };
  }
  const minG = pick(0, 80);
  const serving = often(0.1)
    ? { minG, maxG: minG + pick(0, 200), unitG: pick(1, 90) + (often(0.3) ? 0.5 : 0) }
    : { minG: food.minG, maxG: food.maxG, ...(food.unitG !== undefined && { unitG: food.unitG }) };
  const stock = often(0.4) ? { availableG: pick(0, often(0.5) ? 150 : 700) } : {};
  return { ...bare, ...wishes, ...serving, ...stock, banned: !wishes.asked && often(0.06) };
}

function repeat<Thing>(count: number, make: () => Thing): Thing[] {
  return Array.from({ length: count }, make);
}
