import { describe, expect, it } from 'vitest';
import type { DataOf } from '../journal/kinds/registry.ts';
import { hour, kitchenJournal, type KitchenStep } from '../../../test/journal/kitchen-journal.ts';
import { availableFoods } from './available.ts';
import { createCatalogue } from './catalogue.ts';
import { containerLabel } from './container-label.ts';
import { stockAt } from './stock.ts';

const BEEF = 'usda-sr28:23562';
const ONION = 'usda-sr28:11282';
const RICE = 'usda-sr28:20044';

const pan: DataOf<'batch-cooked'> = {
  batch: 'b1',
  name: 'beef and onion',
  ingredients: [
    { food: BEEF, rawG: 680 },
    { food: ONION, rawG: 150 },
  ],
  containerG: 480,
  cookedGrossG: 1002,
  fromStock: true,
};
const cook: KitchenStep = [0, 'batch-cooked', pan];
const packThree: KitchenStep = [
  0.5,
  'batch-portioned',
  { batch: 'b1', portionsG: [150, 150, 150], place: 'fridge' },
];
const eat = (hours: number, portion: number | undefined, grams: number): KitchenStep => [
  hours,
  'meal-eaten',
  { items: [{ source: 'batch', batch: 'b1', grams, ...(portion !== undefined && { portion }) }] },
];

function at(hours: number, ...steps: readonly KitchenStep[]) {
  const ledger = kitchenJournal(...steps);
  const catalogue = createCatalogue(ledger);
  return { ledger, catalogue, stock: stockAt(ledger, catalogue, hour(hours)) };
}

const containers = (hours: number, ...steps: readonly KitchenStep[]) =>
  at(hours, ...steps).stock.batches.flatMap((batch) =>
    batch.containers.map(({ portion, grams }) => [portion, grams]),
  );
const foods = (hours: number, ...steps: readonly KitchenStep[]) =>
  at(hours, ...steps).stock.foods.map(({ food, place, grams }) => [food, place, grams]);

