import { shapeOfDay } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Ledger } from '../journal/ledger.ts';
import { batchFoodId } from '../kitchen/cooked-batch.ts';
import { batchStorage } from '../kitchen/batch-storage.ts';
import { recipeNutrients, type Recipe } from '../kitchen/recipe-food.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Nutrients } from '../problems/shapes.ts';
import { addDays, isoWeekday } from '../units/civil-date.ts';
import type { Grams } from '../units/quantities.ts';
import { portionsOf } from '../week/cook-plan.ts';
import type {
  Macros,
  ReadyDish,
  WeekDay,
  WeekDish,
  WeekFood,
  WeekRequest,
  WeekRules,
} from '../week/week-request.ts';
import { boughtRaw } from './bought-raw.ts';
import type { KitchenNow } from './kitchen-now.ts';
import { plannedToday } from './planned-today.ts';

export type WeekWishes = DataOf<'week-wished'>;
export type PackKnown = DataOf<'pack-known'>;

/** What is planned unless wished otherwise. Common practice, no source. */
export const usualWishes = {
  days: 7,
  portionsPerDay: { min: 2, max: 3 },
  sameDishPerDay: 2,
  wantedDishes: 3,
  toleratedPortions: 7,
  cookWeekdays: [1, 2, 3, 4, 5, 6, 7],
  pansPerCookDay: 2,
  freezer: true,
} as const;

const FOODS_PER_DAY = 6;
/** A pan is cooked from half to twice as large as its recipe. Common practice, no source. */
const SMALLEST_PAN = 0.5;
const LARGEST_PAN = 2;
/** Foods the week may be filled with: what must go first, then favourites, then what is there. */
const MOST_FOODS = 14;
const HOUR_MS = 3_600_000;

/** The wishes in force. */
export function weekWishes(ledger: Ledger): WeekWishes {
  return ledger.latest('week-wished')?.data ?? {};
}

/** Pack sizes and prices, the newest of each food. */
export function packsKnown(ledger: Ledger): ReadonlyMap<string, PackKnown> {
  return new Map(ledger.of('pack-known').map(({ data }) => [data.food, data]));
}

/**
 * The question of the days after today (WEK-01): their targets, the recipes, what is ready and how long, foods beside them. Refuses
 * a day without shape or targets by its date.
 */
export function weekAsk(ledger: Ledger, kitchen: KitchenNow, today: string): Outcome<WeekRequest> {
  const wishes = weekWishes(ledger);
  const days: WeekDay[] = [];
  for (let number = 1; number <= (wishes.days ?? usualWishes.days); number += 1) {
    const day = weekDay(ledger, addDays(today, number), wishes);
    if (!day.ok) return day;
    days.push(day.value);
  }
  const packs = packsKnown(ledger);
  return answered({
    days,
    dishes: withMeanPrice(weekDishes(ledger, kitchen), 'centsPerPortion'),
    ready: readyDishes(kitchen, days, plannedToday(ledger, today)),
    foods: withMeanPrice(weekFoods(ledger, kitchen, packs), 'centsPer100g'),
    bought: boughtRaw(ledger, kitchen, today),
    rules: rulesOf(wishes),
  });
}

/** The recipes that may be cooked, as dishes of a week. */
export function weekDishes(ledger: Ledger, kitchen: KitchenNow): WeekDish[] {
  const { recipes } = weekWishes(ledger);
  const packs = packsKnown(ledger);
  return kitchen.catalogue
    .recipes()
    .filter(({ recipe }) => recipes === undefined || recipes.includes(recipe))
    .flatMap((recipe) => weekDish(kitchen, recipe, packs));
}

