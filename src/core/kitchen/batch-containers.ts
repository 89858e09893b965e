import type { Problem } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import type { CookedBatch } from './cooked-batch.ts';
import { figure } from './figure.ts';
import { moveClock, startClock, type ShelfClock, type StockPlace, type TimeOut } from './shelf-life.ts';

/** The pan, or one packed portion. */
export interface Container {
  /** 0 is the pan. */
  readonly portion: number;
  readonly packedG: Grams;
  grams: Grams;
  /** Nutrients per gram against the batch's own per gram cooked: above 1 when water has left since. */
  strength: number;
  clock: ShelfClock;
}

/** From a moment on, a container's strength; kept so that a meal is counted as it was when eaten. */
export interface StrengthChange {
  readonly portion: number;
  readonly fromMs: number;
  readonly strength: number;
}

/** What has become of a batch. */
export interface BatchContainers {
  readonly batch: CookedBatch;
  readonly containers: Map<number, Container>;
  readonly strengths: StrengthChange[];
  packings: number;
}

const PAN = 0;
/** Less than a gram sticks to the box; half a gram more or less is the scale. */
const CRUMBS_G = 0.5;
/** A weight within a tenth of the computed one is water gained or lost; more is food. Common practice, no source. */
const WATER_SHARE = 0.1;

/** The pan as it comes off the stove; taken to go into the fridge within the time the hints say. */
export function openBatch(batch: CookedBatch): BatchContainers {
  const pan: Container = {
    portion: PAN,
    packedG: batch.balance.cookedG,
    grams: batch.balance.cookedG,
    strength: 1,
    clock: startClock(batch.storage.limit, 'fridge', batch.cookedAtMs),
  };
  return { batch, containers: new Map([[PAN, pan]]), strengths: [], packings: 0 };
}

/** Packs portions from the pan, numbered on. More than the pan holds empties it and is noted. */
export function pack(
  of: BatchContainers,
  portionsG: readonly Grams[],
  place: StockPlace,
  atMs: number,
  entry: string,
): Problem | undefined {
  const pan = of.containers.get(PAN);
  if (!pan) return undefined;
  let packedG = 0;
  for (const grams of portionsG) {
    of.packings += 1;
    packedG += grams;
    of.containers.set(of.packings, {
      portion: of.packings,
      packedG: grams,
      grams,
      strength: pan.strength,
      clock: moveClock(pan.clock, place, atMs),
    });
    if (pan.strength !== 1) of.strengths.push({ portion: of.packings, fromMs: atMs, strength: pan.strength });
  }
  const overG = packedG - pan.grams;
  pan.grams = Math.max(0, -overG);
  // A portion is rounded to the scale's step, so a few grams over are no fault.
  if (overG <= Math.max(portionsG.length, CRUMBS_G)) return undefined;
  return note(
    'kitchen/packed-more-than-there-was',
    entry,
    `${figure(packedG)} g of "${of.batch.name}" were packed, ${figure(overG)} g more than was in the pan.`,
    'Correct the portions, or weigh what there is.',
  );
}

/** Takes food out: from the portion named; without one from the pan, then from the portions in their order. */
export function takeFromBatch(
  of: BatchContainers,
  portion: number | undefined,
  grams: Grams,
  entry: string,
): Problem | undefined {
  const from = portion === undefined ? [...of.containers.values()] : [of.containers.get(portion)];
  let left = grams;
  for (const container of from) {
    if (!container || left <= 0) continue;
    const taken = Math.min(container.grams, left);
    container.grams -= taken;
    left -= taken;
    if (container.grams < CRUMBS_G) container.grams = 0;
  }
  if (left <= CRUMBS_G) return undefined;
  const place = portion === undefined ? '' : ` from portion ${portion}`;
  return note(
    'kitchen/more-eaten-than-counted',
    entry,
    `${figure(left)} g more of "${of.batch.name}" were taken${place} than was left.`,
    'Weigh what is left and count it again.',
  );
}

/**
 * Puts a container on the scale again. Near the computed weight the difference is water: the nutrients stay and the strength
 * changes (BAT-23). Further off, food has gone or come: the strength stays, and it is said.
 */
export function reweigh(
  of: BatchContainers,
  portion: number,
  leftG: Grams,
  atMs: number,
  entry: string,
): Problem | undefined {
  const container = of.containers.get(portion);
  if (!container) {
    return note(
      'kitchen/no-such-portion',
      entry,
      `"${of.batch.name}" has no portion ${portion}.`,
      'Correct the number of the portion.',
    );
  }
  const before = container.grams;
  container.grams = leftG;
  if (leftG > 0 && Math.abs(leftG - before) <= before * WATER_SHARE) {
    container.strength *= before / leftG;
    of.strengths.push({ portion, fromMs: atMs, strength: container.strength });
    return undefined;
  }
  if (Math.abs(leftG - before) <= CRUMBS_G) return undefined;
  const what = leftG < before ? 'less' : 'more';
  return note(
    'kitchen/weighed-otherwise',
    entry,
    `${figure(leftG)} g of "${of.batch.name}" were weighed, ${figure(Math.abs(leftG - before))} g ${what} than was counted: too much to be water.`,
    'If some was eaten and not logged, log it before this weighing; else nothing need be done.',
  );
}

export function moveContainer(
  of: BatchContainers,
  portion: number,
  to: 'fridge' | 'freezer' | 'room' | 'bin',
  atMs: number,
  out: TimeOut,
): void {
  const container = of.containers.get(portion);
  if (!container) return;
  if (to === 'bin') container.grams = 0;
  else container.clock = moveClock(container.clock, to, atMs, out);
}

/** Strength of a container at a moment: what a gram of it held then. */
export function strengthAt(of: BatchContainers, portion: number, atMs: number): number {
  let strength = 1;
  for (const change of of.strengths) {
    if (change.portion === portion && change.fromMs <= atMs) strength = change.strength;
  }
  return strength;
}

export function note(code: string, path: string, message: string, remedy: string): Problem {
  return { code, path, message, remedy };
}
