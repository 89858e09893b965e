import { foodsBeefMinced } from './data/foods-beef-minced.ts';
import { foodsCondiments } from './data/foods-condiments.ts';
import { foodsDairy } from './data/foods-dairy.ts';
import { foodsDrinks } from './data/foods-drinks.ts';
import { foodsEggs } from './data/foods-eggs.ts';
import { foodsFatsAndNuts } from './data/foods-fats-and-nuts.ts';
import { foodsFish } from './data/foods-fish.ts';
import { foodsFruit } from './data/foods-fruit.ts';
import { foodsGrains } from './data/foods-grains.ts';
import { foodsMeat } from './data/foods-meat.ts';
import { foodsPotatoes } from './data/foods-potatoes.ts';
import { foodsPoultry } from './data/foods-poultry.ts';
import { foodsPowders } from './data/foods-powders.ts';
import { foodsPulses } from './data/foods-pulses.ts';
import { foodsVegetables } from './data/foods-vegetables.ts';
import { readFoodSection, type TableFood } from './table-food.ts';

const sections = [
  ...foodsBeefMinced,
  ...foodsCondiments,
  ...foodsDairy,
  ...foodsDrinks,
  ...foodsEggs,
  ...foodsFatsAndNuts,
  ...foodsFish,
  ...foodsFruit,
  ...foodsGrains,
  ...foodsMeat,
  ...foodsPotatoes,
  ...foodsPoultry,
  ...foodsPowders,
  ...foodsPulses,
  ...foodsVegetables,
];

/** Every food of the bundled table: 281 of USDA Standard Reference 28, names and servings ours (BAT-01). */
export const tableFoods: readonly TableFood[] = sections.flatMap(readFoodSection);

const byId = new Map(tableFoods.map((food) => [food.id, food]));

/** A food of the table by its id, such as "usda-sr28:13498". */
export function tableFood(id: string): TableFood | undefined {
  return byId.get(id);
}
