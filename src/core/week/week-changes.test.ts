import { describe, expect, it } from 'vitest';
import { weekChanges, type StandingWeek, type WeekFacts } from './week-changes.ts';

const target = { proteinG: 140, carbohydrateG: 180, fatG: 45, fibreG: 25 };
const rules = {
  portionsPerDay: { min: 2, max: 3 },
  sameDishPerDay: 2,
  wantedDishes: 3,
  toleratedPortions: 7,
  pansPerCookDay: 2,
  foodsPerDay: 6,
  freezer: true,
};
const perPortion = { proteinG: 40, carbohydrateG: 30, fatG: 10, fibreG: 3 };
const then: WeekFacts = {
  today: '2027-03-04',
  targets: new Map([
    ['2027-03-05', target],
    ['2027-03-06', target],
  ]),
  dishes: new Map([['pot', { name: 'Pot', perPortion }]]),
  portions: new Map([['pan-1', 3]]),
  grams: new Map([['oats', 500]]),
  needs: [{ food: 'oats', grams: 90, date: '2027-03-06' }],
  centsPer100g: new Map([['oats', 24]]),
  way: { days: 7, cookWeekdays: [5, 6], rules },
};
const standing: StandingWeek = {
  days: [
    { date: '2027-03-05', dishes: [{ from: 'ready', batch: 'pan-1', portions: 2 }], foods: [] },
    {
      date: '2027-03-06',
      dishes: [
        { from: 'pan', recipe: 'pot', cookedOn: '2027-03-05', portions: 2, frozen: false },
        { from: 'ready', batch: 'pan-1', portions: 1 },
      ],
      foods: [{ food: 'oats', grams: 90 }],
    },
  ],
  pans: [{ date: '2027-03-05', recipe: 'pot', name: 'Pot' }],
  batchOf: (dish) => (dish.from === 'ready' ? dish.batch : undefined),
  nameOf: (id) => id,
  struck: new Set(),
};
const changed = (now: Partial<WeekFacts>, of: Partial<StandingWeek> = {}, since: WeekFacts = then) =>
  weekChanges({ ...standing, ...of }, since, { ...then, ...now });

describe('what a standing week no longer fits', () => {
  it('[WEK-09] nothing, while the journal goes by the plan', () => {
    expect(changed({})).toEqual([]);
    // Friday's two portions are eaten and its pan is cooked.
    const friday = { today: '2027-03-05', portions: new Map([['pan-1', 1]]) };
    expect(changed(friday)).toEqual([]);
  });

  it('[WEK-09] portions fewer than the days to come count on', () => {
    expect(changed({ portions: new Map([['pan-1', 1]]) })).toEqual([
      { what: 'portions', name: 'pan-1', counted: 3, left: 1, date: '2027-03-05' },
    ]);
    expect(changed({ portions: new Map() })).toMatchObject([{ what: 'portions', left: 0 }]);
  });

  it('[WEK-09] what was so when the plan was left as it stands is not said again; what came after is', () => {
    const left = { ...then, portions: new Map([['pan-1', 1]]) };
    expect(changed({ portions: new Map([['pan-1', 1]]) }, {}, left)).toEqual([]);
    expect(changed({ portions: new Map([['pan-1', 0]]) }, {}, left)).toMatchObject([{ what: 'portions' }]);
  });

  it('[WEK-09] a pan missed that later days eat from', () => {
    const portions = new Map([['pan-1', 1]]);
    const missed = { what: 'pan missed', name: 'Pot', date: '2027-03-05' };
    // Saturday is the last day: on Friday night it is still ahead, on Saturday the days are over.
    const longer = [...standing.days, { ...standing.days[1], date: '2027-03-07' }] as StandingWeek['days'];
    expect(changed({ today: '2027-03-06', portions }, { days: longer })).toEqual([missed]);
    const cooked = [{ date: '2027-03-05', recipe: 'pot', name: 'Pot', done: 'pan-2' }];
    expect(changed({ today: '2027-03-06', portions }, { days: longer, pans: cooked })).toEqual([]);
    expect(changed({ today: '2027-03-06' })).toEqual([{ what: 'over' }]);
  });

  it('[WEK-09] targets by a gram, not by rounding', () => {
    const with_ = (carbohydrateG: number) => ({
      targets: new Map([...then.targets, ['2027-03-06', { ...target, carbohydrateG }] as const]),
    });
    expect(changed(with_(181))).toEqual([{ what: 'targets', dates: ['2027-03-06'] }]);
    expect(changed(with_(180.4))).toEqual([]);
  });

  it('[WEK-09] a food struck from the shelf and still needed; eating from it is no change', () => {
    const empty = { grams: new Map<string, number>() };
    expect(changed(empty)).toEqual([]);
    expect(changed(empty, { struck: new Set(['oats']) })).toEqual([
      { what: 'food', name: 'oats', leftG: 0, needG: 90, date: '2027-03-06' },
    ]);
    const enough = { grams: new Map([['oats', 75]]) };
    expect(changed(enough, { struck: new Set(['oats']) })).toEqual([]);
  });

  it('[WEK-09] a recipe changed or gone, a price a fifth off, wishes', () => {
    const other = new Map([['pot', { name: 'Pot', perPortion: { ...perPortion, fatG: 14 } }]]);
    expect(changed({ dishes: other })).toEqual([{ what: 'recipe', name: 'Pot', gone: false }]);
    expect(changed({ dishes: new Map() })).toEqual([{ what: 'recipe', name: 'Pot', gone: true }]);
    expect(changed({ centsPer100g: new Map([['oats', 28]]) })).toEqual([]);
    expect(changed({ centsPer100g: new Map([['oats', 30]]) })).toMatchObject([{ what: 'price', to: 30 }]);
    const way = { days: 3, cookWeekdays: [5], rules: { ...rules, freezer: false } };
    expect(changed({ way })).toEqual([{ what: 'way', parts: ['days', 'cookWeekdays', 'freezer'] }]);
  });
});
