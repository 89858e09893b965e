import { addDays, isoWeekday } from '../units/civil-date.ts';
import { LAST_CLOCK_MINUTE, parseClock } from '../units/clock.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import type { Ledger } from './ledger.ts';

/** Assumed until the athlete has said when a day usually begins and ends (common practice, no source). */
const ASSUMED = { wake: 7 * 60, sleep: 23 * 60 } as const;

/** Someone who wrote something this recently has not gone to bed in between. */
const STILL_UP_MINUTES: Minutes = 90;

const CIVIL_DAY: Minutes = 24 * 60;

/**
 * The prep day a local moment belongs to. A prep day runs from waking to sleep, so the hours after midnight still
 * belong to yesterday until the middle of the night: halfway from yesterday's sleep to today's waking. A fact of
 * today written before now says the new day has begun; a fact of yesterday in the last 90 minutes says it has not
 * ended, up to today's waking.
 */
export function prepDayOf(localDate: string, localMinutes: Minutes, ledger: Ledger): string {
  const yesterday = addDays(localDate, -1);
  const sleep = Math.min(LAST_CLOCK_MINUTE, wakeAndSleep(ledger, yesterday).sleep) - CIVIL_DAY;
  const wake = wakeAndSleep(ledger, localDate).wake;
  const middle = Math.max(0, Math.min(LAST_CLOCK_MINUTE - CIVIL_DAY, (sleep + Math.max(wake, sleep)) / 2));
  if (localMinutes >= Math.max(wake, middle)) return localDate;
  if (ledger.onDay(localDate).some((fact) => begins(fact.kind) && fact.minutes <= localMinutes))
    return localDate;
  if (localMinutes < middle) return yesterday;
  const last = ledger.onDay(yesterday).at(-1);
  const stillUp = last !== undefined && localMinutes + CIVIL_DAY - last.minutes <= STILL_UP_MINUTES;
  return stillUp ? yesterday : localDate;
}

/** Plans for tomorrow may be written tonight; only what is done with the body begins a day. */
function begins(kind: string): boolean {
  return kind === 'body-weighed' || kind === 'meal-eaten' || kind === 'set-done' || kind === 'cardio-done';
}

/** When a day is meant to begin and end: as shaped for that day, else as usual on that weekday, else assumed. */
export function wakeAndSleep(ledger: Ledger, day: string): { wake: ClockMinutes; sleep: ClockMinutes } {
  const weekday = isoWeekday(day);
  let usual: { wake: string; sleep: string } | undefined;
  let own: { wake: string; sleep: string } | undefined;
  for (const fact of ledger.of('day-shaped')) {
    const { scope } = fact.data;
    if (scope.of === 'day' && fact.day === day) own = fact.data;
    if (scope.of === 'usual' && scope.weekdays.includes(weekday)) usual = fact.data;
  }
  const shape = own ?? usual;
  return {
    wake: (shape && parseClock(shape.wake)) ?? ASSUMED.wake,
    sleep: (shape && parseClock(shape.sleep)) ?? ASSUMED.sleep,
  };
}
