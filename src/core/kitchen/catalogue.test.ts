import { describe, expect, it } from 'vitest';
import {
  hour,
  kitchenEntries,
  kitchenJournal,
  type KitchenStep,
} from '../../../test/journal/kitchen-journal.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import { createLedger } from '../journal/ledger.ts';
import { amountChoices } from './amount-choices.ts';
import { createCatalogue } from './catalogue.ts';
import { foodIdOf, nutrientsOfItem, nutrientsOfItems, plateItemOf } from './item-nutrients.ts';
import { byStanding, isNear, pickingStandings } from './picking-order.ts';
import { recipeNutrients } from './recipe-food.ts';
import { stockAt } from './stock.ts';
import { weighBatch, type BatchDraft } from './weigh-batch.ts';

const BEEF = 'usda-sr28:23562';
const ONION = 'usda-sr28:11282';
const RICE = 'usda-sr28:20044';
const EGG = 'usda-sr28:01123';

const bar = (energyKcal: number): DataOf<'food-defined'> => ({
  food: 'own:bar',
  name: 'oat bar',
  state: 'as-is',
  per100g: { energyKcal, proteinG: 20, fatG: 10, carbohydrateG: 50 },
  unit: { name: 'bar', grams: 45 },
  label: {
    rules: 'us',
    servingG: 45,
    nutrients: { energyKcal: 170, proteinG: 9, fatG: 4.5, carbohydrateG: 23 },
  },
  basis: 'label',
});

const slices: DataOf<'recipe-defined'> = {
  recipe: 'r1',
  name: 'egg bake',
  ingredients: [
    { food: EGG, rawG: 500 },
    { food: 'own:bar', rawG: 100 },
  ],
  steps: ['Bake.'],
  yields: { cookedG: 540, slices: 6 },
};

describe('the catalogue', () => {
  it('[BAT-51] holds bundled foods, own foods and recipes; batches beside them', () => {
    const catalogue = createCatalogue(
      kitchenJournal([0, 'food-defined', bar(370)], [1, 'recipe-defined', slices]),
    );
    expect(catalogue.foods()).toHaveLength(283);
    expect(catalogue.food('own:bar')).toMatchObject({
      origin: 'own',
      storage: 'condiment',
      serving: { minG: 45, maxG: 270, unitG: 45 },
    });
    expect(catalogue.food('recipe:r1')).toMatchObject({ origin: 'recipe', storage: 'cooked-dish' });
    expect(catalogue.food('no-such-food')).toBeUndefined();
  });

  it('[BAT-52] a new label counts from its day on; a correction of the old entry rewrites it', () => {
    const steps: KitchenStep[] = [
      [0, 'food-defined', bar(370)],
      [48, 'food-defined', bar(400)],
    ];
    const catalogue = createCatalogue(kitchenJournal(...steps));
    const kcalAt = (hours?: number) =>
      catalogue.food('own:bar', hours === undefined ? undefined : hour(hours))?.per100g.nutrients.energyKcal;
    expect([kcalAt(-5), kcalAt(24), kcalAt(48), kcalAt()]).toEqual([370, 370, 400, 400]);
    const entries = kitchenEntries(steps);
    const replaces = entries[0]?.id ?? '';
    const corrected = createCatalogue(
      createLedger(entries.map((entry) => (entry.id === replaces ? entry : { ...entry, replaces }))),
    );
    expect(corrected.food('own:bar', hour(1))?.per100g.nutrients.energyKcal).toBe(400);
  });

  it('[BAT-46] an own food carries what the rounding of its label leaves open', () => {
    const catalogue = createCatalogue(kitchenJournal([0, 'food-defined', bar(370)]));
    const item = nutrientsOfItem(catalogue, { source: 'food', food: 'own:bar', grams: 90 });
    // 8.5 to 9.5 g in 44.5 to 45.5 g: 18.68 to 21.35 per 100 g, half of it over the root of three, for 90 g.
    const half = ((9.5 / 44.5 - 8.5 / 45.5) / 2) * 90;
    expect(item.ok && item.value.spread.proteinG).toBeCloseTo(half / Math.sqrt(3), 6);
    expect(item.ok && item.value.nutrients.proteinG).toBe(18);
  });

  it('[BAT-04] is as this athlete uses it', () => {
    const preferred: KitchenStep = [
      0,
      'food-preferred',
      { food: RICE, favourite: true, minG: 60, maxG: 110, unit: { name: 'scoop', grams: 30 } },
    ];
    const food = createCatalogue(kitchenJournal(preferred)).food(RICE);
    expect(food?.serving).toEqual({ minG: 60, maxG: 110, unitG: 30 });
    expect(food?.measures[0]).toEqual({ amount: 1, unit: 'scoop', grams: 30 });
  });

  /** Weights of source usda-sr28: a cup of whole milk 244 g, a tablespoon of olive oil 13.5 g, a large egg 50 g. */
  it('[BAT-01] amounts may be said in household measures, and in millilitres where the food has a plain volume', () => {
    const catalogue = createCatalogue(kitchenJournal());
    const choices = (ndb: string) => {
      const food = catalogue.food(`usda-sr28:${ndb}`);
      return new Map((food ? amountChoices(food) : []).map(({ name, grams }) => [name, grams]));
    };
    expect(choices('01077').get('cup')).toBe(244);
    expect(choices('01077').get('100 mL')).toBeCloseTo(103.1, 1);
    expect(choices('01123').get('large')).toBe(50);
    expect(choices('15151').get('large')).toBe(5.5);
    expect(choices('23562').has('100 mL')).toBe(false);
  });

  it('[BAT-50] a recipe adds up from its raw weights, per slice and per 100 g', () => {
    const catalogue = createCatalogue(kitchenJournal([0, 'food-defined', bar(370)]));
    const nutrients = recipeNutrients(slices, (id) => catalogue.food(id));
    expect(nutrients.ok && nutrients.value.total.nutrients.proteinG).toBeCloseTo(82.8, 9);
    expect(nutrients.ok && nutrients.value.perSlice?.nutrients.proteinG).toBeCloseTo(13.8, 9);
    expect(nutrients.ok && nutrients.value.per100g?.nutrients.proteinG).toBeCloseTo(15.333, 3);
    expect(nutrients.ok && nutrients.value.sliceG).toBe(90);
    expect(nutrients.ok && nutrients.value.total.atLeast).toContain('fibreG');
    const unknown = recipeNutrients(slices, () => undefined);
    expect(unknown.ok ? undefined : unknown.problem.path).toBe('ingredients.0.food');
  });
});

