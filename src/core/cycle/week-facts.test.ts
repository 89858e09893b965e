import { describe, expect, it } from 'vitest';
import { DAY, dayJournal, dayMs, plainDay, type DayStep } from '../../../test/journal/day-journal.ts';
import type { Ledger } from '../journal/ledger.ts';
import { kitchenNow } from './kitchen-now.ts';
import { weekAhead } from './week-ahead.ts';
import { weekAsk } from './week-ask.ts';
import { weekBase } from './week-facts.ts';

const MINCE = 'usda-sr28:05665';
const usual: readonly DayStep[] = [
  ...plainDay,
  ['05:02', 'day-shaped', { scope: { of: 'usual', weekdays: [5] }, wake: '06:00', sleep: '22:00' }],
  [
    '05:03',
    'target-set',
    {
      from: DAY,
      dayKind: 'every',
      basis: 'entered',
      proteinG: 140,
      carbohydrateG: 180,
      fatG: 45,
      fibreMinG: 25,
    },
  ],
  [
    '05:10',
    'batch-cooked',
    {
      batch: 'pan',
      name: 'Mince pan',
      ingredients: [{ food: MINCE, rawG: 600 }],
      containerG: 0,
      cookedGrossG: 420,
      fromStock: false,
    },
  ],
  ['05:11', 'batch-portioned', { batch: 'pan', portionsG: [140, 140, 140], place: 'fridge' }],
  [
    '05:12',
    'recipe-defined',
    {
      recipe: 'mince-pot',
      name: 'Mince pot',
      ingredients: [{ food: MINCE, rawG: 600 }],
      steps: [],
      yields: { slices: 4 },
    },
  ],
  ['05:20', 'week-wished', { days: 1 }],
  [
    '05:30',
    'week-adopted',
    {
      week: 'week-a',
      days: [
        {
          date: '2027-03-05',
          target: { proteinG: 140, carbohydrateG: 180, fatG: 45, fibreG: 25 },
          dishes: [{ from: 'ready', batch: 'pan', portions: 2 }],
          foods: [],
        },
      ],
      pans: [{ date: '2027-03-05', recipe: 'mince-pot', portions: 4 }],
      cost: 100,
      gap: 0,
      why: ['tried'],
    },
  ],
];
const binned: readonly DayStep[] = [
  ['07:00', 'portion-moved', { batch: 'pan', portion: 1, to: 'bin' }],
  ['07:01', 'portion-moved', { batch: 'pan', portion: 2, to: 'bin' }],
];

function ahead(ledger: Ledger) {
  return weekAhead(ledger, kitchenNow(ledger, dayMs('08:00')), DAY);
}

describe('the standing week against the journal', () => {
  it('[WEK-09] fits the journal it was solved from, and says in words what has gone since', () => {
    expect(ahead(dayJournal(...usual))?.outOfLine).toEqual([]);
    expect(ahead(dayJournal(...usual, ...binned))?.outOfLine).toEqual([
      'Mince pan for Friday 5 March: 1 portion is left; the plan counted on 2 portions.',
    ]);
  });

  it('[WEK-10] left as it stands it is not asked about again, until something else changes', () => {
    const left: DayStep = ['07:30', 'week-kept', { week: 'week-a', because: ['Portions went.'] }];
    expect(ahead(dayJournal(...usual, ...binned, left))?.outOfLine).toEqual([]);
    const last: DayStep = ['07:40', 'portion-moved', { batch: 'pan', portion: 3, to: 'bin' }];
    expect(ahead(dayJournal(...usual, ...binned, left, last))?.outOfLine).toEqual([
      'Mince pan for Friday 5 March: none is left; the plan counted on 2 portions.',
    ]);
  });

  it('[WEK-09] the journal as it was is read again only when another plan stands', () => {
    const ledger = dayJournal(...usual, ...binned);
    const base = weekBase(ledger);
    expect(base?.facts.portions.get('pan')).toBe(3);
    expect(weekBase(ledger, base)).toBe(base);
  });

  it('[WEK-11] raw food that spoils and was ticked off for a pan is to be cooked in time', () => {
    const bought: DayStep = [
      '07:00',
      'stock-bought',
      { food: MINCE, grams: 600, place: 'fridge', week: 'week-a' },
    ];
    const ledger = dayJournal(...usual, bought);
    const ask = weekAsk(ledger, kitchenNow(ledger, dayMs('08:00')), DAY);
    // Ground meat keeps one to two days in the fridge (FoodSafety.gov, Cold Food Storage Chart).
    expect(ask.ok && ask.value.bought).toEqual([
      { food: MINCE, recipes: ['mince-pot'], lastDay: 0, portions: 4 },
    ]);
  });
});
