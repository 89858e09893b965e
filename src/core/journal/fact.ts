import { readShape } from '../problems/from-issues.ts';
import { refused, type Outcome } from '../problems/problem.ts';
import { daysBetween } from '../units/civil-date.ts';
import { parseInstant } from '../units/instant.ts';
import type { ClockMinutes } from '../units/quantities.ts';
import type { Entry } from './entry.ts';
import { byStamp } from './entry-order.ts';
import { kinds, type DataOf, type KnownKind } from './kinds/registry.ts';
import { upgrade } from './upgrades.ts';

/** An effective entry of a known kind, its data held against the kind's schema and upgraded to the newest version. */
export interface Fact<Kind extends KnownKind = KnownKind> {
  readonly entry: Entry;
  readonly kind: Kind;
  readonly day: string;
  /** Local minutes since midnight of `day`; past 1440 where the prep day ran over midnight. */
  readonly minutes: ClockMinutes;
  readonly epochMs: number;
  readonly data: DataOf<Kind>;
}

/** Reads an entry of a known kind. What does not fit is kept in the journal and answered as a problem. */
export function readFact(entry: Entry, kind: KnownKind): Outcome<Fact> {
  const moment = parseInstant(entry.at);
  if (!moment) return doesNotFit(entry, 'Its moment cannot be read.', 'Give it a moment with an offset.');
  const upgraded = upgrade(entry);
  if (!upgraded.ok) return upgraded;
  const shape = readShape(kinds[kind], upgraded.value, 'journal');
  if (!shape.ok) return doesNotFit(entry, shape.problem.message, shape.problem.remedy);
  const fact = {
    entry,
    kind,
    day: entry.day,
    minutes: moment.localMinutes + 1440 * daysBetween(entry.day, moment.localDate),
    epochMs: moment.epochMs,
    data: shape.value,
  };
  // The schema of `kind` has just been held against the data; the compiler cannot follow the pairing.
  return { ok: true, value: fact as Fact };
}

/** Order of facts: by day, then moment, then stamp. */
export function inOrder(a: Fact, b: Fact): number {
  if (a.day !== b.day) return a.day < b.day ? -1 : 1;
  return a.epochMs - b.epochMs || byStamp(a.entry, b.entry);
}

function doesNotFit(entry: Entry, fault: string, mend: string): Outcome<Fact> {
  return refused(
    'journal/data-does-not-fit',
    entry.id,
    `The entry "${entry.kind}" of ${entry.day} is kept but not counted. ${fault}`,
    `${mend} Correct or remove the entry in the Journal.`,
  );
}