describe('what is on a plate', () => {
  const journal = kitchenJournal(
    [0, 'food-defined', bar(370)],
    [1, 'recipe-defined', slices],
    [1, 'recipe-defined', { ...slices, recipe: 'r2', name: 'not weighed', yields: { slices: 4 } }],
    [
      2,
      'batch-cooked',
      {
        batch: 'b1',
        name: 'beef and onion',
        ingredients: [
          { food: BEEF, rawG: 680 },
          { food: ONION, rawG: 150 },
        ],
        containerG: 480,
        cookedGrossG: 1002,
        fromStock: false,
      },
    ],
    [
      3,
      'batch-cooked',
      {
        batch: 'b2',
        name: 'beef bake',
        ingredients: [
          { food: 'batch:b1', rawG: 261 },
          { food: EGG, rawG: 100 },
        ],
        containerG: 0,
        cookedGrossG: 340,
        fromStock: true,
      },
    ],
  );
  const catalogue = createCatalogue(journal);
  const kcal = (item: Parameters<typeof nutrientsOfItem>[1]) => {
    const found = nutrientsOfItem(catalogue, item);
    return found.ok ? found.value.nutrients.energyKcal : found.problem.code;
  };

  it('[BAT-51] resolves foods, batches, recipes and guesses to nutrients', () => {
    expect(kcal({ source: 'food', food: EGG, grams: 50 })).toBe(71.5);
    expect(kcal({ source: 'batch', batch: 'b1', portion: 1, grams: 174 })).toBeCloseTo(418.9, 1);
    expect(kcal({ source: 'recipe', recipe: 'r1', grams: 90 })).toBeCloseTo((715 + 370) / 6, 6);
    const nutrients = { energyKcal: 800, proteinG: 40, fatG: 40, carbohydrateG: 70 };
    expect(kcal({ source: 'guess', name: 'set menu', nutrients, spreadPercent: 25 })).toBe(800);
  });

  it('[BAT-51] a batch can go into another; half of the first pan is in the second', () => {
    expect(kcal({ source: 'batch', batch: 'b2', grams: 340 })).toBeCloseTo((1256.8 / 522) * 261 + 143, 1);
    expect(
      stockAt(journal, catalogue, hour(4)).batches.map(({ batch, containers }) => [
        batch.batch,
        containers[0]?.grams,
      ]),
    ).toEqual([
      ['b1', 261],
      ['b2', 340],
    ]);
  });

  it('[BAT-51] a guess may be off by its spread either way', () => {
    const nutrients = { energyKcal: 800, proteinG: 40, fatG: 40, carbohydrateG: 70 };
    const guess = nutrientsOfItem(catalogue, { source: 'guess', name: 'x', nutrients, spreadPercent: 30 });
    expect(guess.ok && guess.value.spread.proteinG).toBeCloseTo(12 / Math.sqrt(3), 9);
  });

  it('[BAT-51] what is not known is a problem beside the sum, which still counts the rest', () => {
    const { total, parts } = nutrientsOfItems(catalogue, [
      { source: 'food', food: 'gone', grams: 50 },
      { source: 'recipe', recipe: 'r2', grams: 50 },
      { source: 'food', food: EGG, grams: 50 },
    ]);
    expect(total.nutrients.energyKcal).toBe(71.5);
    expect(parts.map((part) => (part.ok ? 'known' : part.problem.code))).toEqual([
      'kitchen/unknown-food',
      'kitchen/recipe-not-weighed',
      'known',
    ]);
  });

  it('[BAT-51] catalogue ids and plate items are two ways to say one thing', () => {
    for (const id of [EGG, 'batch:b1', 'recipe:r1', 'own:bar'])
      expect(foodIdOf(plateItemOf(id, 10))).toBe(id);
    expect(plateItemOf('batch:b1', 10, 2)).toEqual({ source: 'batch', batch: 'b1', grams: 10, portion: 2 });
  });
});

