import type { Fact, Ledger } from '../journal/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import { addDays, parseDate } from '../units/civil-date.ts';
import { parseInstant } from '../units/instant.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { takeFromBatch, type BatchContainers } from './batch-containers.ts';
import { batchEvents, eatFromBatches, type OpenBatches } from './batch-events.ts';
import type { Catalogue } from './catalogue.ts';
import { batchFoodId, type CookedBatch } from './cooked-batch.ts';
import {
  addLot,
  countFood,
  dateLots,
  inOrderOfUse,
  moveFood,
  packageLimit,
  takeFood,
  type FoodLots,
} from './food-lots.ts';
import { eventsOf, play, type KitchenEvent } from './kitchen-event.ts';
import { noteTo, openNotes, type Say, type StockNote } from './stock-notes.ts';
import { recipeShare, type RecipeShare } from './recipe/recipe-share.ts';
import { readClock, shelfLimit, type ShelfLimit, type ShelfReading, type StockPlace } from './shelf-life.ts';

/** Grams of a food in one place that came together. */
export interface FoodStock {
  readonly food: string;
  readonly name: string;
  readonly place: StockPlace;
  readonly grams: Grams;
  readonly cameAtMs: number;
  readonly reading: ShelfReading;
}

export interface ContainerStock {
  /** 0 is the pan. */
  readonly portion: number;
  readonly grams: Grams;
  readonly packedG: Grams;
  readonly place: StockPlace;
  readonly reading: ShelfReading;
  /** Nutrients per gram against the batch's own; 1 unless it was weighed again. */
  readonly strength: number;
}

export interface BatchStock {
  readonly batch: CookedBatch;
  /** What is left of it, what must go first first. */
  readonly containers: readonly ContainerStock[];
}

export interface Stock {
  readonly atMs: number;
  readonly foods: readonly FoodStock[];
  readonly batches: readonly BatchStock[];
  /** Where the log and the scale do not agree and nothing was counted since; nothing of it stops the day. */
  readonly notes: readonly Problem[];
}

/**
 * What is there at a moment, worked out from every purchase, pan, meal, count and move before it (BAT-60 to BAT-66). What
 * must be eaten first comes first.
 */
export function stockAt(ledger: Ledger, catalogue: Catalogue, atMs: number): Stock {
  const open: OpenBatches = new Map();
  const lots: FoodLots = new Map();
  const notes: StockNote[] = [];
  const say = noteTo(notes);
  play([
    ...batchEvents(ledger, catalogue.batches(), open, say, atMs),
    ...lotEvents(ledger, catalogue, lots, atMs),
    ...usedEvents(ledger, catalogue, lots, open, say, atMs),
  ]);
  return {
    atMs,
    foods: [...lots.values()]
      .flatMap((own) => inOrderOfUse(own, atMs))
      .map((lot) => ({
        food: lot.food,
        name: nameOf(catalogue, lot.food),
        place: lot.clock.place,
        grams: roundTo(lot.grams, 3),
        cameAtMs: lot.cameAtMs,
        reading: readClock(lot.clock, atMs),
      }))
      .sort(byUse),
    batches: [...open.values()].flatMap((of) => batchStock(of, atMs)).sort(byFirstUse),
    notes: openNotes(notes, ledger, atMs),
  };
}

/** Bought, counted, moved. */
function lotEvents(ledger: Ledger, catalogue: Catalogue, lots: FoodLots, untilMs: number): KitchenEvent[] {
  const limitOf = (food: string): ShelfLimit =>
    shelfLimit(catalogue.food(food)?.storage ?? 'raw-mince', catalogue.rice);
  return [
    ...eventsOf(ledger.of('stock-bought'), untilMs, (fact) => {
      const { food, grams, place } = fact.data;
      addLot(lots, food, grams, place, dated(fact, limitOf(food)), fact.epochMs);
    }),
    ...eventsOf(ledger.of('stock-counted'), untilMs, (fact) => {
      const { food, grams, place, useBy } = fact.data;
      const limit = dated(fact, limitOf(food));
      countFood(lots, food, grams, place, limit, fact.epochMs);
      if (useBy !== undefined) dateLots(lots, food, place, limit, fact.epochMs);
    }),
    ...eventsOf(ledger.of('stock-moved'), untilMs, ({ data, epochMs }) => {
      moveFood(lots, data.food, data.grams, data.from, data.to, epochMs, data);
    }),
  ];
}

