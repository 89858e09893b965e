import { parseDate } from '../units/civil-date.ts';
import { parseInstant } from '../units/instant.ts';
import type { Entry } from './entry.ts';

/** Deeper nesting than any kind needs; a bomb of brackets is refused before anything walks it. */
export const MAX_DEPTH = 32;

const PRINTABLE = /^[\x21-\x7e]{1,100}$/;

interface Fault {
  readonly field: string;
  readonly expected: string;
}

type Check = (value: unknown) => boolean;

const isText: Check = (value) => typeof value === 'string' && value.length >= 1 && value.length <= 100;
const isPrintable: Check = (value) => typeof value === 'string' && PRINTABLE.test(value);

/** Field, what it must be, and whether it may be absent. Written out by hand: it runs once for every line kept. */
const fields: readonly (readonly [field: string, expected: string, fits: Check, optional?: true])[] = [
  ['id', 'a name of 1 to 100 printable characters without spaces', isPrintable],
  ['stamp', 'a stamp of 1 to 100 printable characters without spaces', isPrintable],
  ['device', 'the name of the device that wrote it', isText],
  ['kind', 'a kind such as "meal-eaten"', isPrintable],
  ['version', 'a whole number from 1', (v) => Number.isSafeInteger(v) && Number(v) >= 1, true],
  ['day', 'a date "YYYY-MM-DD" in the calendar', (v) => typeof v === 'string' && parseDate(v) !== undefined],
  [
    'at',
    'a moment such as "2027-03-01T12:14:00+01:00"',
    (v) => typeof v === 'string' && parseInstant(v) !== undefined,
  ],
  ['zone', 'a time zone name such as "Europe/Lisbon"', isText],
  ['data', 'an object', isRecord],
  ['replaces', 'the id of the entry it corrects', isPrintable, true],
];

/** The first thing that keeps a value from being an entry; undefined where it is one. Unknown fields are kept. */
export function entryFault(value: unknown): Fault | undefined {
  if (!isRecord(value)) return { field: '', expected: 'an object' };
  for (const [field, expected, fits, optional] of fields) {
    const found = Object.hasOwn(value, field) ? value[field] : undefined;
    if (found === undefined && optional) continue;
    if (!fits(found)) return { field, expected };
  }
  return undefined;
}

export function isEntry(value: unknown): value is Entry {
  return entryFault(value) === undefined;
}

/** Whether every number is finite (text such as 1e999 reads as infinite) and nothing nests deeper than allowed. */
export function isPlain(value: unknown, depthLeft = MAX_DEPTH): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  if (depthLeft === 0) return false;
  for (const part of Object.values(value)) if (!isPlain(part, depthLeft - 1)) return false;
  return true;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
