import {
  minutesOutLimits,
  ricePolicies,
  storageRule,
  type RicePolicy,
  type StorageClass,
} from '../tables/storage-clock.ts';
import type { SourceKey } from '../tables/sources.ts';
import type { Minutes } from '../units/quantities.ts';

export type StockPlace = 'fridge' | 'freezer' | 'cupboard' | 'room';

const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;

/** How long something keeps, and what its time is counted against. */
export interface ShelfLimit {
  /** Time out of the freezer until it is out; absent: no clock. */
  readonly hours?: number;
  readonly concern: 'safety' | 'quality';
  readonly countsMinutesOut: boolean;
  /** Places where the time stands still: the freezer, and the cupboard for a sealed tin. */
  readonly pausedIn: readonly StockPlace[];
  readonly freezerMonths?: number;
  readonly source: SourceKey;
}

/** The time something has had so far. A clock is a value: moving gives a new one. */
export interface ShelfClock {
  readonly limit: ShelfLimit;
  readonly place: StockPlace;
  readonly sinceMs: number;
  /** Counted time before `sinceMs`. */
  readonly agedMs: number;
  /** Minutes at room temperature before `sinceMs`, below and above 32 C. */
  readonly minutesOut: Minutes;
  readonly minutesOutHot: Minutes;
}

/** "out": unsafe, do not eat. "past its best": only no longer good. */
export type ShelfState = 'fresh' | 'use soon' | 'out' | 'past its best' | 'frozen' | 'no clock';

export interface ShelfReading {
  readonly state: ShelfState;
  /** When it will be out if it stays where it is, or went out; absent without a clock and while the clock stands still. */
  readonly useByMs?: number;
  readonly minutesOut: Minutes;
  /** What decided the state, for "why". */
  readonly reason: 'days' | 'minutes out' | 'frozen' | 'no clock';
}

/** The limit of a storage class; cooked rice goes by the chosen rule (BAT-31). */
export function shelfLimit(storage: StorageClass, rice: RicePolicy): ShelfLimit {
  const rule = storageRule(storage);
  const isRice = storage === 'cooked-rice';
  const hours = isRice ? ricePolicies[rice].hours : rule.fridgeDays && rule.fridgeDays.last * 24;
  return {
    ...(hours !== undefined && { hours }),
    concern: rule.concern,
    countsMinutesOut: rule.countsMinutesOut,
    pausedIn: rule.place === 'cupboard' && rule.concern === 'safety' ? ['freezer', 'cupboard'] : ['freezer'],
    ...(rule.freezerMonths !== undefined && { freezerMonths: rule.freezerMonths }),
    source: isRice ? ricePolicies[rice].source : rule.source,
  };
}

export function startClock(limit: ShelfLimit, place: StockPlace, atMs: number): ShelfClock {
  return { limit, place, sinceMs: atMs, agedMs: 0, minutesOut: 0, minutesOutHot: 0 };
}

/** What a move says about the time out of the fridge that it ends. */
export interface TimeOut {
  readonly minutesOut?: Minutes | undefined;
  readonly hot?: boolean | undefined;
}

/**
 * The clock after a move. Time in the freezer does not count, it resumes on thawing (BAT-33); minutes at room temperature add up
 * over all moves (BAT-34): as said, or as long as it stood there.
 */
export function moveClock(clock: ShelfClock, to: StockPlace, atMs: number, out: TimeOut = {}): ShelfClock {
  const stood = clock.place === 'room' ? Math.max(0, atMs - clock.sinceMs) / MINUTE_MS : 0;
  const minutes = out.minutesOut ?? stood;
  const hot = out.hot === true;
  return {
    ...clock,
    place: to,
    sinceMs: Math.max(atMs, clock.sinceMs),
    agedMs: agedAt(clock, atMs),
    minutesOut: clock.minutesOut + (hot ? 0 : minutes),
    minutesOutHot: clock.minutesOutHot + (hot ? minutes : 0),
  };
}

/** Counted time up to a moment. */
export function agedAt(clock: ShelfClock, atMs: number): number {
  if (clock.limit.pausedIn.includes(clock.place)) return clock.agedMs;
  return clock.agedMs + Math.max(0, atMs - clock.sinceMs);
}

/** How something stands at a moment. */
export function readClock(clock: ShelfClock, atMs: number): ShelfReading {
  const { limit } = clock;
  const standing = clock.place === 'room' ? Math.max(0, atMs - clock.sinceMs) / MINUTE_MS : 0;
  const minutesOut = clock.minutesOut + clock.minutesOutHot + standing;
  const share =
    (clock.minutesOut + standing) / minutesOutLimits.usual + clock.minutesOutHot / minutesOutLimits.hot;
  if (limit.countsMinutesOut && share >= 1) {
    const overMs = clock.place === 'room' ? (share - 1) * minutesOutLimits.usual * MINUTE_MS : atMs;
    return {
      state: 'out',
      useByMs: Math.max(clock.sinceMs, atMs - overMs),
      minutesOut,
      reason: 'minutes out',
    };
  }
  const days = readDays(clock, atMs, minutesOut);
  // Left standing, the minutes may run out before the days do.
  if (clock.place === 'room' && limit.countsMinutesOut && days.state !== 'out') {
    const endsMs = atMs + (1 - share) * minutesOutLimits.usual * MINUTE_MS;
    if (days.useByMs === undefined || endsMs < days.useByMs) {
      return { state: 'use soon', useByMs: endsMs, minutesOut, reason: 'minutes out' };
    }
  }
  return days;
}

function readDays(clock: ShelfClock, atMs: number, minutesOut: Minutes): ShelfReading {
  const { limit, place } = clock;
  const limitMs = (limit.hours ?? Number.POSITIVE_INFINITY) * HOUR_MS;
  const leftMs = limitMs - agedAt(clock, atMs);
  const useByMs = (limit.pausedIn.includes(place) ? clock.sinceMs : atMs) + leftMs;
  // Freezing does not bring back what was out before.
  if (leftMs <= 0) {
    return {
      state: limit.concern === 'safety' ? 'out' : 'past its best',
      useByMs,
      minutesOut,
      reason: 'days',
    };
  }
  if (place === 'freezer') return { state: 'frozen', minutesOut, reason: 'frozen' };
  if (limit.hours === undefined || limit.pausedIn.includes(place)) {
    return { state: 'no clock', minutesOut, reason: 'no clock' };
  }
  // The last quarter, two days at most. Common practice, no source.
  const soonMs = Math.min(limitMs / 4, 48 * HOUR_MS);
  return { state: leftMs <= soonMs ? 'use soon' : 'fresh', useByMs, minutesOut, reason: 'days' };
}
