import { formatDate } from './civil-date.ts';
import type { Minutes } from './quantities.ts';

/** RFC 3339 text of a moment at an offset from UTC, to the second: "2027-03-01T12:14:00+01:00". */
export function formatInstant(epochMs: number, offsetMinutes: Minutes): string {
  const local = epochMs + offsetMinutes * 60_000;
  const day = Math.floor(local / 86_400_000);
  const seconds = Math.floor((local - day * 86_400_000) / 1000);
  const pad = (n: number) => String(n).padStart(2, '0');
  const time = `${pad(Math.floor(seconds / 3600))}:${pad(Math.floor(seconds / 60) % 60)}:${pad(seconds % 60)}`;
  const absolute = Math.abs(offsetMinutes);
  const zone = `${offsetMinutes < 0 ? '-' : '+'}${pad(Math.floor(absolute / 60))}:${pad(absolute % 60)}`;
  return `${formatDate(day)}T${time}${zone}`;
}

/** UTC text to the millisecond: "2027-03-01T11:14:00.123Z". Texts of the same length sort as the moments do. */
export function formatUtc(epochMs: number): string {
  const ms = ((epochMs % 1000) + 1000) % 1000;
  return `${formatInstant(epochMs, 0).slice(0, 19)}.${String(ms).padStart(3, '0')}Z`;
}
