import type { CalendarDate, CalendarTime } from '#core/cycle/calendar.ts';
import { addDays } from '#core/units/civil-date.ts';
import { formatInstant } from '#core/units/format-instant.ts';

/** Octets a line may have before it is folded (RFC 5545, 3.1). */
const LINE_OCTETS = 75;
const encoder = new TextEncoder();

/**
 * Dates as an iCalendar file (RFC 5545): CRLF, folded lines, escaped text. The same dates give the same bytes. Without a date
 * there is none: a calendar has at least one component (3.6).
 */
export function writeCalendar(dates: readonly CalendarDate[]): string {
  if (dates.length === 0) return '';
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Stagewright//Stagewright//EN',
    'CALSCALE:GREGORIAN',
    ...dates.flatMap(eventLines),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines({ id, writtenMs, title, category, time, place, says }: CalendarDate): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(id)}`,
    `DTSTAMP:${universal(writtenMs)}`,
    ...timeLines(time),
    `SUMMARY:${escaped(title)}`,
    `CATEGORIES:${escaped(category)}`,
    ...(place === undefined ? [] : [`LOCATION:${escaped(place)}`]),
    ...(says === undefined ? [] : [`DESCRIPTION:${escaped(says)}`]),
    // Whole days do not make a person unavailable for other dates.
    ...(time.is === 'days' ? ['TRANSP:TRANSPARENT'] : []),
    'END:VEVENT',
  ];
}

/** The end of whole days is the day after the last (RFC 5545, 3.6.1). */
function timeLines(time: CalendarTime): string[] {
  switch (time.is) {
    case 'days':
      return [`DTSTART;VALUE=DATE:${bare(time.from)}`, `DTEND;VALUE=DATE:${bare(addDays(time.until, 1))}`];
    case 'moment':
      return [`DTSTART:${universal(time.epochMs)}`, `DURATION:PT${time.minutes}M`];
    case 'clock':
      return [`DTSTART:${bare(time.date)}T${clockDigits(time.at)}`, `DURATION:PT${time.minutes}M`];
  }
}

/** "20270301T121400Z". */
function universal(epochMs: number): string {
  return `${formatInstant(epochMs, 0).slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}

function clockDigits(minutes: number): string {
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${pad(Math.floor(minutes / 60))}${pad(minutes % 60)}00`;
}

function bare(date: string): string {
  return date.replaceAll('-', '');
}

/** Text as a value (RFC 5545, 3.3.11): backslash, semicolon, comma and line end; control characters have no place in one. */
function escaped(text: string): string {
  const plain = text.replaceAll(/\r\n?/g, '\n').replaceAll(/[^\P{Cc}\n\t]/gu, '');
  return plain.replaceAll(/[\\;,]/g, (sign) => `\\${sign}`).replaceAll('\n', '\\n');
}

/** Folds at 75 octets, never inside a character (RFC 5545, 3.1). */
function folded(line: string): string {
  let [out, octets] = ['', 0];
  for (const character of line) {
    const size = encoder.encode(character).length;
    if (octets + size > LINE_OCTETS) {
      out += '\r\n ';
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return out;
}
