import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hour, kitchenJournal, type KitchenStep } from '../../../test/journal/kitchen-journal.ts';
import { availableFoods } from './available.ts';
import { createCatalogue } from './catalogue.ts';
import { nutrientsOfItem } from './item-nutrients.ts';
import { stockAt, type Stock } from './stock.ts';

const runs = { seed: 20_270_304, numRuns: 150 };

const foods = ['usda-sr28:23562', 'usda-sr28:20044', 'usda-sr28:01123', 'usda-sr28:11090'];
const places = fc.constantFrom('fridge' as const, 'freezer' as const, 'cupboard' as const, 'room' as const);
const grams = fc.integer({ min: 1, max: 900 });
const food = fc.constantFrom(...foods);
const batch = fc.constantFrom('b1', 'b2');
const portion = fc.option(fc.integer({ min: 1, max: 6 }), { nil: undefined });

const happening: fc.Arbitrary<(hours: number) => KitchenStep> = fc.oneof(
  fc.tuple(food, grams, places).map(
    ([id, weight, place]) =>
      (hours: number): KitchenStep => [hours, 'stock-bought', { food: id, grams: weight, place }],
  ),
  fc.tuple(food, fc.integer({ min: 0, max: 900 }), places).map(
    ([id, weight, place]) =>
      (hours: number): KitchenStep => [hours, 'stock-counted', { food: id, grams: weight, place }],
  ),
  fc.tuple(food, grams, places, places).map(
    ([id, weight, from, to]) =>
      (hours: number): KitchenStep => [hours, 'stock-moved', { food: id, grams: weight, from, to }],
  ),
  fc.tuple(food, grams).map(
    ([id, weight]) =>
      (hours: number): KitchenStep => [
        hours,
        'meal-eaten',
        { items: [{ source: 'food', food: id, grams: weight }] },
      ],
  ),
  fc.tuple(batch, grams).map(
    ([id, weight]) =>
      (hours: number): KitchenStep => [
        hours,
        'batch-cooked',
        {
          batch: id,
          name: id,
          ingredients: [{ food: 'usda-sr28:23562', rawG: weight + 100 }],
          containerG: 0,
          cookedGrossG: (weight + 100) * 0.7,
          fromStock: true,
        },
      ],
  ),
  fc.tuple(batch, fc.array(fc.integer({ min: 20, max: 200 }), { minLength: 1, maxLength: 4 }), places).map(
    ([id, portionsG, place]) =>
      (hours: number): KitchenStep => [hours, 'batch-portioned', { batch: id, portionsG, place }],
  ),
  fc.tuple(batch, portion, grams).map(
    ([id, which, weight]) =>
      (hours: number): KitchenStep => [
        hours,
        'meal-eaten',
        {
          items: [
            { source: 'batch', batch: id, grams: weight, ...(which !== undefined && { portion: which }) },
          ],
        },
      ],
  ),
  fc
    .tuple(
      batch,
      portion,
      fc.constantFrom('fridge' as const, 'freezer' as const, 'room' as const, 'bin' as const),
    )
    .map(
      ([id, which, to]) =>
        (hours: number): KitchenStep => [
          hours,
          'portion-moved',
          { batch: id, to, ...(which !== undefined && { portion: which }) },
        ],
    ),
  fc.tuple(batch, portion, grams).map(
    ([id, which, leftG]) =>
      (hours: number): KitchenStep => [
        hours,
        'batch-reweighed',
        { batch: id, leftG, ...(which !== undefined && { portion: which }) },
      ],
  ),
);
const story = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 40 }), happening), { maxLength: 30 })
  .map((parts) => {
    let hours = 0;
    return parts.map(([wait, make]) => make((hours += wait / 4)));
  });

function stockOf(steps: readonly KitchenStep[], hours: number): Stock {
  const ledger = kitchenJournal(...steps);
  return stockAt(ledger, createCatalogue(ledger), hour(hours));
}

const gramsOf = (stock: Stock) => [
  ...stock.foods.map((one) => one.grams),
  ...stock.batches.flatMap((one) => one.containers.map((container) => container.grams)),
];
const totalOf = (stock: Stock) => gramsOf(stock).reduce((sum, one) => sum + one, 0);

