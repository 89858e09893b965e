import type { Problem } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import { note } from './batch-containers.ts';
import { figure } from './figure.ts';
import {
  agedAt,
  moveClock,
  startClock,
  type ShelfClock,
  type ShelfLimit,
  type StockPlace,
  type TimeOut,
} from './shelf-life.ts';

/** Some grams of a food that came together. */
export interface Lot {
  readonly food: string;
  grams: Grams;
  readonly cameAtMs: number;
  clock: ShelfClock;
}

/** Lots by food; a food that was ever counted or bought stays known, empty or not. */
export type FoodLots = Map<string, Lot[]>;

const CRUMBS_G = 0.5;
const HOUR_MS = 3_600_000;

/** The limit of a lot with a date on its package: until the end of that day. */
export function packageLimit(limit: ShelfLimit, endMs: number, fromMs: number): ShelfLimit {
  return { ...limit, hours: Math.max(0, endMs - fromMs) / HOUR_MS, pausedIn: ['freezer'] };
}

export function addLot(
  lots: FoodLots,
  food: string,
  grams: Grams,
  place: StockPlace,
  limit: ShelfLimit,
  atMs: number,
): void {
  const lot: Lot = { food, grams, cameAtMs: atMs, clock: startClock(limit, place, atMs) };
  lots.set(food, [...(lots.get(food) ?? []), lot]);
}

/** Takes grams off the lots, what must go first first. Noted where a known food is short; a food never counted is no matter. */
export function takeFood(
  lots: FoodLots,
  food: string,
  name: () => string,
  grams: Grams,
  atMs: number,
  entry: string,
): Problem | undefined {
  const own = lots.get(food);
  if (!own) return undefined;
  const left = takeFrom(own.length > 1 ? inOrderOfUse(own, atMs) : own, grams);
  dropEmpty(lots, food);
  if (left <= CRUMBS_G) return undefined;
  return note(
    'kitchen/more-eaten-than-counted',
    entry,
    `${figure(left)} g more ${name()} were taken than was counted.`,
    'Count what is there.',
  );
}

/** Sets what is at a place: less takes the oldest off, more comes in with the date of the oldest there (the safe side). */
export function countFood(
  lots: FoodLots,
  food: string,
  grams: Grams,
  place: StockPlace,
  limit: ShelfLimit,
  atMs: number,
): void {
  const here = (lots.get(food) ?? []).filter((lot) => lot.clock.place === place);
  const before = here.reduce((sum, lot) => sum + lot.grams, 0);
  const oldest = inOrderOfUse(here, atMs)[0];
  if (grams < before) takeFrom(inOrderOfUse(here, atMs), before - grams);
  else if (oldest) oldest.grams += grams - before;
  else if (grams > 0) addLot(lots, food, grams, place, limit, atMs);
  if (!lots.has(food)) lots.set(food, []);
  dropEmpty(lots, food);
}

/** A package date found when counting holds for everything at that place from then on. */
export function dateLots(
  lots: FoodLots,
  food: string,
  place: StockPlace,
  limit: ShelfLimit,
  atMs: number,
): void {
  for (const lot of lots.get(food) ?? []) {
    if (lot.clock.place === place) lot.clock = { ...lot.clock, limit, agedMs: 0, sinceMs: atMs };
  }
}

/** Moves grams (or all) from one place to another, oldest first; a lot is parted where only some of it moves. */
export function moveFood(
  lots: FoodLots,
  food: string,
  grams: Grams | undefined,
  from: StockPlace,
  to: StockPlace,
  atMs: number,
  out: TimeOut,
): void {
  const own = lots.get(food) ?? [];
  let left = grams ?? Number.POSITIVE_INFINITY;
  const parted: Lot[] = [];
  for (const lot of inOrderOfUse(own, atMs)) {
    if (lot.clock.place !== from || left <= 0) continue;
    const moved = Math.min(lot.grams, left);
    left -= moved;
    if (moved < lot.grams) {
      parted.push({ ...lot, grams: lot.grams - moved });
      lot.grams = moved;
    }
    lot.clock = moveClock(lot.clock, to, atMs, out);
  }
  if (lots.has(food)) lots.set(food, [...own, ...parted]);
}

/** Frozen lots last; before them what is out soonest, then what came first. */
export function inOrderOfUse(lots: readonly Lot[], atMs: number): Lot[] {
  const leftMs = ({ clock }: Lot) =>
    clock.place === 'freezer'
      ? Number.MAX_VALUE
      : clock.limit.hours === undefined
        ? Number.MAX_SAFE_INTEGER
        : clock.limit.hours * HOUR_MS - agedAt(clock, atMs);
  return [...lots].sort((a, b) => leftMs(a) - leftMs(b) || a.cameAtMs - b.cameAtMs);
}

function takeFrom(ordered: readonly Lot[], grams: Grams): Grams {
  let left = grams;
  for (const lot of ordered) {
    const taken = Math.min(lot.grams, left);
    lot.grams -= taken;
    left -= taken;
    if (left <= 0) break;
  }
  return Math.max(0, left);
}

function dropEmpty(lots: FoodLots, food: string): void {
  const own = lots.get(food);
  if (own?.some((lot) => lot.grams < CRUMBS_G)) {
    lots.set(
      food,
      own.filter((lot) => lot.grams >= CRUMBS_G),
    );
  }
}
