import { describe, expect, it } from 'vitest';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { demoJournal } from './journal.ts';
import { storyMs } from './scribe.ts';
import { story, utc } from './story.ts';

const entries = demoJournal(1);
const ledger = createLedger(entries);

describe('the invented athlete', () => {
  it('[DEM-01] the same seed gives the same bytes, another seed others', () => {
    expect(writeJournal(demoJournal(1))).toBe(writeJournal(entries));
    expect(writeJournal(demoJournal(2))).not.toBe(writeJournal(entries));
  });

  it('[DEM-01] every entry reads, over sixteen weeks', () => {
    expect(ledger.problems).toEqual([]);
    expect(ledger.days()).toHaveLength(story.weeks * 7 + 1);
    expect(ledger.of('body-weighed').length).toBeGreaterThan(100);
  });

  it('[DEM-07] the kitchen of the late day holds what the story says', () => {
    const { stock, plannable, catalogue } = kitchenNow(ledger, storyMs(story.today, story.opensAt, utc));
    expect(catalogue.problems).toEqual([]);
    expect(stock.notes).toEqual([]);
    const pan = stock.batches.find(({ batch }) => batch.name.startsWith('Turkey'));
    expect(pan?.containers.map((container) => container.grams)).toEqual([134, 134]);
    expect(plannable.length).toBeGreaterThan(9);
  });
});
