import { signal } from '@preact/signals';
import type { ClockMinutes, Minutes } from '#core/units/quantities.ts';

const TICK_MS = 30_000;

/** The demo athlete lives at another time: how far that is from this machine's clock. */
let shiftMs = 0;

const ticking = signal(currentMs());

/** Epoch milliseconds, anew each half minute and whenever the tab comes back to the front. */
export const now: { readonly value: number; peek(): number } = ticking;

/** The moment itself, for stamping what is written. */
export function currentMs(): number {
  return Date.now() + shiftMs;
}

export function tick(): void {
  ticking.value = currentMs();
}

export function shiftClock(ms: number): void {
  shiftMs = ms;
  tick();
}

/** Starts the ticking; answers how to stop it. */
export function startClock(): () => void {
  const timer = setInterval(tick, TICK_MS);
  document.addEventListener('visibilitychange', tick);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', tick);
  };
}

/** Local minus UTC at a moment, by this machine's zone. */
export function offsetMinutesAt(epochMs: number): Minutes {
  return 0 - new Date(epochMs).getTimezoneOffset();
}

/** Local civil date and minutes since midnight. */
export function localTime(epochMs: number): { date: string; minutes: Minutes } {
  const local = new Date(epochMs + offsetMinutesAt(epochMs) * 60_000);
  return {
    date: local.toISOString().slice(0, 10),
    minutes: local.getUTCHours() * 60 + local.getUTCMinutes(),
  };
}

/** The moment of a clock time of a prep day: 1470 is half past midnight of the next civil day. */
export function momentOf(day: string, clockMinutes: ClockMinutes): number {
  const midnightUtc = Date.parse(`${day}T00:00:00Z`);
  const asIfUtc = midnightUtc + clockMinutes * 60_000;
  const first = asIfUtc - offsetMinutesAt(asIfUtc) * 60_000;
  // Once more: near a change of the clocks the first offset may be the other side's.
  return asIfUtc - offsetMinutesAt(first) * 60_000;
}

export function zoneName(): string {
  return new Intl.DateTimeFormat('en').resolvedOptions().timeZone || 'UTC';
}
