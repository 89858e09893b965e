import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { product } from '../../../../test/health/product.ts';
import { substances } from '#core/tables/substances.ts';
import { upperLimits } from '#core/tables/upper-limits.ts';
import { nutrientNames } from '#core/tables/nutrient-names.ts';
import { separationRules } from '#core/tables/separation-rules.ts';
import { plainName } from '../plain-name.ts';
import { findSubstance, substanceKey } from './find-substance.ts';
import { sumAnswer, type SumAnswer } from './sum-request.ts';
import { sumSupplements } from './sum-supplements.ts';

const athlete = { sex: 'male', age: 32 };

function sum(products: { supplement: string }[], more: object = {}, units = 1): SumAnswer {
  const intakes = products.map(({ supplement }) => ({ supplement, unitsPerDay: units }));
  const outcome = sumSupplements({ athlete, products, intakes, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return parse(sumAnswer, outcome.value);
}
const row = (answer: SumAnswer, nutrient: string) =>
  answer.nutrients.find((found) => found.nutrient === nutrient);
const one = (of: string, amount: number, unit: string, more: object = {}) =>
  sum([product('p', [{ of, amount, unit }])], more);

describe('the table of upper limits', () => {
  it('[HLT-40] has the 34 rows, each nutrient once, each limit positive', () => {
    expect(upperLimits).toHaveLength(34);
    expect(new Set(upperLimits.map(({ key }) => key)).size).toBe(34);
    for (const { us, eu } of upperLimits)
      for (const { perDay } of [...us, ...eu]) expect(perDay).toBeGreaterThan(0);
  });

  // NASEM: DRI tables of tolerable upper intake levels. EFSA: overview version 4 (2018) and the opinions of 2023-2024.
  it.each([
    ['vitaminD', 100, 100],
    ['vitaminB6', 100, 12],
    ['niacin', 35, 10],
    ['magnesium', 350, 250],
    ['iron', 45, 40],
    ['zinc', 40, 25],
    ['iodine', 1100, 600],
    ['selenium', 400, 255],
    ['caffeine', 400, 400],
  ])('[HLT-40] %s: US %d, EU %d', (key, us, eu) => {
    const found = upperLimits.find((limits) => limits.key === key);
    expect([found?.us[0]?.perDay, found?.eu[0]?.perDay]).toEqual([us, eu]);
  });

  it('[HLT-40] names of nutrients, substances and rules mean one thing and something that is there', () => {
    const keys = new Set([...upperLimits.map(({ key }) => key), ...substances.map(({ key }) => key)]);
    for (const [name, { nutrient }] of nutrientNames) expect(substanceKey(name)).toBe(nutrient);
    const meant = new Map<string, string>();
    for (const substance of substances) {
      for (const name of [substance.key, substance.name, ...substance.alsoCalled]) {
        expect(meant.get(plainName(name)) ?? substance.key).toBe(substance.key);
        expect(findSubstance(name).kind).toBe('substance');
        meant.set(plainName(name), substance.key);
      }
    }
    const others = ['meal', 'coffee', 'tea', 'any medicine'];
    const sides = separationRules.flatMap(({ a, b }) => [a, b]);
    expect(sides.filter((side) => !keys.has(side) && !others.includes(side))).toEqual([]);
  });
});

describe('sums', () => {
  it('[HLT-41] adds a nutrient over all products and shows the duplicate', () => {
    const answer = sum([
      product('multi', [{ of: 'vitamin D', amount: 25, unit: 'ug' }]),
      product('drops', [{ of: 'cholecalciferol', amount: 4000, unit: '[IU]' }], { perUnits: 2 }),
    ]);
    expect(row(answer, 'vitaminD')).toMatchObject({ supplements: 75, unit: 'ug', duplicate: true });
    expect(row(answer, 'vitaminD')?.us[0]).toMatchObject({ total: 75, percent: 75, over: false });
    expect(answer.why.join()).toContain('Vitamin D is in multi and drops');
  });

  it('[HLT-41] 40 IU of vitamin D are 1 ug (NASEM 2011)', () => {
    expect(row(one('vitamin D3', 40, '[IU]'), 'vitaminD')?.supplements).toBe(1);
  });

  it('[HLT-42] magnesium of food does not count, iron of food does', () => {
    const magnesium = row(one('magnesium', 300, 'mg', { food: { magnesium: 500 } }), 'magnesium');
    expect(magnesium?.us[0]).toMatchObject({ total: 300, over: false, counted: 'supplements only' });
    expect(magnesium?.eu[0]).toMatchObject({ total: 300, over: true });
    const iron = row(one('iron', 30, 'mg', { food: { iron: 18 } }), 'iron');
    expect(iron?.us[0]).toMatchObject({ total: 48, over: true });
    expect(iron?.eu[0]).toMatchObject({ basis: 'safe level', over: true });
  });

  it('[HLT-42] where food counts and is not known, it is said', () => {
    expect(row(one('iron', 14, 'mg'), 'iron')?.us[0]).toMatchObject({ total: 14, foodUnknown: true });
    expect(row(one('magnesium', 100, 'mg'), 'magnesium')?.us[0]).toMatchObject({ foodUnknown: false });
    expect(one('iron', 14, 'mg').why.join()).toContain('Food is not known for Iron');
  });

  it('[HLT-42] folic acid and niacin count their added forms only', () => {
    const folate = row(one('folic acid', 800, 'ug', { food: { folate: 600 } }), 'folate');
    expect([folate?.us[0]?.total, folate?.eu[0]?.total]).toEqual([800, 800]);
    const niacin = row(one('nicotinamide', 50, 'mg', { food: { niacin: 25 } }), 'niacin');
    expect(niacin?.us[0]).toMatchObject({ total: 50, over: true });
    expect(niacin?.eu.map(({ total, over }) => [total, over])).toEqual([
      [0, false],
      [50, false],
    ]);
  });

  it('[HLT-42] a form that the label does not say counts towards every limit of a form', () => {
    const niacin = row(one('niacin', 50, 'mg'), 'niacin');
    expect(niacin?.eu.map(({ total, over }) => [total, over])).toEqual([
      [50, true],
      [50, false],
    ]);
    expect(niacin?.notes).toHaveLength(1);
  });

  it('[HLT-42] beta-carotene is no preformed vitamin A', () => {
    const answer = sum([
      product('p', [
        { of: 'vitamin A', form: 'beta-carotene', amount: 3, unit: 'mg' },
        { of: 'retinyl palmitate', amount: 800, unit: 'ug' },
      ]),
    ]);
    expect(row(answer, 'vitaminA')?.us[0]?.total).toBe(800);
    expect(row(answer, 'betaCarotene')?.supplements).toBe(3);
  });

  it("[HLT-42] calcium's US level falls from 51 years, copper's EU figure goes by body mass", () => {
    expect(row(one('calcium', 2200, 'mg'), 'calcium')?.us[0]?.over).toBe(false);
    expect(
      row(one('calcium', 2200, 'mg', { athlete: { sex: 'male', age: 51 } }), 'calcium')?.us[0]?.over,
    ).toBe(true);
    expect(
      row(one('copper', 4, 'mg', { athlete: { ...athlete, massKg: 70 } }), 'copper')?.eu[0]?.perDay,
    ).toBe(4.9);
  });

  it('[HLT-43] caffeine by dose and by day, drinks too', () => {
    const products = [product('wake-up', [{ of: 'caffeine', amount: 100, unit: 'mg' }])];
    const intakes = [{ supplement: 'wake-up', unitsPerDay: 3, unitsPerDose: 1 }];
    const outcome = sumSupplements({ athlete, products, intakes, drinksCaffeineMg: 180 });
    expect(outcome.ok && outcome.value.caffeine).toMatchObject({
      perDayMg: 480,
      largestDoseMg: 100,
      over: true,
      drinksUnknown: false,
    });
    expect(sum(products).caffeine).toMatchObject({ perDayMg: 100, drinksUnknown: true, over: false });
  });

  it('[HLT-43] 800 mg of EGCG a day is a dose of concern (EFSA Journal 2018;16:5239)', () => {
    expect(row(one('EGCG', 800, 'mg'), 'egcg')?.eu[0]).toMatchObject({
      over: true,
      basis: 'dose of concern',
    });
    expect(row(one('EGCG', 799, 'mg'), 'egcg')?.eu[0]?.over).toBe(false);
  });

  it('[HLT-44] every substance carries its cautions with their source; prohibited ones say so', () => {
    const answer = sum([
      product('p', [
        { of: 'ashwagandha', amount: 600, unit: 'mg' },
        { of: 'higenamine' },
        { of: 'moon dust', amount: 1, unit: 'g' },
      ]),
    ]);
    expect(answer.substances[0]?.cautions[0]?.words).toContain('Liver injury');
    expect(answer.substances[0]?.cautions[0]?.source).toContain('Bjornsson');
    expect(answer.substances[1]?.inSport).toBe('prohibited at all times');
    expect(answer.substances[1]).not.toHaveProperty('mg');
    expect(answer.notKnown).toEqual([{ supplement: 'p', name: 'p', printed: 'moon dust' }]);
  });

  it('[HLT-44] strict liability and contamination go with every list (Geyer 2004: 94 of 634)', () => {
    const said = one('zinc', 10, 'mg')
      .cautions.map(({ words }) => words)
      .join(' ');
    expect(said).toContain('answers for whatever is found');
    expect(said).toContain('94 of 634');
    expect(said).not.toMatch(/\bis safe\b/);
    expect(said).toContain('No batch test is noted for: p');
  });

  it('[HLT-41] a label for no units, an unknown food nutrient and an undescribed product are asked about', () => {
    const ask = (more: object) => {
      const outcome = sumSupplements({
        athlete,
        products: [product('p', [{ of: 'zinc', amount: 1, unit: 'mg' }])],
        intakes: [],
        ...more,
      });
      return outcome.ok ? undefined : outcome.problem;
    };
    expect(
      ask({ products: [product('p', [{ of: 'zinc', amount: 1, unit: 'mg' }], { perUnits: 0 })] }),
    ).toMatchObject({ code: 'health/wrong-value', path: 'products.0.perUnits' });
    expect(ask({ food: { moonium: 3 } })?.code).toBe('health/unknown-nutrient');
    expect(ask({ intakes: [{ supplement: 'q', unitsPerDay: 1 }] })?.code).toBe('health/unknown-supplement');
    expect(ask({ products: [product('p', [{ of: 'zinc', amount: 1 }])] })?.code).toBe('health/wrong-value');
  });
});
