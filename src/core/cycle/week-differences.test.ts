import { describe, expect, it } from 'vitest';
import { weekDifferences } from './week-differences.ts';

const target = { proteinG: 140, carbohydrateG: 180, fatG: 45, fibreG: 25 };
const day = (date: string, batch: string, portions: number, oats: number) => ({
  date,
  target,
  dishes: [{ from: 'ready' as const, batch, portions }],
  foods: [{ food: 'oats', grams: oats }],
  totals: target,
});
const standing = {
  days: [day('2027-03-05', 'pan', 2, 90), day('2027-03-06', 'pan', 1, 90)],
  pans: [{ date: '2027-03-06', recipe: 'pot', portions: 4 }],
};

describe('a week solved again beside the one that stands', () => {
  it('[WEK-10] says nothing where nothing would change, and passes over days begun', () => {
    expect(weekDifferences(standing, standing, '2027-03-04', (id) => id)).toEqual([]);
    const solved = { days: [day('2027-03-06', 'pan', 1, 92)], pans: standing.pans };
    expect(weekDifferences(standing, solved, '2027-03-05', (id) => id)).toEqual([]);
  });

  it('[WEK-10] says each day and pan that would change', () => {
    const solved = {
      days: [day('2027-03-06', 'stew', 1, 40), day('2027-03-07', 'stew', 2, 90)],
      pans: [{ date: '2027-03-07', recipe: 'pot', portions: 4 }],
    };
    expect(weekDifferences(standing, solved, '2027-03-04', (id) => id)).toEqual([
      { about: 'At the stove', sentences: ['pot on Sunday 7 March, 4 portions, not on Saturday 6 March.'] },
      {
        about: 'Saturday 6 March',
        sentences: ['1 portion stew; what stands: 1 portion pan.', 'Beside it 40 g oats (was 90 g).'],
      },
      { about: 'Sunday 7 March', sentences: ['Planned as well: 2 portions stew.'] },
      { about: 'Friday 5 March', sentences: ['No longer planned.'] },
    ]);
  });
});
