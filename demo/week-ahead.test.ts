import { describe, expect, it } from 'vitest';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { weekAhead, weekFoodsOn } from '#core/cycle/week-ahead.ts';
import { weekAsk } from '#core/cycle/week-ask.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { totalsOfDay, weekCost, weekFaults } from '#core/week/week-cost.ts';
import { demoJournal } from './journal.ts';
import { storyMs } from './scribe.ts';
import { story, utc } from './story.ts';
import { weekPlan } from './week-plan.ts';

const ledger = createLedger(demoJournal(1));
const kitchen = kitchenNow(ledger, storyMs(story.today, '05:59', utc));

describe('the invented athlete’s week ahead', () => {
  it('[WEK-03] is what the solver answered: it keeps every limit and costs what was written down', () => {
    const ask = weekAsk(ledger, kitchen, story.today);
    if (!ask.ok) throw new Error(ask.problem.message);
    const days = weekPlan.days.map((day) => ({ ...day, totals: totalsOfDay(ask.value, day) }));
    const week = { days, pans: weekPlan.pans };
    expect(weekFaults(ask.value, week)).toEqual([]);
    expect(weekCost(ask.value, week).total).toBeCloseTo(weekPlan.cost, 1);
  });

  it('[WEK-07] holds when the story opens: pans to cook, foods to buy in packs, nothing out of line', () => {
    const noon = kitchenNow(ledger, storyMs(story.today, story.opensAt, utc));
    const ahead = weekAhead(ledger, noon, story.today);
    expect(ahead?.outOfLine).toEqual([]);
    expect(ahead?.pans.every((pan) => pan.done === undefined && pan.ingredients.length > 1)).toBe(true);
    expect(ahead?.list.length).toBeGreaterThan(4);
    expect(ahead?.list.some((line) => line.packs !== undefined && line.buyG >= line.missingG)).toBe(true);
  });

  it('[WEK-07] a pan not cooked on its day puts it out of line', () => {
    const later = weekAhead(ledger, kitchen, weekPlan.pans[0]?.date.replace(/\d\d$/, '09') ?? '');
    expect(later?.outOfLine.join(' ')).toContain('was to be cooked on');
  });

  it('[WEK-08] tomorrow’s plan knows which batch and foods the week has for it', () => {
    const tomorrow = weekPlan.days[0];
    const wanted = weekFoodsOn(ledger, kitchen.catalogue, tomorrow?.date ?? '');
    expect(tomorrow?.foods.every(({ food }) => wanted.has(food))).toBe(true);
    expect(weekFoodsOn(ledger, kitchen.catalogue, story.today).size).toBe(0);
  });
});