export function weekDay(ledger: Ledger, date: string, wishes: WeekWishes): Outcome<WeekDay> {
  const shape = shapeOfDay(ledger, date);
  const targets = shape && targetsOfDay(ledger, date, shape.dayKind);
  if (!targets) {
    return refused(
      shape ? 'week/no-targets' : 'week/no-shape',
      date,
      shape ? `${date} has no targets yet.` : `When ${date} begins and ends is not entered yet.`,
      shape ? 'Enter targets that stand from day to day.' : 'Enter how your days usually run.',
    );
  }
  const { proteinG, carbohydrateG, fatG, fibreMinG } = targets.data;
  const cookWeekdays: readonly number[] = wishes.cookWeekdays ?? usualWishes.cookWeekdays;
  return answered({
    date,
    target: { proteinG, carbohydrateG, fatG, fibreG: fibreMinG ?? 0 },
    cooking: cookWeekdays.includes(isoWeekday(date)),
  });
}

export function rulesOf(wishes: WeekWishes): WeekRules {
  return {
    portionsPerDay: wishes.portionsPerDay ?? usualWishes.portionsPerDay,
    sameDishPerDay: wishes.sameDishPerDay ?? usualWishes.sameDishPerDay,
    wantedDishes: wishes.wantedDishes ?? usualWishes.wantedDishes,
    toleratedPortions: wishes.toleratedPortions ?? usualWishes.toleratedPortions,
    pansPerCookDay: wishes.pansPerCookDay ?? usualWishes.pansPerCookDay,
    freezer: wishes.freezer ?? usualWishes.freezer,
    foodsPerDay: FOODS_PER_DAY,
  };
}

/** Macros and fibre of so many hundredths of what is given; fibre that is not known counts as none, so that no plan leans on it. */
function macrosOf(nutrients: Nutrients, factor: number): Macros {
  const { proteinG, carbohydrateG, fatG, fibreG = 0 } = nutrients;
  return {
    proteinG: proteinG * factor,
    carbohydrateG: carbohydrateG * factor,
    fatG: fatG * factor,
    fibreG: fibreG * factor,
  };
}

function weekDish(kitchen: KitchenNow, recipe: Recipe, packs: ReadonlyMap<string, PackKnown>): WeekDish[] {
  const { catalogue } = kitchen;
  const nutrients = recipeNutrients(recipe, (food) => catalogue.food(food));
  if (!nutrients.ok) return [];
  const portions = portionsOf(recipe);
  const parts = recipe.ingredients
    .map(({ food }) => catalogue.food(food))
    .filter((food) => food !== undefined);
  const { limit } = batchStorage(parts, catalogue.rice);
  const cents = centsOf(recipe.ingredients, packs);
  return [
    {
      recipe: recipe.recipe,
      name: recipe.name,
      perPortion: macrosOf(nutrients.value.total.nutrients, 1 / portions),
      // The day it is cooked counts whole: the last hours of its time are not planned with.
      keepsDays: limit.hours === undefined ? 7 : Math.max(1, Math.floor(limit.hours / 24)),
      freezes: limit.freezerMonths !== undefined,
      leastPortions: Math.ceil(portions * SMALLEST_PAN),
      mostPortions: portions * LARGEST_PAN,
      ...(cents !== undefined && { centsPerPortion: cents / portions }),
    },
  ];
}

/** The price of raw weights, where every one of them is known. */
function centsOf(
  ingredients: Recipe['ingredients'],
  packs: ReadonlyMap<string, PackKnown>,
): number | undefined {
  let cents = 0;
  for (const { food, rawG } of ingredients) {
    const price = centsPerGram(packs.get(food));
    if (price === undefined) return undefined;
    cents += rawG * price;
  }
  return cents;
}

/** What has no known price counts as the mean of what has: being unknown makes nothing cheap. Without any price money is left out. */
function withMeanPrice<Key extends string, Thing extends { readonly [Of in Key]?: number }>(
  things: readonly Thing[],
  key: Key,
): Thing[] {
  const known = things
    .map((thing) => thing[key])
    .filter((price): price is NonNullable<typeof price> => price !== undefined);
  if (known.length === 0) return [...things];
  const mean = known.reduce((sum: number, price) => sum + price, 0) / known.length;
  return things.map((thing) => ({ ...thing, [key]: thing[key] ?? mean }));
}

