import type { DataOf } from '#core/journal/kinds/registry.ts';
import { foods } from './pantry.ts';
import type { Scribe } from './scribe.ts';

type Recipe = DataOf<'recipe-defined'>;

/** What is cooked in Hallmouth; cooked weights where the pan was ever on the scale. */
export const recipes: readonly Recipe[] = [
  {
    recipe: 'turkey-courgette-pan',
    name: 'Turkey and courgette pan',
    ingredients: [
      { food: foods.turkeyMince, rawG: 900 },
      { food: foods.courgette, rawG: 300 },
      { food: foods.tomatoPaste, rawG: 80 },
      { food: foods.oliveOil, rawG: 12 },
    ],
    steps: [
      'Brown the mince in the oil over high heat, breaking it up.',
      'Add the courgette in half moons and the tomato paste.',
      'Cover for ten minutes, then let the liquid boil off.',
    ],
    yields: { cookedG: 804, slices: 6 },
  },
  {
    recipe: 'chicken-pepper-tray',
    name: 'Chicken and pepper rice',
    ingredients: [
      { food: 'usda-sr28:05062', rawG: 800 },
      { food: foods.dryRice, rawG: 300 },
      { food: 'usda-sr28:11821', rawG: 400 },
      { food: 'usda-sr28:11282', rawG: 150 },
      { food: foods.oliveOil, rawG: 15 },
    ],
    steps: [
      'Roast chicken, peppers and onion on a tray at 210 °C until the chicken reads 74 °C.',
      'Boil the rice, drain it, fold it in.',
      'Spread it out to cool within the hour; into the fridge in boxes.',
    ],
    yields: { cookedG: 1890, slices: 5 },
  },
  {
    recipe: 'lentil-beef-pot',
    name: 'Lentil and beef pot',
    ingredients: [
      { food: 'usda-sr28:23557', rawG: 500 },
      { food: 'usda-sr28:16069', rawG: 300 },
      { food: 'usda-sr28:11124', rawG: 300 },
      { food: 'usda-sr28:11282', rawG: 200 },
      { food: foods.tomatoPaste, rawG: 120 },
    ],
    steps: [
      'Brown the beef, then soften onion and carrot beside it.',
      'Add lentils, tomato paste and water to cover; simmer for 35 minutes.',
    ],
    yields: { cookedG: 1760, slices: 5 },
  },
  {
    recipe: 'cod-potato-pot',
    name: 'Harbour pot of cod and potato',
    ingredients: [
      { food: 'usda-sr28:15015', rawG: 800 },
      { food: foods.potatoRaw, rawG: 1000 },
      { food: foods.spinach, rawG: 200 },
      { food: foods.oliveOil, rawG: 20 },
    ],
    steps: [
      'Simmer the potatoes in slices until nearly soft.',
      'Lay the cod and the spinach on top, cover, ten minutes.',
    ],
    yields: { cookedG: 1780, slices: 4 },
  },
  {
    recipe: 'oat-banana-tray',
    name: 'Oat and banana tray',
    ingredients: [
      { food: foods.oats, rawG: 360 },
      { food: foods.banana, rawG: 354 },
      { food: foods.eggWhite, rawG: 400 },
      { food: foods.proteinPowder, rawG: 120 },
      { food: foods.blueberries, rawG: 200 },
    ],
    steps: [
      'Mash the bananas, stir in everything else.',
      'Bake in a lined tray at 180 °C for 30 minutes.',
      'Cut into twelve.',
    ],
    // Never on the scale once baked: it is eaten by the slice.
    yields: { slices: 12 },
  },
];

export function writeRecipes(scribe: Scribe, day: string): void {
  for (const [place, recipe] of recipes.entries()) {
    scribe.write(day, `06:${30 + place}`, 'recipe-defined', recipe);
  }
}
