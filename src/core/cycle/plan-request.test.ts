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
import { adoptPlan } from './adopt-plan.ts';
import { daySheet } from './day-sheet.ts';
import { kitchenNow } from './kitchen-now.ts';
import { planRequest } from './plan-request.ts';

function asked(clock: string, ...steps: readonly DayStep[]) {
  const ledger = dayJournal(...steps);
  const now = parseClock(clock) ?? 0;
  const kitchen = kitchenNow(ledger, dayMs(clock));
  const sheet = daySheet(ledger, DAY, now, kitchen.read);
  return { sheet, kitchen, request: planRequest({ sheet, plannable: kitchen.plannable, now, massKg: 80 }) };
}

function requestOf(clock: string, ...steps: readonly DayStep[]) {
  const { request } = asked(clock, ...steps);
  if (!request.ok) throw new Error(request.problem.message);
  return request.value;
}

const pan: readonly DayStep[] = [
  [
    '05:30',
    'batch-cooked',
    {
      batch: 'pan',
      name: 'Mince pan',
      ingredients: [{ food: 'usda-sr28:05665', rawG: 600 }],
      containerG: 0,
      cookedGrossG: 420,
      fromStock: false,
    },
  ],
  ['05:40', 'batch-portioned', { batch: 'pan', portionsG: [140, 140, 140], place: 'fridge' }],
];

describe('what the planner is asked', () => {
  it('[RUN-06] plans from what may be eaten: cooked and dry stock, frozen berries, not raw poultry', () => {
    const ids = requestOf('06:10', ...plainDay).foods.map((food) => food.id);
    expect(ids).toContain('usda-sr28:08120');
    expect(ids).toContain('usda-sr28:05064');
    expect(ids).toContain('usda-sr28:09054');
    expect(ids).not.toContain('usda-sr28:05062');
  });

  it('[RUN-06] raw poultry goes on a plate when the athlete says it is cooked for the meal', () => {
    const freely: DayStep = [
      '05:50',
      'food-preferred',
      { food: 'usda-sr28:05062', favourite: false, planFreely: true },
    ];
    expect(requestOf('06:10', ...plainDay, freely).foods.map((food) => food.id)).toContain('usda-sr28:05062');
  });

  it('[RUN-06] packed portions are offered whole, and never once they are out of date', () => {
    const food = requestOf('06:10', ...plainDay, ...pan).foods.find(({ id }) => id === 'batch:pan');
    expect(food?.portionsG).toEqual([140, 140, 140]);
    const leftOut: DayStep[] = [1, 2, 3].map((portion) => [
      '06:00',
      'portion-moved',
      { batch: 'pan', portion, to: 'room' },
    ]);
    expect(requestOf('12:00', ...plainDay, ...pan, ...leftOut).foods.map(({ id }) => id)).not.toContain(
      'batch:pan',
    );
  });

  it('[RUN-05] what is eaten enters with its uncertainty, a guess with its own', () => {
    const guess: DayStep = [
      '08:00',
      'meal-eaten',
      {
        items: [
          {
            source: 'guess',
            name: 'Noodles out',
            nutrients: { energyKcal: 600, proteinG: 30, carbohydrateG: 70, fatG: 20 },
            spreadPercent: 30,
          },
        ],
      },
    ];
    const item = requestOf('09:00', ...plainDay, guess).eaten[0]?.items[0];
    expect(item).toMatchObject({ nutrients: { energyKcal: 600, proteinG: 30 } });
    // Anything within ±30 % as likely: one standard deviation is 30 % / sqrt(3) (GUM, JCGM 100:2008, 4.3.7).
    expect(item && 'spreadPercent' in item ? item.spreadPercent : 0).toBeCloseTo(30 / Math.sqrt(3), 6);
  });

  it('[RUN-05] a pinned meal keeps its time and grams; one whose time is past no longer does', () => {
    expect(requestOf('12:00', ...plainDay, plainPlan).pinned).toEqual([
      {
        at: '13:00',
        items: [
          { food: 'usda-sr28:05064', grams: 150 },
          { food: 'usda-sr28:08120', grams: 60 },
        ],
      },
    ]);
    expect(requestOf('13:30', ...plainDay, plainPlan).pinned).toEqual([]);
  });

  it('[RUN-05] without targets or a shape nothing is planned, and it is said', () => {
    const bare = asked('09:00').request;
    expect(bare.ok ? '' : bare.problem.code).toBe('day/no-shape');
    const shaped = asked('09:00', ...plainDay.slice(0, 1)).request;
    expect(shaped.ok ? '' : shaped.problem.code).toBe('day/no-targets');
  });

  it('[RUN-07] an adopted plan names each packed portion once and takes new slots', () => {
    const { sheet, kitchen } = asked('06:10', ...plainDay, ...pan, plainPlan);
    const target = { proteinG: 50, carbohydrateG: 50, fatG: 15 };
    const meal = (at: string) => ({
      at,
      role: 'away' as const,
      target,
      items: [{ food: 'batch:pan', grams: 140 }],
    });
    const plan = { cost: 12, gap: 0.02, meals: [meal('08:00'), meal('13:00'), meal('19:00')] };
    const adopted = adoptPlan({ sheet, plan, cause: 'asked', available: kitchen.available });
    expect(adopted.meals.map(({ items }) => items[0])).toEqual([
      { source: 'batch', batch: 'pan', grams: 140, portion: 1 },
      { source: 'batch', batch: 'pan', grams: 140, portion: 2 },
      { source: 'batch', batch: 'pan', grams: 140, portion: 3 },
    ]);
    expect(adopted.meals.map(({ slot }) => slot)).toEqual(['meal-3', 'meal-4', 'meal-5']);
    expect(adopted.meals.map(({ pinned }) => pinned)).toEqual([false, true, false]);
  });
});