describe('a cooked batch', () => {
  it('[BAT-60] stands in the pan, then in numbered portions; the rest stays in the pan', () => {
    expect(containers(0.2, cook)).toEqual([[0, 522]]);
    expect(containers(1, cook, packThree)).toEqual([
      [0, 72],
      [1, 150],
      [2, 150],
      [3, 150],
    ]);
  });

  it('[BAT-60] a second packing numbers on', () => {
    const more: KitchenStep = [2, 'batch-portioned', { batch: 'b1', portionsG: [72], place: 'freezer' }];
    expect(containers(3, cook, packThree, more).map(([portion]) => portion)).toEqual([1, 2, 3, 4]);
  });

  it('[BAT-61] eating lowers the portion named, part of it, or the pan; without a name the pan first, then the portions', () => {
    expect(containers(5, cook, packThree, eat(4, 2, 100))).toEqual([
      [0, 72],
      [1, 150],
      [2, 50],
      [3, 150],
    ]);
    expect(containers(5, cook, packThree, eat(4, undefined, 100))).toEqual([
      [1, 122],
      [2, 150],
      [3, 150],
    ]);
  });

  it('[BAT-65] eating more than there is is noted with its entry, and stock never falls below nothing', () => {
    const { stock } = at(5, cook, packThree, eat(4, 1, 180));
    expect(stock.batches[0]?.containers.map(({ portion }) => portion)).toEqual([0, 2, 3]);
    expect(stock.notes.map(({ code, message }) => [code, message])).toEqual([
      [
        'kitchen/more-eaten-than-counted',
        '30 g more of "beef and onion" were taken from portion 1 than was left.',
      ],
    ]);
  });

  it('[BAT-65] packing more than the pan holds is noted', () => {
    const { stock } = at(5, cook, [
      1,
      'batch-portioned',
      { batch: 'b1', portionsG: [300, 300], place: 'fridge' },
    ]);
    expect(stock.notes[0]?.message).toBe(
      '600 g of "beef and onion" were packed, 78 g more than was in the pan.',
    );
  });

  it('[BAT-23] weighed again near the computed weight: water has left, the nutrients stay', () => {
    const { stock, catalogue } = at(20, cook, packThree, [
      10,
      'batch-reweighed',
      { batch: 'b1', portion: 1, leftG: 141 },
    ]);
    const portion = stock.batches[0]?.containers.find((one) => one.portion === 1);
    expect(portion).toMatchObject({ grams: 141, strength: 1.06383 });
    expect(141 * (portion?.strength ?? 0)).toBeCloseTo(150, 3);
    expect(catalogue.strength('b1', 1, hour(9))).toBe(1);
    expect(catalogue.strength('b1', 1, hour(10))).toBeCloseTo(150 / 141, 9);
  });

  it('[BAT-23] weighed again far off: food is missing, the strength stays, and it is said', () => {
    const { stock } = at(20, cook, packThree, [
      10,
      'batch-reweighed',
      { batch: 'b1', portion: 1, leftG: 80 },
    ]);
    expect(stock.batches[0]?.containers.find(({ portion }) => portion === 1)).toMatchObject({
      grams: 80,
      strength: 1,
    });
    expect(stock.notes[0]?.code).toBe('kitchen/weighed-otherwise');
  });

  it('[BAT-33] a frozen portion keeps; thawed, its days go on; the rest of the batch goes out meanwhile', () => {
    const freeze: KitchenStep = [24, 'portion-moved', { batch: 'b1', portion: 3, to: 'freezer' }];
    const thaw: KitchenStep = [480, 'portion-moved', { batch: 'b1', portion: 3, to: 'fridge' }];
    const states = (hours: number) =>
      at(hours, cook, packThree, freeze, thaw).stock.batches[0]?.containers.map(
        ({ portion, reading }) => `${portion} ${reading.state}`,
      );
    expect(states(95)).toEqual(['0 use soon', '1 use soon', '2 use soon', '3 frozen']);
    expect(states(490)).toEqual(['0 out', '1 out', '2 out', '3 fresh']);
    expect(states(552)).toContain('3 out');
  });

  it('[BAT-34] minutes out of the fridge add up on the portion that was out', () => {
    const out = (hours: number): KitchenStep => [
      hours,
      'portion-moved',
      { batch: 'b1', portion: 1, to: 'fridge', minutesOut: 70 },
    ];
    const { stock } = at(30, cook, packThree, out(10), out(20));
    const found = stock.batches[0]?.containers.find(({ portion }) => portion === 1)?.reading;
    expect(found).toMatchObject({ state: 'out', reason: 'minutes out', minutesOut: 140 });
  });

  it('[BAT-35] what is out is never offered, what is frozen only as frozen', () => {
    const freeze: KitchenStep = [24, 'portion-moved', { batch: 'b1', portion: 3, to: 'freezer' }];
    const offered = (hours: number) =>
      availableFoods(at(hours, cook, packThree, freeze).stock).get('batch:b1');
    expect(offered(25)).toEqual({
      readyG: 372,
      frozenG: 150,
      portions: [
        { portion: 1, grams: 150 },
        { portion: 2, grams: 150 },
      ],
    });
    expect(offered(97)).toEqual({ readyG: 0, frozenG: 150, portions: [] });
  });

  it('[BAT-66] thrown away is gone', () => {
    const bin: KitchenStep = [3, 'portion-moved', { batch: 'b1', to: 'bin' }];
    expect(containers(4, cook, packThree, bin).map(([portion]) => portion)).toEqual([1, 2, 3]);
  });

  it('[BAT-36] the label of a container says what, how much, what it holds, when cooked, and until when', () => {
    const { stock } = at(1, cook, packThree);
    const label = containerLabel(stock, 'b1', 2, 60);
    expect(label.ok && label.value).toMatchObject({
      name: 'beef and onion',
      portion: 2,
      grams: 150,
      cookedAt: '2027-03-07T19:00:00+01:00',
      useBy: '2027-03-11T19:00:00+01:00',
      state: 'fresh',
      raw: [
        { name: 'minced beef 90/10, raw', grams: 195.4 },
        { name: 'onion, raw', grams: 43.1 },
      ],
    });
    expect(label.ok && label.value.nutrients.slice(0, 2)).toEqual([
      { nutrient: 'energyKcal', label: 'energy', unit: 'kcal', amount: 361, atLeast: false },
      { nutrient: 'proteinG', label: 'protein', unit: 'g', amount: 39.6, atLeast: false },
    ]);
    expect(label.ok && label.value.hints.join(' ')).toContain('73.9 °C');
    const missing = containerLabel(stock, 'b1', 9, 0);
    expect(missing.ok ? undefined : missing.problem.code).toBe('kitchen/no-such-portion');
  });

  it('[BAT-31] rice in the pan makes it a day; the other rule is a choice', () => {
    const withRice: KitchenStep = [
      0,
      'batch-cooked',
      { ...pan, ingredients: [...pan.ingredients, { food: RICE, rawG: 100 }] },
    ];
    const useBy = (...more: readonly KitchenStep[]) =>
      at(1, withRice, ...more).stock.batches[0]?.containers[0]?.reading.useByMs;
    expect(useBy()).toBe(hour(24));
    expect(useBy([0, 'rice-rule-chosen', { rule: 'general' }])).toBe(hour(96));
  });
});

