import { randomStream } from '../random/random-stream.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { readShape } from '../problems/from-issues.ts';
import { parseDate } from '../units/civil-date.ts';
import { formatInstant } from '../units/format-instant.ts';
import { parseInstant } from '../units/instant.ts';
import type { ClockMinutes } from '../units/quantities.ts';
import type { Entry } from './entry.ts';
import { isKnownKind, kinds } from './kinds/registry.ts';
import { writeStamp } from './stamp.ts';
import { ulid } from './ulid.ts';
import { newestVersion } from './upgrades.ts';

/** A fact read from a file of another program: no device has written it yet. */
export interface ForeignFact {
  readonly kind: string;
  readonly day: string;
  /** A moment (RFC 3339), where the file has one. */
  readonly at?: string;
  /** Else a clock time of the day; else it stands at noon. */
  readonly clock?: ClockMinutes;
  readonly zone?: string;
  readonly data: unknown;
}

const NOON: ClockMinutes = 720;

/**
 * An entry of a foreign fact, held against its kind. Name and stamp follow from what it says alone, so that taking the
 * same file in twice, on any device, adds nothing. `place` is where in the file it stands;
 * `twin` counts facts of the file that say just the same, so that two glasses of water stay two.
 */
export function importedEntry(fact: ForeignFact, place: string, twin = 0): Outcome<Entry> {
  const { kind, day } = fact;
  if (!isKnownKind(kind)) {
    return refused(
      'journal/unknown-kind',
      place,
      `"${kind}" in ${place} is not a kind of entry known here.`,
      'Give each row a known kind in the column "kind", or name one with --kind.',
    );
  }
  const dayNumber = parseDate(day);
  if (dayNumber === undefined) {
    return refused(
      'journal/day-not-a-date',
      place,
      `The day "${day}" in ${place} is not a date in the calendar.`,
      'Give the prep day as "YYYY-MM-DD".',
    );
  }
  const at = fact.at ?? formatInstant((dayNumber * 1440 + (fact.clock ?? NOON)) * 60_000, 0);
  const epochMs = parseInstant(at)?.epochMs;
  if (epochMs === undefined) {
    return refused(
      'journal/not-an-entry',
      place,
      `The "at" in ${place} cannot be read.`,
      'Make it a moment such as "2027-03-01T12:14:00+01:00", or leave it out.',
    );
  }
  const shape = readShape(kinds[kind], fact.data, 'journal');
  if (!shape.ok) return { ok: false, problem: { ...shape.problem, path: `${place}, ${shape.problem.path}` } };
  const version = newestVersion(kind);
  return answered({
    id: ulid(epochMs, chanceOf(JSON.stringify([kind, day, at, shape.value, twin]))),
    stamp: writeStamp({ epochMs, counter: 0, writer: 'imported' }),
    device: 'imported',
    kind,
    ...(version > 1 ? { version } : {}),
    day,
    at,
    zone: fact.zone ?? 'UTC',
    data: shape.value,
  });
}

/** Ten bytes that follow from the text alone. */
function chanceOf(text: string): Uint8Array {
  const streams = ['a', 'b', 'c'].map((name) => randomStream(0, `journal/imported/${name}/${text}`));
  return Uint8Array.from({ length: 10 }, (_, i) => streams[i % streams.length]?.integer(256) ?? 0);
}
