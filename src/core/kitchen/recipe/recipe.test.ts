import { describe, expect, it } from 'vitest';
import { hour, kitchenJournal, type KitchenStep } from '../../../../test/journal/kitchen-journal.ts';
import type { DataOf } from '../../journal/kinds/registry.ts';
import { createCatalogue } from '../catalogue.ts';
import { nutrientsOfItem } from '../item-nutrients.ts';
import { recipeNutrients } from '../recipe-food.ts';
import { stockAt } from '../stock.ts';
import { recipeCard } from './recipe-card.ts';
import { gramsHolding, scaleRecipe } from './scale-recipe.ts';

const OATS = 'usda-sr28:08120';
const BANANA = 'usda-sr28:09040';

const powder: DataOf<'food-defined'> = {
  food: 'powder',
  name: 'Protein powder',
  state: 'dry',
  per100g: { energyKcal: 400, proteinG: 80, fatG: 5, carbohydrateG: 10 },
  label: {
    rules: 'us',
    servingG: 30,
    nutrients: { energyKcal: 120, proteinG: 24, fatG: 1.5, carbohydrateG: 3 },
  },
  basis: 'label',
};
const tray: DataOf<'recipe-defined'> = {
  recipe: 'tray',
  name: 'Oat tray',
  ingredients: [
    { food: OATS, rawG: 300 },
    { food: BANANA, rawG: 236 },
    { food: 'powder', rawG: 120 },
  ],
  steps: ['Mash.', 'Bake.'],
  yields: { slices: 10 },
};
const known: KitchenStep[] = [
  [-2, 'food-defined', powder],
  [-1, 'recipe-defined', tray],
];
const ledger = kitchenJournal(...known);
const catalogue = createCatalogue(ledger);
const foodOf = (id: string) => catalogue.food(id);

describe('a recipe by the slice', () => {
  it('[BAT-57] is eaten without a cooked weight: its share of what went in raw', () => {
    // By hand from the food table: oats 13.15 and banana 1.09 g of protein in 100 g, the label's 80.
    const whole = 3 * 13.15 + 2.36 * 1.09 + 1.2 * 80;
    const eaten = nutrientsOfItem(catalogue, { source: 'slices', recipe: 'tray', slices: 2.5 });
    expect(eaten.ok && eaten.value.nutrients.proteinG).toBeCloseTo(whole / 4, 6);
    const weighed = nutrientsOfItem(catalogue, { source: 'recipe', recipe: 'tray', grams: 100 });
    expect(!weighed.ok && weighed.problem.code).toBe('kitchen/recipe-not-weighed');
  });

  it('[BAT-50] carries what the label rounds: half a gram in 30 on either side, and the serving half a gram', () => {
    const nutrients = recipeNutrients(tray, foodOf);
    if (!nutrients.ok) throw new Error(nutrients.problem.message);
    // 24 g printed is 23.5 to 24.5; in 29.5 to 30.5 g. Rectangular: half the width over root three (JCGM 100, 4.3.7).
    const per100 = ((24.5 / 29.5 - 23.5 / 30.5) / 2 / Math.sqrt(3)) * 100;
    expect(nutrients.value.total.spread.proteinG).toBeCloseTo(1.2 * per100, 6);
    expect(nutrients.value.perSlice?.spread.proteinG).toBeCloseTo(0.12 * per100, 6);
  });

  it('[BAT-68] takes its raw share off the stock, or comes off the pan that was cooked by it', () => {
    const eat: KitchenStep = [3, 'meal-eaten', { items: [{ source: 'slices', recipe: 'tray', slices: 5 }] }];
    const bought: KitchenStep = [0, 'stock-bought', { food: OATS, grams: 1000, place: 'cupboard' }];
    const raw = stockOf(...known, bought, eat);
    expect(raw.foods.find(({ food }) => food === OATS)?.grams).toBe(850);
    const cooked: KitchenStep = [
      1,
      'batch-cooked',
      {
        batch: 'b',
        name: 'Oat tray',
        ingredients: tray.ingredients,
        containerG: 0,
        cookedGrossG: 600,
        fromStock: true,
        recipe: 'tray',
      },
    ];
    const pan = stockOf(...known, bought, cooked, eat);
    expect(pan.foods.find(({ food }) => food === OATS)?.grams).toBe(700);
    expect(pan.batches[0]?.containers.map(({ grams }) => grams)).toEqual([300]);
    expect(pan.notes).toEqual([]);
  });
});

function stockOf(...steps: readonly KitchenStep[]) {
  const open = kitchenJournal(...steps);
  return stockAt(open, createCatalogue(open), hour(4));
}

describe('a recipe larger or smaller', () => {
  it('[BAT-53] by slices: every weight by one factor, a slice as large as before', () => {
    const scaled = scaleRecipe(tray, { by: 'slices', slices: 25 }, foodOf);
    if (!scaled.ok) throw new Error(scaled.problem.message);
    expect(scaled.value.recipe.ingredients.map(({ rawG }) => rawG)).toEqual([750, 590, 300]);
    expect(scaled.value.recipe.yields.slices).toBe(25);
    expect(scaled.value.perSlice.nutrients.energyKcal).toBeCloseTo((3 * 379 + 2.36 * 89 + 1.2 * 400) / 10, 6);
  });

  it('[BAT-53] by a macro: each slice holds what was asked, to the rounding of the weights', () => {
    const scaled = scaleRecipe(tray, { by: 'macro', macro: 'proteinG', perSlice: 25 }, foodOf);
    if (!scaled.ok) throw new Error(scaled.problem.message);
    expect(scaled.value.perSlice.nutrients.proteinG).toBeCloseTo(25, 0);
    expect(Math.abs(scaled.value.perSlice.nutrients.proteinG - 25)).toBeLessThan(0.1);
    expect(gramsHolding(undefined, 'proteinG', 30)).toBeUndefined();
  });

  it('[BAT-53] what cannot be is refused with its field and a remedy', () => {
    const none = scaleRecipe(tray, { by: 'slices', slices: 0 }, foodOf);
    expect(!none.ok && none.problem.path).toBe('slices');
    const unsliced = scaleRecipe({ ...tray, yields: { cookedG: 500 } }, { by: 'slices', slices: 4 }, foodOf);
    expect(!unsliced.ok && unsliced.problem.code).toBe('kitchen/recipe-not-sliced');
  });
});

describe('the card of a recipe', () => {
  it('[BAT-54] says the dish with what the labels leave open, and nothing of the person', () => {
    const card = recipeCard(tray, foodOf);
    if (!card.ok) throw new Error(card.problem.message);
    expect(card.value.perPortion.find(({ name }) => name === 'protein')?.value).toMatch(/^13\.8 ± 0\.\d g$/);
    expect(card.value.perPortion.find(({ name }) => name === 'fibre')?.value).toMatch(/^at least /);
    expect(Object.keys(card.value).sort()).toEqual([
      'ingredients',
      'makes',
      'perPortion',
      'portion',
      'steps',
      'title',
    ]);
  });
});