describe('foods in stock', () => {
  const bought = (hours: number, grams: number, more: Partial<DataOf<'stock-bought'>> = {}): KitchenStep => [
    hours,
    'stock-bought',
    { food: BEEF, grams, place: 'fridge', ...more },
  ];

  it('[BAT-62] cooking moves raw to cooked, oldest first', () => {
    expect(foods(1, bought(-20, 400), bought(-2, 500), cook)).toEqual([[BEEF, 'fridge', 220]]);
    const lots = at(1, bought(-20, 400), bought(-2, 500), cook).stock.foods;
    expect(lots[0]?.cameAtMs).toBe(hour(-2));
    expect(foods(1, bought(-2, 900), [0, 'batch-cooked', { ...pan, fromStock: false }])).toEqual([
      [BEEF, 'fridge', 900],
    ]);
  });

  it('[BAT-63] counting corrects: less takes the oldest off, more takes the date of the oldest there', () => {
    const counted = (grams: number): KitchenStep => [
      0,
      'stock-counted',
      { food: BEEF, grams, place: 'fridge' },
    ];
    expect(foods(1, bought(-20, 400), bought(-2, 500), counted(450))).toEqual([[BEEF, 'fridge', 450]]);
    const more = at(1, bought(-20, 400), counted(700)).stock.foods[0];
    expect([more?.grams, more?.cameAtMs]).toEqual([700, hour(-20)]);
    expect(foods(1, counted(300))).toEqual([[BEEF, 'fridge', 300]]);
  });

  it('[BAT-64] "ran out" is a count of nothing; eating on is noted, buying starts anew', () => {
    const none: KitchenStep = [0, 'stock-counted', { food: RICE, grams: 0, place: 'cupboard' }];
    const eaten: KitchenStep = [1, 'meal-eaten', { items: [{ source: 'food', food: RICE, grams: 80 }] }];
    const { stock } = at(
      2,
      [-5, 'stock-bought', { food: RICE, grams: 1000, place: 'cupboard' }],
      none,
      eaten,
    );
    expect(stock.foods).toEqual([]);
    expect(stock.notes[0]?.message).toBe(
      '80 g more white rice, long grain, enriched, dry were taken than was counted.',
    );
  });

  it('[BAT-65] a note stands until the next count, and no longer than a week', () => {
    const noted: KitchenStep[] = [
      [-5, 'stock-bought', { food: RICE, grams: 50, place: 'cupboard' }],
      [1, 'meal-eaten', { items: [{ source: 'food', food: RICE, grams: 80 }] }],
    ];
    const counted: KitchenStep = [3, 'stock-counted', { food: RICE, grams: 500, place: 'cupboard' }];
    expect(at(2, ...noted, counted).stock.notes).toHaveLength(1);
    expect(at(4, ...noted, counted).stock.notes).toEqual([]);
    expect(at(170, ...noted).stock.notes).toEqual([]);
  });

  it('[BAT-61] eating a food that was never counted is no matter', () => {
    const { stock } = at(2, [1, 'meal-eaten', { items: [{ source: 'food', food: RICE, grams: 80 }] }]);
    expect([stock.foods, stock.notes]).toEqual([[], []]);
  });

  it('[BAT-32] raw mince keeps two days; a date on the package stands before it', () => {
    const reading = (hours: number, step: KitchenStep) => at(hours, step).stock.foods[0]?.reading;
    expect(reading(1, bought(0, 500))?.useByMs).toBe(hour(48));
    expect(reading(47, bought(0, 500))?.state).toBe('use soon');
    expect(reading(49, bought(0, 500))?.state).toBe('out');
    // Until the end of 12 March, UTC.
    expect(reading(49, bought(0, 500, { useBy: '2027-03-12' }))).toMatchObject({
      state: 'fresh',
      useByMs: hour(126),
    });
  });

  it('[BAT-33] frozen raw food keeps; part of it can be frozen', () => {
    const freeze: KitchenStep = [1, 'stock-moved', { food: BEEF, grams: 300, from: 'fridge', to: 'freezer' }];
    const { stock } = at(60, bought(0, 500), freeze);
    expect(stock.foods.map(({ place, grams, reading }) => [place, grams, reading.state])).toEqual([
      ['fridge', 200, 'out'],
      ['freezer', 300, 'frozen'],
    ]);
    expect(foods(60, bought(0, 500), freeze, [2, 'stock-binned', { food: BEEF, grams: 200 }])).toEqual([
      [BEEF, 'freezer', 300],
    ]);
  });

  it('[BAT-60] a moment before sees nothing of what came after', () => {
    expect(foods(-1, bought(0, 500))).toEqual([]);
    expect(containers(-1, cook)).toEqual([]);
  });

  it('[BAT-67] an impossible batch of another device is a problem with its entry, the rest stands', () => {
    const { catalogue, stock } = at(
      1,
      bought(-1, 500),
      [0, 'batch-cooked', { ...pan, batch: 'b2', cookedGrossG: 300 }],
      cook,
    );
    expect(catalogue.problems.map(({ code }) => code)).toEqual(['kitchen/container-too-heavy']);
    expect(stock.batches.map(({ batch }) => batch.batch)).toEqual(['b1']);
  });
});