describe('stock, whatever happens', () => {
  it('[BAT-65] nothing is ever below zero, every figure is finite, and nothing throws', () => {
    fc.assert(
      fc.property(story, fc.integer({ min: 0, max: 400 }), (steps, hours) => {
        for (const one of gramsOf(stockOf(steps, hours))) {
          expect(one).toBeGreaterThan(0);
          expect(Number.isFinite(one)).toBe(true);
        }
      }),
      runs,
    );
  });

  it('[BAT-61] eating never adds to the stock, and takes at most what was eaten', () => {
    fc.assert(
      fc.property(story, food, grams, (steps, id, weight) => {
        const last = 1000;
        const before = stockOf(steps, last);
        const after = stockOf(
          [...steps, [last, 'meal-eaten', { items: [{ source: 'food', food: id, grams: weight }] }]],
          last,
        );
        // Less than half a gram left in a lot is crumbs and is dropped with it.
        expect(totalOf(after)).toBeLessThanOrEqual(totalOf(before) + 0.001);
        expect(totalOf(before) - totalOf(after)).toBeLessThanOrEqual(weight + 0.501);
      }),
      runs,
    );
  });

  it('[BAT-60] lots stand in the order they should be eaten, and eating takes them in that order', () => {
    fc.assert(
      fc.property(story, fc.integer({ min: 0, max: 300 }), (steps, hours) => {
        const { foods: lots, batches } = stockOf(steps, hours);
        const order = (one: Stock['foods'][number]) =>
          one.reading.state === 'frozen'
            ? Number.MAX_VALUE
            : (one.reading.useByMs ?? Number.MAX_SAFE_INTEGER);
        const keys = lots.map(order);
        expect(keys).toEqual([...keys].sort((a, b) => a - b));
        for (const { containers } of batches) {
          const dates = containers.map((one) => one.reading.useByMs ?? Number.MAX_VALUE);
          expect(dates).toEqual([...dates].sort((a, b) => a - b));
        }
      }),
      runs,
    );
  });

  it('[BAT-35] what is out is never offered', () => {
    fc.assert(
      fc.property(story, fc.integer({ min: 0, max: 400 }), (steps, hours) => {
        const stock = stockOf(steps, hours);
        const out = [
          ...stock.foods.map(({ food: id, grams: weight, reading }) => ({
            id,
            weight,
            state: reading.state,
          })),
          ...stock.batches.flatMap(({ batch: { batch: id }, containers }) =>
            containers.map(({ grams: weight, reading }) => ({
              id: `batch:${id}`,
              weight,
              state: reading.state,
            })),
          ),
        ];
        for (const [id, { readyG, frozenG }] of availableFoods(stock)) {
          const safe = out.filter((one) => one.id === id && one.state !== 'out');
          expect(readyG + frozenG).toBeCloseTo(
            safe.reduce((sum, one) => sum + one.weight, 0),
            3,
          );
        }
      }),
      runs,
    );
  });

  it('[BAT-11] what was eaten of a batch and what is left hold what went in, water lost or not', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 50, max: 150 }), { minLength: 1, maxLength: 3 }),
        fc.double({ min: 0.93, max: 1.07, noNaN: true }),
        (portionsG, dried) => {
          const [first = 0] = portionsG;
          const leftG = Math.round(first * dried * 10) / 10;
          const steps: KitchenStep[] = [
            [
              0,
              'batch-cooked',
              {
                batch: 'b',
                name: 'b',
                ingredients: [{ food: 'usda-sr28:23562', rawG: 800 }],
                containerG: 0,
                cookedGrossG: 560,
                fromStock: false,
              },
            ],
            [1, 'batch-portioned', { batch: 'b', portionsG, place: 'fridge' }],
            [5, 'batch-reweighed', { batch: 'b', portion: 1, leftG }],
          ];
          const ledger = kitchenJournal(...steps);
          const catalogue = createCatalogue(ledger);
          const stock = stockAt(ledger, catalogue, hour(6));
          const proteinG = stock.batches
            .flatMap(({ containers }) => containers)
            .map(({ portion: which, grams: weight }) => ({
              source: 'batch' as const,
              batch: 'b',
              grams: weight,
              ...(which > 0 && { portion: which }),
            }))
            .map((item) => nutrientsOfItem(catalogue, item, hour(6)))
            .reduce((sum, item) => sum + (item.ok ? item.value.nutrients.proteinG : Number.NaN), 0);
          expect(proteinG).toBeCloseTo(160, 4);
        },
      ),
      runs,
    );
  });
});
