import type { DayNumber } from './quantities.ts';

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * Day number of a civil date "YYYY-MM-DD" (0 is 1970-01-01), or undefined where there is no such date.
 * Algorithm: Howard Hinnant, "chrono-compatible low-level date algorithms" (days_from_civil), public domain.
 */
export function parseDate(text: string): DayNumber | undefined {
  const match = ISO.exec(text);
  if (!match) return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || day < 1) return undefined;
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  const number = era * 146097 + dayOfEra - 719468;
  return formatDate(number) === text ? number : undefined;
}

/** "YYYY-MM-DD" of a day number (civil_from_days of the same source). */
export function formatDate(dayNumber: DayNumber): string {
  const z = dayNumber + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const pad = (n: number, width: number) => String(n).padStart(width, '0');
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}

/** The date so many days later (or earlier). The text must be a date: it has been checked at the journal's door. */
export function addDays(date: string, days: number): string {
  return formatDate(requireDate(date) + days);
}

/** Whole days from one date to another; positive when `to` is later. */
export function daysBetween(from: string, to: string): number {
  return requireDate(to) - requireDate(from);
}

/** 1 Monday to 7 Sunday (ISO 8601). */
export function isoWeekday(date: string): number {
  return ((((requireDate(date) + 3) % 7) + 7) % 7) + 1;
}

function requireDate(text: string): DayNumber {
  const number = parseDate(text);
  if (number === undefined) throw new RangeError(`not a date: ${text}`);
  return number;
}
