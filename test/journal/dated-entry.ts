import type { Entry } from '#core/journal/entry.ts';
import { oneEntry } from './one-entry.ts';

/** An entry of a kind on a day, at a clock time of that day; each call stamps later than the one before. */
export function datedEntry(
  kind: string,
  data: Entry['data'],
  day = '2027-03-01',
  at = '08:00',
  replaces?: string,
): Entry {
  const more = replaces === undefined ? {} : { replaces };
  return oneEntry({ kind, data, day, at: `${day}T${at}:00+00:00`, ...more });
}
