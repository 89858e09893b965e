import { describe, expect, it } from 'vitest';
import { eatDraftOf, readEaten, type EatDraft } from './eat-draft.ts';

const EMPTY = eatDraftOf(undefined);
const PIZZA: EatDraft = {
  ...EMPTY,
  guessName: 'Pizza',
  guessProteinG: 30,
  guessCarbohydrateG: 90,
  guessFatG: 30,
};
const RICE = { item: { source: 'food', food: 'rice', grams: 200 }, grams: 200 } as const;

describe('what was eaten', () => {
  it('[RUN-32] a guess alone, not put on the plate, is the meal; 4, 4 and 9 kcal a gram (Regulation (EU) 1169/2011, annex XIV)', () => {
    const reading = readEaten(PIZZA);
    expect(reading.ok && reading.items).toMatchObject([
      { source: 'guess', name: 'Pizza', nutrients: { energyKcal: 750, proteinG: 30 }, spreadPercent: 30 },
    ]);
  });

  it('[RUN-32] a guess beside weighed food is not dropped', () => {
    const reading = readEaten({ ...PIZZA, items: [RICE] });
    expect(reading.ok && reading.items.map(({ source }) => source)).toEqual(['food', 'guess']);
  });

  it('[RUN-32] a guess with a name and no figures is asked for them, beside a food without grams', () => {
    const named = readEaten({ ...EMPTY, guessName: 'Soup' });
    expect(!named.ok && named.problems.map(({ path }) => path)).toEqual(['guessKcal']);
    const both = readEaten({ ...EMPTY, guessName: 'Soup', items: [{ item: RICE.item }] });
    expect(!both.ok && both.problems.map(({ path }) => path)).toEqual(['items.0', 'guessKcal']);
  });

  it('[RUN-32] nothing on the plate and no guess is no meal', () => {
    const reading = readEaten(EMPTY);
    expect(!reading.ok && reading.problems[0]?.message).toBe('Nothing is on the plate yet.');
  });
});
