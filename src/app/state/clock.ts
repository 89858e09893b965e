import { computed, type ReadonlySignal } from '@preact/signals';
import { prepDayOf } from '#core/journal/prep-day.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { localTime, now } from './moments.ts';
import { ledger } from './ledger.ts';

export { now, offsetMinutesAt, momentOf } from './moments.ts';

/** The prep day it is: after midnight still yesterday, until the middle of the night (JRN-20). */
export const today: ReadonlySignal<string> = computed(() => {
  const { date, minutes } = localTime(now.value);
  return prepDayOf(date, minutes, ledger.value);
});

/** Minutes since midnight of `today`; 1470 is half past midnight of the same prep day. */
export const nowClock: ReadonlySignal<ClockMinutes> = computed(() => {
  const { date, minutes } = localTime(now.value);
  return minutes + daysBetween(today.value, date) * 1440;
});
