import { formatDate } from '#core/units/civil-date.ts';
import type { DayNumber } from '#core/units/quantities.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
const WEEKDAYS = ['Thu', 'Fri', 'Sat', 'Sun', 'Mon', 'Tue', 'Wed'] as const;

/** "Thu 12 Mar": a day as people say it. Day number 0 was a Thursday. */
export function nameDay(day: DayNumber): string {
  return `${WEEKDAYS[((day % 7) + 7) % 7] ?? ''} ${nameShortDay(day)}`;
}

/** "12 Mar", for axes. */
export function nameShortDay(day: DayNumber): string {
  const date = formatDate(Math.round(day));
  return `${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1] ?? ''}`;
}
