import type { Scribe } from './scribe.ts';

/** Foods of the story by what they are called in it. */
export const foods = {
  turkeyMince: 'usda-sr28:05665',
  courgette: 'usda-sr28:11477',
  tomatoPaste: 'usda-sr28:11546',
  oliveOil: 'usda-sr28:04053',
  dryRice: 'usda-sr28:20044',
  oats: 'usda-sr28:08120',
  eggWhite: 'usda-sr28:01172',
  egg: 'usda-sr28:01123',
  cottageCheese: 'usda-sr28:01016',
  blueberries: 'usda-sr28:09054',
  banana: 'usda-sr28:09040',
  codCooked: 'usda-sr28:15019',
  potatoRaw: 'usda-sr28:11352',
  broccoli: 'usda-sr28:11092',
  spinach: 'usda-sr28:11463',
  riceCakes: 'usda-sr28:19816',
  peanutButter: 'usda-sr28:16098',
  proteinPowder: 'quay-protein-powder',
} as const;

/** Own food, pans and boxes: entered on the first day. */
export function writePantry(scribe: Scribe, day: string): void {
  scribe.write(day, '06:20', 'food-defined', {
    food: foods.proteinPowder,
    name: 'Protein powder, vanilla',
    state: 'dry',
    per100g: { energyKcal: 383.3, proteinG: 76.7, fatG: 5, carbohydrateG: 10, fibreG: 3.3, sodiumMg: 400 },
    unit: { name: 'scoop', grams: 30 },
    label: {
      rules: 'us',
      servingG: 30,
      nutrients: { energyKcal: 120, proteinG: 23, fatG: 1.5, carbohydrateG: 3, fibreG: 1, sodiumMg: 120 },
    },
    basis: 'label',
  });
  scribe.write(day, '06:22', 'container-weighed', { container: 'wide-pan', name: 'Wide pan', emptyG: 1184 });
  scribe.write(day, '06:23', 'container-weighed', { container: 'rice-pot', name: 'Rice pot', emptyG: 872 });
  for (const [food, least, most] of [
    [foods.oats, 30, 90],
    [foods.eggWhite, 100, 300],
    [foods.cottageCheese, 100, 300],
    [foods.blueberries, 50, 200],
  ] as const) {
    scribe.write(day, '06:24', 'food-preferred', { food, favourite: true, minG: least, maxG: most });
  }
  scribe.write(day, '06:25', 'food-preferred', {
    food: foods.oliveOil,
    favourite: false,
    minG: 3,
    maxG: 15,
    planFreely: true,
  });
}

/** Puts away a shop: what the next days are cooked from. */
export function writeShop(scribe: Scribe, day: string, clock: string): void {
  for (const [food, grams, place] of [
    [foods.turkeyMince, 900, 'fridge'],
    [foods.courgette, 300, 'fridge'],
    [foods.tomatoPaste, 80, 'cupboard'],
    [foods.dryRice, 300, 'cupboard'],
  ] as const) {
    scribe.write(day, clock, 'stock-bought', { food, grams, place });
  }
}

/** The cupboard and fridge as counted on the story's last morning. */
export function writeCount(scribe: Scribe, day: string, clock: string): void {
  for (const [food, grams, place] of [
    [foods.oats, 640, 'cupboard'],
    [foods.dryRice, 850, 'cupboard'],
    [foods.riceCakes, 108, 'cupboard'],
    [foods.peanutButter, 210, 'cupboard'],
    [foods.proteinPowder, 420, 'cupboard'],
    [foods.eggWhite, 500, 'fridge'],
    [foods.egg, 300, 'fridge'],
    [foods.cottageCheese, 600, 'fridge'],
    [foods.blueberries, 450, 'freezer'],
    [foods.banana, 354, 'cupboard'],
    [foods.broccoli, 400, 'freezer'],
    [foods.spinach, 300, 'freezer'],
    [foods.potatoRaw, 900, 'cupboard'],
  ] as const) {
    scribe.write(day, clock, 'stock-counted', { food, grams, place });
  }
}
