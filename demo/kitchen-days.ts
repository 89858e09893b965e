import type { PlateItem } from '#core/journal/kinds/plate-item.ts';
import { foods, writeShop } from './pantry.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';

/** A pan every third evening: six portions, two a day. */
const PAN_EVERY = 3;
const PORTION_G = 134;

/** From this day on meals are logged one by one; before, each day's intake as a total. */
export const mealDaysFrom = 7 * story.weeks - 14;
/** What such a day comes to, the first pan and the later ones; a test holds it against the journal's own sum. */
const FIRST_PAN = {
  energyKcal: 1747.9,
  proteinG: 140.3,
  carbohydrateG: 216,
  fatG: 38.3,
  sodiumMg: 2482,
} as const;
const LATER_PANS = {
  energyKcal: 1718.3,
  proteinG: 128.4,
  carbohydrateG: 224.2,
  fatG: 37.6,
  sodiumMg: 2479,
} as const;

/** The intake of a day of logged meals; `number` counts from the first of them. */
export function mealIntake(number: number): typeof FIRST_PAN | typeof LATER_PANS {
  return number < PAN_EVERY ? FIRST_PAN : LATER_PANS;
}

export const turkeyPan = (number: number): string => `turkey-pan-${number}`;

/** A day of logged meals; `number` counts from the first of them. The evening before a pan runs out another is cooked. */
export function writeMealDay(scribe: Scribe, day: string, number: number, afternoon: () => void): void {
  const pan = Math.floor(number / PAN_EVERY);
  const first = 1 + 2 * (number % PAN_EVERY);
  scribe.write(day, '07:20', 'meal-eaten', {
    items: [food(foods.oats, 60), food(foods.eggWhite, 200), food(foods.blueberries, 100), salt(2)],
  });
  scribe.write(day, '11:30', 'meal-eaten', {
    items: [fromPan(scribe, pan, first), food('usda-sr28:20045', 190)],
  });
  afternoon();
  scribe.write(day, '16:30', 'meal-eaten', {
    items: [food(foods.proteinPowder, 30), food(foods.banana, 118), food(foods.riceCakes, 27)],
  });
  if (number % PAN_EVERY === PAN_EVERY - 1) {
    writeShop(scribe, day, '17:40');
    cookPan(scribe, day, '18:40', pan + 1);
  }
  scribe.write(day, '19:45', 'meal-eaten', {
    items: [
      fromPan(scribe, pan, first + 1),
      food('usda-sr28:11367', 230),
      food('usda-sr28:11093', 180),
      salt(2.5),
    ],
  });
  scribe.write(day, '21:50', 'day-closed', { complete: true });
}

/** The very first pan of the logged days was cooked before them. */
function fromPan(scribe: Scribe, pan: number, portion: number): PlateItem {
  const known = scribe.entries.some(
    (entry) => entry.kind === 'batch-cooked' && entry.data['batch'] === turkeyPan(pan),
  );
  if (!known) return food('usda-sr28:05666', 130);
  return { source: 'batch', batch: turkeyPan(pan), portion, grams: PORTION_G };
}

/** Raw in, cooked out, six equal portions into the fridge. */
export function cookPan(scribe: Scribe, day: string, clock: string, number: number): void {
  scribe.write(day, clock, 'batch-cooked', {
    batch: turkeyPan(number),
    name: 'Turkey and courgette pan',
    ingredients: [
      { food: foods.turkeyMince, rawG: 900 },
      { food: foods.courgette, rawG: 300 },
      { food: foods.tomatoPaste, rawG: 80 },
      { food: foods.oliveOil, rawG: 12 },
    ],
    container: 'wide-pan',
    containerG: 1184,
    cookedGrossG: 1184 + 6 * PORTION_G,
    fromStock: true,
    recipe: 'turkey-courgette-pan',
  });
  scribe.write(day, `${clock.slice(0, 3)}55`, 'batch-portioned', {
    batch: turkeyPan(number),
    portionsG: Array.from({ length: 6 }, () => PORTION_G),
    place: 'fridge',
  });
}

function food(id: string, grams: number): PlateItem {
  return { source: 'food', food: id, grams };
}

function salt(grams: number): PlateItem {
  return food('usda-sr28:02047', grams);
}
