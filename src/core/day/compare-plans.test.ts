import { describe, expect, it } from 'vitest';
import { comparePlans, type ComparedMeal } from './compare-plans.ts';

const meal = (at: string, ...items: readonly [string, number][]): ComparedMeal => ({
  at,
  items: items.map(([name, grams]) => ({ food: name, name, grams })),
});

describe('what a new plan changed', () => {
  it('[DAY-28] says fewer meals, moved meals, and grams of each food', () => {
    const before = [
      meal('07:15', ['oats', 60]),
      meal('11:30', ['rice', 200], ['cod', 150]),
      meal('16:30', ['oats', 40]),
    ];
    const after = [meal('12:20', ['rice', 240], ['cod', 150]), meal('16:30', ['banana', 118], ['oats', 60])];
    expect(comparePlans(before, after)).toEqual([
      '2 meals fit now instead of 3.',
      'The meal at 11:30 moves to 12:20.',
      '118 g of banana come in.',
      '60 g of oats instead of 100 g.',
      '240 g of rice instead of 200 g.',
    ]);
  });

  it('[DAY-28] is silent where nothing changed', () => {
    const plan = [meal('07:15', ['oats', 60])];
    expect(comparePlans(plan, plan)).toEqual([]);
    expect(comparePlans([], plan)).toEqual(['One meal now instead of 0.', '60 g of oats come in.']);
  });
});
