import { describe, expect, it } from 'vitest';
import { createLedger } from '../journal/ledger.ts';
import { createCatalogue } from '../kitchen/catalogue.ts';
import { needsOf, panToCook } from './cook-plan.ts';
import { judgedWeek } from './read-week.ts';
import { shoppingList, type Ware } from './shopping-list.ts';
import { totalsOfDay, weekCost, weekFaults, type DrawnWeek } from './week-cost.ts';
import type { PlannedDay, PlannedPortions } from './week-plan.ts';
import type { WeekRequest } from './week-request.ts';

const catalogue = createCatalogue(createLedger([]));
const target = { proteinG: 100, carbohydrateG: 100, fatG: 40, fibreG: 10 };
const request: WeekRequest = {
  days: [
    { date: '2027-03-08', target, cooking: true },
    { date: '2027-03-09', target, cooking: false },
  ],
  dishes: [
    {
      recipe: 'pot',
      name: 'Pot',
      perPortion: { proteinG: 40, carbohydrateG: 30, fatG: 10, fibreG: 3 },
      keepsDays: 1,
      freezes: true,
      leastPortions: 2,
      mostPortions: 6,
      centsPerPortion: 200,
    },
  ],
  ready: [],
  foods: [
    {
      food: 'rice',
      name: 'Rice',
      per100g: { proteinG: 7, carbohydrateG: 80, fatG: 1, fibreG: 1 },
      minG: 30,
      maxG: 150,
      centsPer100g: 50,
    },
  ],
  rules: {
    portionsPerDay: { min: 2, max: 3 },
    sameDishPerDay: 2,
    wantedDishes: 1,
    toleratedPortions: 3,
    pansPerCookDay: 1,
    foodsPerDay: 2,
    freezer: true,
  },
};

function day(date: string, dishes: PlannedPortions[], grams: number): PlannedDay {
  const foods = grams > 0 ? [{ food: 'rice', grams }] : [];
  return { date, target, dishes, foods, totals: totalsOfDay(request, { dishes, foods }) };
}
const portions = (count: number, frozen: boolean): PlannedPortions => ({
  from: 'pan',
  recipe: 'pot',
  cookedOn: '2027-03-08',
  portions: count,
  frozen,
});
const week: DrawnWeek = {
  days: [day('2027-03-08', [portions(2, false)], 50), day('2027-03-09', [portions(2, true)], 0)],
  pans: [{ date: '2027-03-08', recipe: 'pot', portions: 5 }],
};

describe('what a week costs', () => {
  it('[WEK-02] counted by hand', () => {
    // Day 1: 83.5 P, 100 C, 20.5 F, 6.5 fibre; day 2: 80, 60, 20, 6.
    const dayOne = 4 * 16.5 + 0 + 9 * 19.5 + 4 * 3.5;
    const dayTwo = 4 * 20 + 4 * 40 + 9 * 20 + 4 * 4;
    expect(weekCost(request, week)).toMatchObject({
      macros: dayOne + dayTwo,
      cooking: 80 + 40,
      variety: 20,
      frozen: 12,
      waste: 60,
      money: 0.1 * (5 * 200 + 25),
    });
    expect(weekFaults(request, week)).toEqual([]);
  });

  it.each<[string, DrawnWeek]>([
    ['is out', { ...week, days: [week.days[0] as PlannedDay, day('2027-03-09', [portions(1, false)], 0)] }],
    ['3 times pot', { ...week, days: [day('2027-03-08', [portions(3, false)], 0)] }],
    ['no day to cook on', { ...week, pans: [{ date: '2027-03-09', recipe: 'pot', portions: 5 }] }],
    ['a pan of 9 portions', { ...week, pans: [{ date: '2027-03-08', recipe: 'pot', portions: 9 }] }],
    ['eaten, 3 cooked', { ...week, pans: [{ date: '2027-03-08', recipe: 'pot', portions: 3 }] }],
  ])('[WEK-03] a plan that breaks a limit is refused: %s', (words, broken) => {
    expect(weekFaults(request, broken).join('; ')).toContain(words);
    const refused = judgedWeek(request, broken, 0);
    expect(!refused.ok && refused.problem.code).toBe('week/unsound');
  });
});

