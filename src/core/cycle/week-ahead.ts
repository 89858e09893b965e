import type { Fact, Ledger } from '../journal/ledger.ts';
import type { Catalogue } from '../kitchen/catalogue.ts';
import { batchFoodId } from '../kitchen/cooked-batch.ts';
import { needsOf } from '../week/cook-plan.ts';
import { shoppingList, type ShoppingLine } from '../week/shopping-list.ts';
import { weekChanges } from '../week/week-changes.ts';
import { weekChangeWords } from '../words/week-change-words.ts';
import { keepsRawDays } from './keeps-raw-days.ts';
import type { KitchenNow } from './kitchen-now.ts';
import { plannedToday } from './planned-today.ts';
import { pansOf, type Adopted, type AdoptedDay, type PanAhead } from './pans-ahead.ts';
import { packsKnown } from './week-ask.ts';
import { standingWeek, weekBase, weekFacts } from './week-facts.ts';

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
  /** What changed since it was solved or left so, for which it no longer fits; empty while it does (WEK-09). */
  readonly outOfLine: readonly string[];
}

/** Reads the adopted week against what was cooked, bought and eaten since. Undefined: none was adopted. */
export function weekAhead(
  ledger: Ledger,
  kitchen: KitchenNow,
  today: string,
  base = weekBase(ledger),
): WeekAhead | undefined {
  const adopted = ledger.latest('week-adopted');
  if (!adopted || !base) return undefined;
  const { catalogue } = kitchen;
  const spoken = plannedToday(ledger, today);
  const pans = pansOf(ledger, catalogue, adopted);
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
    outOfLine: weekChanges(
      standingWeek(ledger, kitchen, adopted, pans, base),
      base.facts,
      weekFacts(ledger, kitchen, today, adopted),
    ).map(weekChangeWords),
  };
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
