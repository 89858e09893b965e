import { describe, expect, it } from 'vitest';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { showDaySheet, type ShowTask, stageMoved } from '../course/show-day.ts';
import type { RequestFood } from '../day/day-request.ts';
import { planDay } from '../day/plan-day.ts';
import { formatClock } from '../units/clock.ts';
import { gentleFoods } from './gentle-foods.ts';
import { biteAdded, mealsOf, movedMeals, showMealRequest, type Weighed } from './show-meals.ts';

function food(id: string, p: number, c: number, f: number, fibreG: number, more: object = {}): RequestFood {
  return {
    id,
    per100g: { energyKcal: 4 * p + 4 * c + 9 * f, proteinG: p, carbohydrateG: c, fatG: f, fibreG },
    minG: 20,
    maxG: 400,
    asked: false,
    banned: false,
    dislike: 0,
    ...more,
  };
}
const stock = [
  food('rice', 2.7, 28, 0.3, 0.4, { availableG: 500 }),
  food('bran', 3, 28, 0.5, 12),
  food('chicken', 31, 0, 3, 0, { availableG: 700 }),
  food('oil', 0, 0, 100, 0, { minG: 1, maxG: 30 }),
  food('honey', 0, 80, 0, 0, { minG: 5, maxG: 120 }),
];
const day = { wake: 360, stage: 780, travelMinutes: 30, checkIn: 600 };
const macros = { carbohydrateG: 260, proteinG: 120, fatG: 30 };

function sheetOf(): readonly ShowTask[] {
  const sheet = showDaySheet({ ...day, ...macros });
  if (!sheet.ok) throw new Error(sheet.problem.message);
  return sheet.value;
}

describe('[CRS-30] small meals to the gram', () => {
  it('[CRS-30] each meets its macros at its time from what the others left, little fibre first', () => {
    const taken: Weighed[] = [];
    let carbohydrate = 0;
    for (const meal of mealsOf(sheetOf())) {
      const request = showMealRequest(meal, { date: '2027-05-01', massKg: 62, plannable: stock, taken });
      const answer = planDay(request, { solver: solvePlates, clockMs: () => 0 });
      if (!answer.ok) throw new Error(answer.problem.message);
      const [plate] = answer.value.meals;
      expect(answer.value.meals).toHaveLength(1);
      expect(plate?.items.every(({ grams }) => Number.isInteger(grams))).toBe(true);
      expect(Math.abs((plate?.totals.carbohydrateG ?? 0) - meal.meal.carbohydrateG)).toBeLessThan(6);
      expect(Math.abs((plate?.totals.proteinG ?? 0) - meal.meal.proteinG)).toBeLessThan(6);
      carbohydrate += plate?.totals.carbohydrateG ?? 0;
      taken.push(...(plate?.items ?? []));
    }
    expect(Math.abs(carbohydrate - 260)).toBeLessThan(15);
    const grams = (id: string) =>
      taken.filter((one) => one.food === id).reduce((sum, one) => sum + one.grams, 0);
    expect(grams('rice')).toBeLessThanOrEqual(500);
    expect(grams('bran')).toBe(0);
  });

  it('[CRS-30] a packed portion goes once, and a food that is used up is not asked again', () => {
    const [meal] = mealsOf(sheetOf());
    if (!meal) throw new Error('the sheet has no meal');
    const plannable = [
      food('pot', 8, 20, 2, 1, { portionsG: [250, 300] }),
      food('rice', 2.7, 28, 0.3, 0.4, { availableG: 110 }),
    ];
    const left = showMealRequest(meal, {
      date: '2027-05-01',
      massKg: 62,
      plannable,
      taken: [
        { food: 'pot', grams: 250 },
        { food: 'rice', grams: 100 },
      ],
    }).foods;
    expect(left.map(({ id, portionsG }) => [id, portionsG])).toEqual([['pot', [300]]]);
  });

  it('[CRS-28] foods with much fibre are dearer, none is banned, and the price stays in its bounds', () => {
    const dear = gentleFoods([...stock, food('husk', 0, 1, 0, 80)]);
    const priceOf = (id: string) => dear.find((one) => one.id === id)?.dislike ?? Number.NaN;
    expect(priceOf('bran')).toBeGreaterThan(20);
    expect(priceOf('rice')).toBeLessThan(3);
    expect(priceOf('husk')).toBe(100);
    expect(dear.some(({ banned }) => banned)).toBe(false);
  });
});

describe('[CRS-30] plates when the stage moves', () => {
  const plated = (tasks: readonly ShowTask[]) =>
    mealsOf(tasks).map(({ at }, k) => ({
      slot: `meal-${k + 1}`,
      at: formatClock(at),
      role: 'away' as const,
      target: macros,
      items: [],
      pinned: true,
    }));
  const moved = (now: number, stage: number) => {
    const before = sheetOf();
    const after = stageMoved(before, now, stage);
    if (!after.ok) throw new Error(after.problem.message);
    return { before, after: after.value };
  };

  it('[CRS-30] the last plate goes with the stage, the others and their slots stay', () => {
    const { before, after } = moved(600, 825);
    const meals = movedMeals(plated(before), before, after, undefined);
    expect(meals.map(({ slot, at }) => [slot, at])).toEqual([
      ['meal-1', '06:30'],
      ['meal-2', '09:08'],
      ['meal-3', '12:30'],
    ]);
    expect(biteAdded(before, after)).toBeUndefined();
  });

  it('[CRS-30] a long wait adds its bite, a plate at a time of its own stays', () => {
    const { before, after } = moved(720, 900);
    const bite = biteAdded(before, after);
    expect([bite?.at, bite?.meal.carbohydrateG]).toEqual([735, 25]);
    const own = { slot: 'own', at: '10:00', role: 'away' as const, target: macros, items: [], pinned: false };
    const extra = { ...own, slot: 'bite', at: '12:15' };
    const meals = movedMeals([...plated(before), own], before, after, extra);
    expect(meals.map(({ slot, at }) => [slot, at])).toEqual([
      ['meal-1', '06:30'],
      ['meal-2', '09:08'],
      ['own', '10:00'],
      ['meal-3', '11:45'],
      ['bite', '12:15'],
    ]);
  });
});
