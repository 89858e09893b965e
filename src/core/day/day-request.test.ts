import { describe, expect, it } from 'vitest';
import { dayRequestOf } from '../../../test/simulation/day-requests.ts';
import { readDay } from './day-situation.ts';

const plain = dayRequestOf(1);
const food = plain.foods[0]?.id ?? '';
const nutrients = { energyKcal: 800, proteinG: 40, fatG: 35, carbohydrateG: 80 };

function eating(item: object): object {
  return { ...plain, now: '12:00', eaten: [{ at: '11:00', items: [item] }] };
}

describe('one line of the day command', () => {
  it.each([
    ['a typo beside a food', { food, grams: 100, gram: 1 }, 'day/unknown-field', 'eaten.0.items.0.gram'],
    ['a food without its grams', { food }, 'day/missing-field', 'eaten.0.items.0.grams'],
    ['grams of nothing', { grams: 100 }, 'day/missing-field', 'eaten.0.items.0.food'],
    ['a food and a guess at once', { food, grams: 100, nutrients }, 'day/wrong-value', 'eaten.0.items.0'],
    [
      'a spread of weighed food',
      { food, grams: 100, spreadPercent: 10 },
      'day/wrong-value',
      'eaten.0.items.0',
    ],
  ])('[DAY-01] %s is named in its place', (_name, item, code, path) => {
    const read = readDay(eating(item));
    expect(read.ok ? {} : { code: read.problem.code, path: read.problem.path }).toEqual({ code, path });
  });

  it('[DAY-01] a guess without its spread is taken for a quarter off either way', () => {
    const read = readDay(eating({ nutrients }));
    expect(read.ok && read.value.request.eaten[0]?.items).toEqual([{ nutrients, spreadPercent: 25 }]);
  });

  it.each([
    [{}, { min: 3, max: 5 }],
    [{ max: 2 }, { min: 2, max: 2 }],
    [{ min: 6 }, { min: 6, max: 6 }],
    [
      { min: 1, max: 4 },
      { min: 1, max: 4 },
    ],
  ])('[DAY-06] meals %o means %o', (meals, wanted) => {
    const read = readDay({ ...plain, rules: { meals } });
    expect(read.ok && read.value.rules.meals).toEqual(wanted);
  });

  it('[DAY-01] what was read may be read again and stays the same', () => {
    const read = readDay(eating({ nutrients, name: 'supper out' }));
    if (!read.ok) throw new Error(read.problem.message);
    const again = readDay(read.value.request);
    expect(again.ok && again.value.request).toEqual(read.value.request);
  });
});
