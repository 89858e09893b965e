import { daysBetween, isoWeekday } from '../units/civil-date.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "Thursday 4 March". */
export function dateWords(date: string): string {
  return `${WEEKDAYS[isoWeekday(date) - 1] ?? ''} ${dayAndMonth(date)}`;
}

/** "4 March". */
export function dayAndMonth(date: string): string {
  return `${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1] ?? ''}`;
}

/** Weeks out, as the trade counts them: "8 weeks 2 days out", "show day", "3 days after the show". */
export function weeksOut(from: string, show: string): string {
  const days = daysBetween(from, show);
  if (days === 0) return 'show day';
  return days > 0 ? `${weeksAndDays(days)} out` : `${weeksAndDays(-days)} after the show`;
}

/** "8 weeks 2 days", "5 days". */
export function weeksAndDays(days: number): string {
  const weeks = Math.floor(days / 7);
  const rest = days - weeks * 7;
  const parts = [counted(weeks, 'week'), counted(rest, 'day')].filter((part) => part !== '');
  return parts.join(' ');
}

function counted(count: number, word: string): string {
  return count === 0 ? '' : `${count} ${word}${count === 1 ? '' : 's'}`;
}
