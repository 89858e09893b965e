import { createLedger, type Fact, type Ledger } from '../journal/ledger.ts';
import { batchFoodId } from '../kitchen/cooked-batch.ts';
import { needsOf, portionsOf } from '../week/cook-plan.ts';
import type { StandingWeek, WeekFacts, WeekWay } from '../week/week-changes.ts';
import { kitchenNow, type KitchenNow } from './kitchen-now.ts';
import { pansOf, type Adopted, type AdoptedDay, type PanAhead } from './pans-ahead.ts';
import { plannedToday } from './planned-today.ts';
import {
  centsPerGram,
  packsKnown,
  rulesOf,
  usualWishes,
  weekDay,
  weekDishes,
  weekWishes,
} from './week-ask.ts';

/** The moment that the standing plan was solved at, or left as it stands, and what was known then. */
export interface WeekBase {
  /** Tells one such moment, with what was known by it, from another. */
  readonly key: string;
  readonly stamp: string;
  readonly facts: WeekFacts;
}

/**
 * What was known when the standing plan was adopted, or last left as it stands: the journal as it was then, read again (WEK-09). A
 * base known before is answered as it is. Undefined: no plan stands.
 */
export function weekBase(ledger: Ledger, known?: WeekBase): WeekBase | undefined {
  const adopted = ledger.latest('week-adopted');
  if (!adopted) return undefined;
  const fact = sinceWhen(ledger, adopted);
  const all = ledger.entries();
  const after = all.findLastIndex(({ stamp }) => stamp <= fact.entry.stamp) + 1;
  const key = `${fact.entry.id} ${after}`;
  if (known?.key === key) return known;
  const past = createLedger(all.slice(0, after));
  const kitchen = kitchenNow(past, fact.epochMs);
  return { key, stamp: fact.entry.stamp, facts: weekFacts(past, kitchen, fact.day, adopted) };
}

function sinceWhen(ledger: Ledger, adopted: Adopted): Fact<'week-adopted'> | Fact<'week-kept'> {
  const kept = ledger
    .of('week-kept')
    .findLast(({ data, entry }) => data.week === adopted.data.week && entry.stamp > adopted.entry.stamp);
  return kept ?? adopted;
}

/** What the days of a plan are solved from, as a journal has it. */
export function weekFacts(ledger: Ledger, kitchen: KitchenNow, today: string, adopted: Adopted): WeekFacts {
  const { data } = adopted;
  const { catalogue, available } = kitchen;
  const wishes = weekWishes(ledger);
  const spoken = plannedToday(ledger, today);
  const left = (id: string) => {
    const stock = available.get(id);
    return Math.max(0, (stock?.readyG ?? 0) + (stock?.frozenG ?? 0) - (spoken.get(id) ?? 0));
  };
  const pans = pansOf(ledger, catalogue, adopted);
  const open = pans.filter(({ done, date }) => done === undefined && date >= today);
  const batches = [...catalogue.batches().keys()];
  const targets = data.days.flatMap(({ date }) => {
    const day = weekDay(ledger, date, wishes);
    return day.ok ? [[date, day.value.target] as const] : [];
  });
  return {
    today,
    targets: new Map(targets),
    dishes: new Map(weekDishes(ledger, kitchen).map((dish) => [dish.recipe, dish])),
    portions: new Map(batches.map((id) => [id, portionsLeft(kitchen, id, left(batchFoodId(id)))])),
    grams: new Map([...available.keys()].map((id) => [id, left(id)])),
    needs: needsOf(
      open,
      data.days.filter(({ date }) => date > today),
      (id) => catalogue.food(id),
    ),
    centsPer100g: prices(ledger),
    way: wayOf(wishes),
  };
}

function portionsLeft({ catalogue, available }: KitchenNow, id: string, grams: number): number {
  const batch = catalogue.batch(id);
  if (!batch) return 0;
  const recipe = batch.recipe === undefined ? undefined : catalogue.recipe(batch.recipe);
  const { cookedG } = batch.balance;
  const packed = available.get(batchFoodId(id))?.portions[0]?.grams;
  const portionG = packed ?? (recipe ? cookedG / portionsOf(recipe) : cookedG);
  return Math.max(0, Math.floor(grams / portionG + 0.1));
}

function prices(ledger: Ledger): ReadonlyMap<string, number> {
  const known = [...packsKnown(ledger)].flatMap(([food, pack]) => {
    const cents = centsPerGram(pack);
    return cents === undefined ? [] : [[food, 100 * cents] as const];
  });
  return new Map(known);
}

function wayOf(wishes: ReturnType<typeof weekWishes>): WeekWay {
  return {
    days: wishes.days ?? usualWishes.days,
    cookWeekdays: wishes.cookWeekdays ?? usualWishes.cookWeekdays,
    rules: rulesOf(wishes),
  };
}

/** The adopted week as it stands, for what has changed about it. */
export function standingWeek(
  ledger: Ledger,
  { catalogue, stock }: KitchenNow,
  { data }: Adopted,
  pans: readonly PanAhead[],
  { stamp }: WeekBase,
): StandingWeek {
  const counts = [...ledger.of('stock-counted'), ...ledger.of('stock-binned')];
  const gone = stock.foods.filter(({ reading }) => reading.state === 'out');
  return {
    days: data.days,
    pans,
    batchOf: (dish: AdoptedDay['dishes'][number]) =>
      dish.from === 'ready'
        ? dish.batch
        : pans.find((pan) => pan.recipe === dish.recipe && pan.date === dish.cookedOn)?.done,
    nameOf: (id) => catalogue.batch(id)?.name ?? catalogue.food(id)?.name ?? id,
    struck: new Set([
      ...counts.flatMap(({ entry, data: { food } }) => (entry.stamp > stamp ? [food] : [])),
      ...gone.map(({ food }) => food),
    ]),
  };
}
