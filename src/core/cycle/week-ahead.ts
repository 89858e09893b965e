import { shapeOfDay } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import type { Catalogue } from '../kitchen/catalogue.ts';
import { batchFoodId } from '../kitchen/cooked-batch.ts';
import { addDays } from '../units/civil-date.ts';
import { roundTo } from '../units/rounding.ts';
import { needsOf, panToCook, portionsOf, type PanToCook } from '../week/cook-plan.ts';
import { shoppingList, type ShoppingLine } from '../week/shopping-list.ts';
import type { KitchenNow } from './kitchen-now.ts';
import { plannedToday } from './planned-today.ts';
import { keepsRawDays, packsKnown } from './week-ask.ts';

type Adopted = Fact<'week-adopted'>;
export type AdoptedDay = Adopted['data']['days'][number];

export interface PanAhead extends PanToCook {
  /** The batch it became, once it is cooked. */
  readonly done?: string;
}

export interface DishAhead {
  readonly name: string;
  readonly portions: number;
  /** "cooked on", "thawed", "ready": where it comes from. */
  readonly from: 'pan' | 'freezer' | 'ready';
  readonly cookedOn?: string;
}

export interface DayAhead {
  readonly date: string;
  readonly target: AdoptedDay['target'];
  readonly dishes: readonly DishAhead[];
  readonly foods: readonly { readonly food: string; readonly name: string; readonly grams: number }[];
}

/** The adopted week as it stands now. */
export interface WeekAhead {
  readonly adopted: Adopted;
  /** Days not yet begun. */
  readonly days: readonly DayAhead[];
  readonly pans: readonly PanAhead[];
  readonly list: readonly ShoppingLine[];
  /** Ticked off this week's list. */
  readonly bought: readonly Fact<'stock-bought'>[];
  /** Why the plan no longer holds as it is; empty while it does (WEK-07). */
  readonly outOfLine: readonly string[];
}

/** Reads the adopted week against what was cooked, bought and eaten since. Undefined: none was adopted. */
export function weekAhead(ledger: Ledger, kitchen: KitchenNow, today: string): WeekAhead | undefined {
  const adopted = ledger.latest('week-adopted');
  if (!adopted) return undefined;
  const { catalogue } = kitchen;
  const spoken = plannedToday(ledger, today);
  const nameOf = (food: string) => catalogue.food(food)?.name ?? food;
  const pans = adopted.data.pans.flatMap((pan): PanAhead[] => {
    const recipe = catalogue.recipe(pan.recipe);
    if (!recipe) return [];
    const done = cookedAs(ledger, adopted, pan);
    return [{ ...panToCook(pan, recipe, adopted.data.days, nameOf), ...(done !== undefined && { done }) }];
  });
  const open = pans.filter((pan) => pan.done === undefined && pan.date >= today);
  const later = adopted.data.days.filter((day) => day.date > today);
  return {
    adopted,
    days: later.map((day) => dayAhead(day, catalogue)),
    pans,
    list: shoppingList(
      needsOf(open, later, (food) => catalogue.food(food)),
      wares(ledger, kitchen, spoken),
    ),
    bought: ledger.of('stock-bought').filter(({ data }) => data.week === adopted.data.week),
    outOfLine: [
      ...changedTargets(ledger, later),
      ...missedPans(pans, today),
      ...shortPortions(kitchen, pans, later, spoken),
      ...(later.length === 0 ? ['All its days are over.'] : []),
    ],
  };
}

/** The batch cooked by this recipe about that day, since the week was adopted. */
function cookedAs(
  ledger: Ledger,
  adopted: Adopted,
  pan: { readonly date: string; readonly recipe: string },
): string | undefined {
  const near = [addDays(pan.date, -1), pan.date, addDays(pan.date, 1)];
  return ledger
    .of('batch-cooked')
    .find(
      ({ data, day, entry }) =>
        data.recipe === pan.recipe && near.includes(day) && entry.stamp > adopted.entry.stamp,
    )?.data.batch;
}

function dayAhead(day: AdoptedDay, catalogue: Catalogue): DayAhead {
  return {
    date: day.date,
    target: day.target,
    dishes: day.dishes.map((dish): DishAhead => {
      if (dish.from === 'ready') {
        return {
          name: catalogue.batch(dish.batch)?.name ?? dish.batch,
          portions: dish.portions,
          from: 'ready',
        };
      }
      const name = catalogue.recipe(dish.recipe)?.name ?? dish.recipe;
      const from = dish.frozen ? 'freezer' : 'pan';
      return { name, portions: dish.portions, from, cookedOn: dish.cookedOn };
    }),
    foods: day.foods.map(({ food, grams }) => ({ food, name: catalogue.food(food)?.name ?? food, grams })),
  };
}