const recipe = {
  recipe: 'pot',
  name: 'Pot',
  ingredients: [
    { food: 'usda-sr28:23557', rawG: 500, form: 'beef-mince-under-12-crumbles' },
    { food: 'usda-sr28:11282', rawG: 7 },
  ],
  steps: [],
  yields: { slices: 5 },
};

describe('the cook plan', () => {
  it('[WEK-05] raw weights for the portions, and what goes into the freezer', () => {
    const pan = panToCook(
      { date: '2027-03-08', recipe: 'pot', portions: 4 },
      recipe,
      week.days,
      (food) => food,
    );
    expect(pan.ingredients.map(({ rawG }) => rawG)).toEqual([400, 5.6]);
    expect([pan.freeze, pan.eatenOn]).toEqual([2, ['2027-03-08', '2027-03-09']]);
    expect(pan.expectedG).toBeUndefined();
  });

  it('[WEK-05] what it should weigh: the recipe in proportion, else the yields (69 % of minced beef in crumbles, USDA 2014)', () => {
    const beef = { ...recipe, ingredients: recipe.ingredients.slice(0, 1) };
    const pan = { date: '2027-03-08', recipe: 'pot', portions: 10 };
    expect(panToCook(pan, beef, [], (food) => food)).toMatchObject({ expectedG: 690, expectedBy: 'yields' });
    const weighed = { ...beef, yields: { slices: 5, cookedG: 333 } };
    expect(panToCook(pan, weighed, [], (food) => food)).toMatchObject({
      expectedG: 666,
      expectedBy: 'recipe',
    });
  });

  it('[WEK-06] a cooked table food is bought raw: 163 g of roasted chicken breast come of 225 g', () => {
    const days = [{ date: '2027-03-08', foods: [{ food: 'usda-sr28:05064', grams: 163 }] }];
    const [need] = needsOf([], days, (food) => catalogue.food(food));
    expect(need?.food).toBe('usda-sr28:05062');
    expect(need?.grams).toBeCloseTo((163 * 31.02) / 22.5, 6);
  });
});

describe('the shopping list', () => {
  const ware = (part: Partial<Ware>): Ware => ({ name: 'Rice', aisle: 'grains', haveG: 0, ...part });
  const needs = [
    { food: 'rice', grams: 300, date: '2027-03-10' },
    { food: 'rice', grams: 200, date: '2027-03-08' },
  ];

  it('[WEK-06] rounds what is missing up to whole packs, and says from which day on', () => {
    const [line] = shoppingList(needs, () => ware({ haveG: 250, packG: 400, priceCents: 199 }));
    expect(line).toMatchObject({
      needG: 500,
      missingG: 250,
      packs: 1,
      buyG: 400,
      costCents: 199,
      neededBy: '2027-03-10',
    });
    const [two] = shoppingList(needs, () => ware({ haveG: 99, packG: 400 }));
    expect(two).toMatchObject({ packs: 2, buyG: 800, neededBy: '2027-03-08' });
    const [whole] = shoppingList(needs, () => ware({ haveG: 100, packG: 400 }));
    expect(whole?.packs).toBe(1);
  });

  it('[WEK-06] leaves out what is there, and says how early what does not keep may be bought', () => {
    expect(shoppingList(needs, () => ware({ haveG: 500 }))).toEqual([]);
    const [fish] = shoppingList(needs, () => ware({ keepsDays: 2 }));
    expect(fish?.notBefore).toBe('2027-03-09');
    expect(fish?.buyG).toBe(500);
  });

  it('[WEK-06] goes by aisle', () => {
    const lines = shoppingList([...needs, { food: 'leek', grams: 50, date: '2027-03-08' }], (food) =>
      ware({ name: food, aisle: food === 'leek' ? 'vegetables' : 'grains' }),
    );
    expect(lines.map((line) => line.food)).toEqual(['rice', 'leek']);
  });
});
