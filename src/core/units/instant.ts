import { parseDate } from './civil-date.ts';
import type { Minutes } from './quantities.ts';

const RFC3339 =
  /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d):([0-5]\d)(?:\.(\d{1,3}))?(Z|[+-]\d{2}:\d{2})$/;

/** A moment written with its local time: "2027-03-01T12:14:00+01:00" (RFC 3339). */
export interface Instant {
  readonly epochMs: number;
  readonly localDate: string;
  readonly localMinutes: Minutes;
  readonly offsetMinutes: Minutes;
}

/** Reads an RFC 3339 moment; undefined where the text is none. Seconds above 59 do not occur here. */
export function parseInstant(text: string): Instant | undefined {
  const match = RFC3339.exec(text);
  if (!match) return undefined;
  const [, date = '', hours, minutes, seconds, fraction = '0', zone = 'Z'] = match;
  const dayNumber = parseDate(date);
  const offsetMinutes = offsetOf(zone);
  if (dayNumber === undefined || offsetMinutes === undefined) return undefined;
  const localMinutes = Number(hours) * 60 + Number(minutes);
  const ms = Number(fraction.padEnd(3, '0'));
  const epochMs = (dayNumber * 1440 + localMinutes - offsetMinutes) * 60_000 + Number(seconds) * 1000 + ms;
  return { epochMs, localDate: date, localMinutes, offsetMinutes };
}

function offsetOf(zone: string): Minutes | undefined {
  if (zone === 'Z') return 0;
  const minutes = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(4, 6));
  if (minutes > 14 * 60 || Number(zone.slice(4, 6)) > 59) return undefined;
  return zone.startsWith('-') ? -minutes : minutes;
}