function wares(ledger: Ledger, kitchen: KitchenNow, spoken: ReadonlyMap<string, number>) {
  const packs = packsKnown(ledger);
  return (id: string) => {
    const food = kitchen.catalogue.food(id);
    if (!food) return undefined;
    const pack = packs.get(id);
    const stock = kitchen.available.get(id);
    const keepsDays = keepsRawDays(kitchen, id);
    return {
      name: food.name,
      aisle: pack?.aisle ?? food.aisle,
      haveG: Math.max(0, (stock?.readyG ?? 0) + (stock?.frozenG ?? 0) - (spoken.get(id) ?? 0)),
      ...(pack && { packG: pack.packG }),
      ...(pack?.priceCents !== undefined && { priceCents: pack.priceCents }),
      ...(keepsDays !== undefined && { keepsDays }),
    };
  };
}

const SAME_G = 0.5;

function changedTargets(ledger: Ledger, days: readonly AdoptedDay[]): string[] {
  const changed = days.filter(({ date, target }) => {
    const shape = shapeOfDay(ledger, date);
    const now = shape && targetsOfDay(ledger, date, shape.dayKind)?.data;
    if (!now) return false;
    return (['proteinG', 'carbohydrateG', 'fatG'] as const).some(
      (name) => Math.abs(now[name] - target[name]) > SAME_G,
    );
  });
  return changed.length === 0 ? [] : [`The targets of ${changed.length} of its days have changed.`];
}

function missedPans(pans: readonly PanAhead[], today: string): string[] {
  return pans
    .filter((pan) => pan.done === undefined && pan.date < today && pan.eatenOn.some((date) => date >= today))
    .map((pan) => `${pan.name} was to be cooked on ${pan.date} and was not.`);
}

/** Portions that later days count on, against what is really left of the batches. */
function shortPortions(
  kitchen: KitchenNow,
  pans: readonly PanAhead[],
  days: readonly AdoptedDay[],
  spoken: ReadonlyMap<string, number>,
): string[] {
  const wanted = new Map<string, number>();
  for (const dish of days.flatMap((day) => day.dishes)) {
    const batch =
      dish.from === 'ready'
        ? dish.batch
        : pans.find((pan) => pan.recipe === dish.recipe && pan.date === dish.cookedOn)?.done;
    if (batch !== undefined) wanted.set(batch, (wanted.get(batch) ?? 0) + dish.portions);
  }
  return [...wanted].flatMap(([id, portions]) => {
    const batch = kitchen.catalogue.batch(id);
    const stock = kitchen.available.get(batchFoodId(id));
    const portionG = stock?.portions[0]?.grams ?? portionWeight(kitchen, id);
    const there = (stock?.readyG ?? 0) + (stock?.frozenG ?? 0) - (spoken.get(batchFoodId(id)) ?? 0);
    const left = Math.max(0, Math.floor(there / portionG + 0.1));
    if (left >= portions) return [];
    return [`${batch?.name ?? id}: ${portions} portions are planned, ${roundTo(left, 0)} are left.`];
  });
}

function portionWeight(kitchen: KitchenNow, id: string): number {
  const batch = kitchen.catalogue.batch(id);
  const recipe = batch?.recipe === undefined ? undefined : kitchen.catalogue.recipe(batch.recipe);
  if (!batch) return 1;
  return recipe ? batch.balance.cookedG / portionsOf(recipe) : batch.balance.cookedG;
}

/** Foods that today's plan should reach for, for the week counts on them: batches of the dishes and foods of the day (WEK-08). */
export function weekFoodsOn(ledger: Ledger, catalogue: Catalogue, date: string): ReadonlySet<string> {
  const day = ledger.latest('week-adopted')?.data.days.find((one) => one.date === date);
  if (!day) return new Set();
  const batches = [...catalogue.batches().values()];
  return new Set([
    ...day.foods.map(({ food }) => food),
    ...day.dishes.flatMap((dish) =>
      dish.from === 'ready'
        ? [batchFoodId(dish.batch)]
        : batches.filter((batch) => batch.recipe === dish.recipe).map((batch) => batchFoodId(batch.batch)),
    ),
  ]);
}
