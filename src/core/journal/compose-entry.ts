import { readShape } from '../problems/from-issues.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { parseDate } from '../units/civil-date.ts';
import { formatInstant } from '../units/format-instant.ts';
import type { Minutes } from '../units/quantities.ts';
import type { Entry } from './entry.ts';
import { isKnownKind, kinds } from './kinds/registry.ts';
import { nextStamp } from './stamp.ts';
import { ulid } from './ulid.ts';
import { newestVersion } from './upgrades.ts';

/** Everything a new entry is made of. Clock and chance are the caller's. */
export interface EntryDraft {
  readonly kind: string;
  readonly data: unknown;
  /** Prep day "YYYY-MM-DD". */
  readonly day: string;
  /** When it happened, epoch milliseconds; absent: now. */
  readonly atMs?: number;
  /** What the clock says. */
  readonly nowMs: number;
  /** Local minus UTC at `atMs`. */
  readonly offsetMinutes: Minutes;
  /** IANA time zone name. */
  readonly zone: string;
  readonly device: string;
  /** Who stamps: unique to this device and tab, 4 to 16 of a-z and 0-9. */
  readonly writer: string;
  /** 10 random bytes for the name. */
  readonly random: Uint8Array;
  /** The greatest stamp in the journal. */
  readonly latestStamp: string | undefined;
  readonly replaces?: string;
}

/**
 * A new entry, held against its kind before it may be written: what is read in leniently is never written so.
 * Refuses unknown kinds and data that does not fit, with the field named.
 */
export function composeEntry(draft: EntryDraft): Outcome<Entry> {
  if (!isKnownKind(draft.kind)) {
    return refused(
      'journal/unknown-kind',
      'kind',
      `"${draft.kind}" is not a kind of entry this version can write.`,
      'Use one of the kinds listed in the journal specification.',
    );
  }
  if (parseDate(draft.day) === undefined) {
    return refused(
      'journal/day-not-a-date',
      'day',
      `"${draft.day}" is not a date in the calendar.`,
      'Give the prep day as "YYYY-MM-DD".',
    );
  }
  const data = readShape(kinds[draft.kind], draft.data, 'journal');
  if (!data.ok) return data;
  const version = newestVersion(draft.kind);
  return answered({
    id: ulid(draft.nowMs, draft.random),
    stamp: nextStamp(draft.latestStamp, draft.nowMs, draft.writer),
    device: draft.device,
    kind: draft.kind,
    ...(version > 1 ? { version } : {}),
    day: draft.day,
    at: formatInstant(draft.atMs ?? draft.nowMs, draft.offsetMinutes),
    zone: draft.zone,
    data: data.value,
    ...(draft.replaces === undefined ? {} : { replaces: draft.replaces }),
  });
}
