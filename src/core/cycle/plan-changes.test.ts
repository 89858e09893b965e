import { describe, expect, it } from 'vitest';
import { DAY, dayJournal } from '../../../test/journal/day-journal.ts';
import { parseClock } from '../units/clock.ts';
import { daySheet } from './day-sheet.ts';
import { planChanges, planMisses } from './plan-changes.ts';

const nothing = () => undefined;
const now = parseClock('05:40');
const sheet = daySheet(dayJournal(), DAY, now ?? 0, nothing);

describe('what a new plan changed', () => {
  it.each([
    [false, /nothing is in stock.*Put in stock/],
    [true, /^No meal is left to plan today\.$/],
  ])('[RUN-33] a day without meals says whether food is missing (food in stock: %s)', (hasFood, words) => {
    const adopted = { cause: 'morning' as const, meals: [], cost: 0, gap: 0 };
    const sentences = planChanges(sheet, adopted, nothing, now, hasFood);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(words);
  });

  it('[RUN-33] after a day planned from nothing the first meals are told by their times', () => {
    const empty = daySheet(
      dayJournal(['05:40', 'plan-adopted', { cause: 'morning', meals: [], cost: 0, gap: 0 }]),
      DAY,
      now ?? 0,
      nothing,
    );
    const items = [{ source: 'food', food: 'usda-sr28:08120', grams: 80 }] as const;
    const target = { proteinG: 40, carbohydrateG: 40, fatG: 10 };
    const meal = {
      slot: 'meal-1',
      at: '07:00',
      role: 'away' as const,
      target,
      items: [...items],
      pinned: false,
    };
    const adopted = { cause: 'asked' as const, meals: [meal], cost: 0, gap: 0 };
    expect(empty.plan).toBeDefined();
    expect(planChanges(empty, adopted, nothing, now, true)).toEqual(['Meals at 07:00.']);
  });

  it('[RUN-34] a day far off its targets is said in grams, a near one is not spoken of', () => {
    expect(planMisses({ proteinG: -115, carbohydrateG: 2, fatG: 27.4 })).toEqual([
      'This plan misses the targets: 115 g of protein short, 27 g of fat over.',
    ]);
    expect(planMisses({ proteinG: -9, carbohydrateG: 19, fatG: 0 })).toEqual([]);
  });
});
