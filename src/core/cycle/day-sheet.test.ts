import { describe, expect, it } from 'vitest';
import {
  DAY,
  dayJournal,
  dayMs,
  plainDay,
  plainPlan,
  type DayStep,
} from '../../../test/journal/day-journal.ts';
import { parseClock } from '../units/clock.ts';
import { daySheet } from './day-sheet.ts';
import { kitchenNow } from './kitchen-now.ts';
import { runSheet } from './run-sheet.ts';

function at(clock: string, ...steps: readonly DayStep[]) {
  const ledger = dayJournal(...steps);
  const now = parseClock(clock) ?? 0;
  const sheet = daySheet(ledger, DAY, now, kitchenNow(ledger, dayMs(clock)).read);
  return { sheet, rows: runSheet(sheet, ledger, now) };
}

const eaten: DayStep = [
  '07:10',
  'meal-eaten',
  { slot: 'meal-1', items: [{ source: 'food', food: 'usda-sr28:08120', grams: 80 }] },
];

describe('the sheet of a day', () => {
  it('[RUN-35] at the minute of waking, waking stands first', () => {
    const early: DayStep = [
      '06:00',
      'meal-eaten',
      { items: [{ source: 'food', food: 'usda-sr28:08120', grams: 80 }] },
    ];
    const { rows } = at('06:10', ...plainDay, early);
    expect(rows.slice(0, 2).map(({ thing }) => thing.type)).toEqual(['wake', 'eaten']);
  });

  it('[RUN-03] what is eaten is summed as weighed, and the rest is left', () => {
    const { sheet } = at('08:00', ...plainDay, plainPlan, eaten);
    // Rolled oats, USDA SR28 08120: 13.15 g protein, 67.7 g carbohydrate, 6.52 g fat per 100 g.
    expect(sheet.total.nutrients.proteinG).toBeCloseTo(0.8 * 13.15, 6);
    expect(sheet.left?.proteinG).toBeCloseTo(180 - 0.8 * 13.15, 6);
    expect(sheet.left?.carbohydrateG).toBeCloseTo(200 - 0.8 * 67.7, 6);
    expect(sheet.meals.map((meal) => meal.state)).toEqual(['eaten', 'ahead']);
    expect(sheet.next?.slot).toBe('meal-2');
  });

  it('[RUN-03] a meal past its time is late, by how much; a skipped one is neither', () => {
    expect(at('11:30', ...plainDay, plainPlan).sheet.meals.map((meal) => [meal.state, meal.lateBy])).toEqual([
      ['late', 270],
      ['ahead', 0],
    ]);
    const skipped: DayStep = ['09:00', 'meal-skipped', { slot: 'meal-1' }];
    expect(at('11:30', ...plainDay, plainPlan, skipped).sheet.meals[0]).toMatchObject({
      state: 'skipped',
      lateBy: 0,
    });
  });

  it('[RUN-03] a food the journal no longer knows is shown, not dropped', () => {
    const odd: DayStep = ['07:10', 'meal-eaten', { items: [{ source: 'food', food: 'gone', grams: 80 }] }];
    const { sheet } = at('08:00', ...plainDay, odd);
    expect(sheet.eaten[0]?.items[0]).toMatchObject({
      grams: 80,
      name: 'a food this journal no longer knows',
    });
    expect(sheet.total.nutrients.energyKcal).toBe(0);
  });

  it('[RUN-04] exactly one row is next, and nothing comes after sleep', () => {
    for (const clock of ['05:30', '06:30', '08:00', '12:00', '14:00', '17:30', '23:50', '24:30']) {
      const { rows } = at(clock, ...plainDay, plainPlan, eaten);
      expect([clock, rows.filter((row) => row.state === 'next').length]).toEqual([clock, 1]);
      expect(rows.at(-1)?.thing.type).toBe('sleep');
    }
  });

  it('[RUN-04] cardio with nothing logged is missed once its time is well past; logged, it is done', () => {
    const missed = at('09:00', ...plainDay, plainPlan).rows.find((row) => row.thing.type === 'cardio');
    expect(missed?.state).toBe('missed');
    const walk: DayStep = ['06:55', 'cardio-done', { activity: 'walk', minutes: 30, beforeFood: true }];
    const done = at('09:00', ...plainDay, plainPlan, walk).rows.find((row) => row.thing.type === 'cardio');
    expect(done?.state).toBe('done');
  });

  it('[RUN-04] a late meal is still next: it waits until it is eaten, skipped or planned anew', () => {
    const { rows } = at('12:10', ...plainDay, plainPlan);
    expect(rows.find((row) => row.state === 'next')?.key).toBe('meal meal-1');
  });
});