/** Cooked, eaten, thrown away: what lowers the stock. */
function usedEvents(
  ledger: Ledger,
  catalogue: Catalogue,
  lots: FoodLots,
  open: OpenBatches,
  say: Say,
  untilMs: number,
): KitchenEvent[] {
  const take = (food: string, grams: Grams, fact: Fact) => {
    const batch = food.startsWith(BATCH_PREFIX) ? open.get(food.slice(BATCH_PREFIX.length)) : undefined;
    const problem = batch
      ? takeFromBatch(batch, undefined, grams, fact.entry.id)
      : takeFood(lots, food, () => nameOf(catalogue, food), grams, fact.epochMs, fact.entry.id);
    say(food, fact.epochMs, problem);
  };
  return [
    ...eventsOf(ledger.of('batch-cooked'), untilMs, (fact) => {
      if (!fact.data.fromStock) return;
      for (const { food, rawG } of fact.data.ingredients) take(food, rawG, fact);
    }),
    ...eventsOf(ledger.of('meal-eaten'), untilMs, (fact) => {
      eatFromBatches(fact, open, say);
      for (const item of fact.data.items) {
        if (item.source === 'food') take(item.food, item.grams, fact);
        const share = recipeShare(catalogue, item);
        if (share) takeRecipe(share, open, fact, take);
      }
    }),
    ...eventsOf(ledger.of('stock-binned'), untilMs, (fact) => take(fact.data.food, fact.data.grams, fact)),
  ];
}

const BATCH_PREFIX = batchFoodId('');

/**
 * A recipe eaten comes off the pan that was cooked by it, while any of it is left; else its share of the raw foods does, for
 * then it was cooked without being weighed as a batch (BAT-68).
 */
function takeRecipe(
  { recipe, share }: RecipeShare,
  open: OpenBatches,
  fact: Fact,
  take: (food: string, grams: Grams, fact: Fact) => void,
): void {
  const pan = [...open.values()].find(
    (of) =>
      of.batch.recipe === recipe.recipe &&
      [...of.containers.values()].some((container) => container.grams > 0),
  );
  if (pan) {
    take(batchFoodId(pan.batch.batch), share * pan.batch.balance.cookedG, fact);
    return;
  }
  for (const { food, rawG } of recipe.ingredients) take(food, share * rawG, fact);
}

/** A date on the package stands before the table's days: until the end of that day where it was written. */
function dated(fact: Fact<'stock-bought'> | Fact<'stock-counted'>, limit: ShelfLimit): ShelfLimit {
  const { useBy } = fact.data;
  const nextDay = useBy === undefined ? undefined : parseDate(addDays(useBy, 1));
  if (nextDay === undefined) return limit;
  const offsetMinutes = parseInstant(fact.entry.at)?.offsetMinutes ?? 0;
  return packageLimit(limit, (nextDay * 1440 - offsetMinutes) * 60_000, fact.epochMs);
}

function nameOf(catalogue: Catalogue, food: string): string {
  return catalogue.food(food)?.name ?? food;
}

function batchStock(of: BatchContainers, atMs: number): BatchStock[] {
  const containers = [...of.containers.values()]
    .filter((container) => container.grams > 0)
    .map(({ portion, grams, packedG, clock, strength }) => ({
      portion,
      grams: roundTo(grams, 3),
      packedG,
      place: clock.place,
      reading: readClock(clock, atMs),
      strength: roundTo(strength, 6),
    }))
    .sort((a, b) => byUse(a, b) || a.portion - b.portion);
  return containers.length === 0 ? [] : [{ batch: of.batch, containers }];
}

function byUse(a: { readonly reading: ShelfReading }, b: { readonly reading: ShelfReading }): number {
  const rank = ({ reading }: { readonly reading: ShelfReading }) =>
    reading.state === 'frozen' ? Number.MAX_VALUE : (reading.useByMs ?? Number.MAX_SAFE_INTEGER);
  return rank(a) - rank(b);
}

function byFirstUse(a: BatchStock, b: BatchStock): number {
  const [first, other] = [a.containers[0], b.containers[0]];
  if (!first || !other) return 0;
  return byUse(first, other) || a.batch.cookedAtMs - b.batch.cookedAtMs;
}