describe('picking a food', () => {
  it('[BAT-07] in stock and favourite first, then in stock, favourites, eaten of late', () => {
    const journal = kitchenJournal(
      [0, 'food-preferred', { food: RICE, favourite: true }],
      [0, 'food-preferred', { food: EGG, favourite: true }],
      [0, 'stock-bought', { food: RICE, grams: 1000, place: 'cupboard' }],
      [0, 'stock-bought', { food: BEEF, grams: 1000, place: 'freezer' }],
      [1, 'meal-eaten', { items: [{ source: 'food', food: ONION, grams: 50 }] }],
    );
    const catalogue = createCatalogue(journal);
    const standings = pickingStandings(journal, catalogue, stockAt(journal, catalogue, hour(10)));
    const order = [...standings].sort(([, a], [, b]) => byStanding(a, b)).map(([id]) => id);
    expect(order).toEqual([RICE, BEEF, EGG, ONION]);
    expect(standings.get(ONION)).toEqual({ tier: 3, times: 1 });
  });

  it('[RUN-36] what was never bought, liked or eaten is offered only once it is typed', () => {
    const journal = kitchenJournal([0, 'stock-bought', { food: RICE, grams: 1000, place: 'cupboard' }]);
    const catalogue = createCatalogue(journal);
    const standings = pickingStandings(journal, catalogue, stockAt(journal, catalogue, hour(10)));
    expect([RICE, BEEF].map((food) => isNear(standings.get(food)))).toEqual([true, false]);
  });
});

describe('a pan being entered', () => {
  const draft: BatchDraft = {
    ingredients: [
      { food: BEEF, rawG: 680, form: 'beef-mince-under-12-crumbles' },
      { food: ONION, rawG: 150 },
    ],
    containerG: 480,
    cookedGrossG: 1002,
    cookedAtMs: hour(0),
    portions: { as: 'equal', count: 3 },
    scaleStepG: 1,
  };
  const weigh = (change: Partial<BatchDraft>) =>
    weighBatch(createCatalogue(kitchenJournal()), { ...draft, ...change });

  it('[BAT-10] answers portions, raw weights behind them, and how long it keeps', () => {
    const batch = weigh({});
    expect(batch.ok && batch.value.portions.map(({ grams, raw }) => [grams, raw[0]?.grams])).toEqual([
      [174, expect.closeTo(226.67, 2)],
      [174, expect.closeTo(226.67, 2)],
      [174, expect.closeTo(226.67, 2)],
    ]);
    expect(batch.ok && batch.value.useByMs).toBe(hour(96));
    expect(batch.ok && batch.value.why.at(-1)).toBe(
      'It keeps 4 days in the fridge; time in the freezer does not count.',
    );
  });

  it('[BAT-21] some may be packed and the rest stay in the pan, or all of it', () => {
    const some = weigh({ portions: { as: 'given', weightsG: [200] } });
    const none = weigh({ portions: { as: 'stay' } });
    expect([some.ok && some.value.panG, none.ok && none.value.panG]).toEqual([322, 522]);
  });

  it('[BAT-12] refuses unknown foods and forms by name', () => {
    const codes = [
      weigh({ ingredients: [{ food: 'nothing', rawG: 1 }] }),
      weigh({ ingredients: [{ food: BEEF, rawG: 680, form: 'charred' }] }),
    ].map((found) => (found.ok ? '' : `${found.problem.code} ${found.problem.path}`));
    expect(codes).toEqual([
      'kitchen/unknown-food ingredients.0.food',
      'kitchen/unknown-form ingredients.0.form',
    ]);
  });
});