export function centsPerGram(pack: PackKnown | undefined): number | undefined {
  return pack?.priceCents === undefined ? undefined : pack.priceCents / pack.packG;
}

/** Packed portions and pans still there, each until its use-by; frozen ones without end. */
function readyDishes(
  { stock, catalogue }: KitchenNow,
  days: readonly WeekDay[],
  today: ReadonlyMap<string, Grams>,
): ReadyDish[] {
  return stock.batches.flatMap(({ batch, containers }) => {
    const fit = containers.filter(({ reading }) => reading.state !== 'out');
    const all = fit.reduce((sum, one) => sum + one.grams, 0);
    const grams = all - (today.get(batchFoodId(batch.batch)) ?? 0);
    const recipe = batch.recipe === undefined ? undefined : catalogue.recipe(batch.recipe);
    const portionG = portionWeight(fit, recipe);
    const portions = Math.floor(grams / portionG + 0.05);
    if (portions < 1) return [];
    const per = batch.balance.per100gCooked.nutrients;
    const useByMs = Math.min(...fit.map(({ reading }) => reading.useByMs ?? Number.POSITIVE_INFINITY));
    const lastDay = lastDayBefore(stock.atMs, useByMs, days.length);
    if (lastDay !== undefined && lastDay < 0) return [];
    return [
      {
        batch: batch.batch,
        ...(batch.recipe !== undefined && { recipe: batch.recipe }),
        name: batch.name,
        perPortion: macrosOf(per, portionG / 100),
        portions,
        ...(lastDay !== undefined && { lastDay }),
      },
    ];
  });
}

const LOOSE_PORTION_G = 200;

function portionWeight(
  containers: readonly { readonly portion: number; readonly grams: Grams }[],
  recipe: Recipe | undefined,
): Grams {
  const packed = containers.find(({ portion }) => portion > 0);
  if (packed) return packed.grams;
  const { cookedG } = recipe?.yields ?? {};
  return recipe && cookedG !== undefined ? cookedG / portionsOf(recipe) : LOOSE_PORTION_G;
}

/** Index of the last whole day before a use-by; tomorrow is 0. Undefined: past all days. */
function lastDayBefore(nowMs: number, useByMs: number, days: number): number | undefined {
  if (!Number.isFinite(useByMs)) return undefined;
  const last = Math.floor((useByMs - nowMs) / (24 * HOUR_MS)) - 1;
  return last >= days ? undefined : last;
}

/** What fills the days beside the dishes: what is in stock or a favourite and needs no pan. */
function weekFoods(ledger: Ledger, kitchen: KitchenNow, packs: ReadonlyMap<string, PackKnown>): WeekFood[] {
  const stocked = kitchen.plannable
    .filter(({ id }) => !id.startsWith('batch:') && !id.startsWith('recipe:'))
    .map(({ id, dislike }) => ({ id, rank: dislike < 0 ? 0 : 2 }));
  const favourites = ledger
    .of('food-preferred')
    .filter(({ data }) => kitchen.catalogue.preference(data.food)?.favourite === true)
    .map(({ data }) => ({ id: data.food, rank: 1 }));
  const ranked = [...stocked, ...favourites].sort((a, b) => a.rank - b.rank);
  return [...new Set(ranked.map(({ id }) => id))].slice(0, MOST_FOODS).flatMap((id) => {
    const food = kitchen.catalogue.food(id);
    if (!food || food.per100g.nutrients.energyKcal < 5) return [];
    const price = centsPerGram(packs.get(id));
    const { minG, maxG, unitG } = food.serving;
    return [
      {
        food: id,
        name: food.name,
        per100g: macrosOf(food.per100g.nutrients, 1),
        minG,
        maxG,
        ...(unitG !== undefined && { unitG }),
        ...(price !== undefined && { centsPer100g: 100 * price }),
      },
    ];
  });
}
