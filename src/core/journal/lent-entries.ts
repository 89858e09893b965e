import type { Entry } from './entry.ts';
import type { LentPart } from './kinds/lending.ts';
import { type DataOf, isKnownKind, type KnownKind } from './kinds/registry.ts';
import type { Ledger } from './ledger.ts';

export type Loan = DataOf<'copy-lent'>;

/** What a kind belongs to; a kind without a part stays at home, and so does every kind this version does not know. */
const PARTS: Readonly<Record<KnownKind, readonly LentPart[]>> = {
  'athlete-described': ['body', 'food', 'training', 'course', 'health'],
  // Free words and pictures may show more than was meant; what was removed goes with what it removes.
  'note-written': [],
  'photo-taken': [],
  'entry-removed': [],
  'copy-lent': [],
  'body-weighed': ['body', 'course'],
  'folds-measured': ['body', 'course'],
  'girths-measured': ['body', 'course'],
  'body-fat-measured': ['body', 'course'],
  'intake-totalled': ['food', 'course'],
  'day-closed': ['food', 'course'],
  'cycle-noted': ['health'],
  'target-set': ['food', 'course'],
  'day-shaped': ['food', 'training', 'course'],
  'plan-wished': ['food'],
  'plan-adopted': ['food'],
  'meal-eaten': ['food'],
  'meal-skipped': ['food'],
  'water-drunk': ['food'],
  'food-defined': ['food'],
  'food-preferred': ['food'],
  'container-weighed': ['food'],
  'recipe-defined': ['food'],
  'batch-cooked': ['food'],
  'batch-portioned': ['food'],
  'batch-reweighed': ['food'],
  'portion-moved': ['food'],
  'stock-bought': ['food'],
  'stock-counted': ['food'],
  'stock-moved': ['food'],
  'stock-binned': ['food'],
  'rice-rule-chosen': ['food'],
  'week-wished': ['food'],
  'week-adopted': ['food'],
  'week-kept': ['food'],
  'pack-known': ['food'],
  'exercise-described': ['training'],
  'machine-described': ['training'],
  'implement-described': ['training'],
  'weights-counted': ['training'],
  'session-planned': ['training'],
  'session-begun': ['training'],
  'session-ended': ['training'],
  'session-reordered': ['training'],
  'exercise-substituted': ['training'],
  'exercise-added': ['training'],
  'exercise-dropped': ['training'],
  'set-done': ['training'],
  'set-skipped': ['training'],
  'cardio-done': ['training', 'course'],
  'pain-noted': ['training', 'health'],
  'show-set': ['course'],
  'preparation-begun': ['course', 'training'],
  'course-adopted': ['course'],
  'stretch-planned': ['course'],
  'correction-accepted': ['course'],
  'check-in-closed': ['course'],
  'event-dated': ['course'],
  'rehearsal-judged': ['course'],
  'show-day-timed': ['course'],
  'stage-moved': ['course'],
  'show-task-done': ['course'],
  'thing-packed': ['course'],
  'way-back-adopted': ['course'],
  'supplement-defined': ['health'],
  'regimen-set': ['health'],
  'supplement-taken': ['health'],
  'supplement-skipped': ['health'],
  'supplement-counted': ['health'],
  'supplement-bought': ['health'],
  'medicine-declared': ['health'],
  'draw-planned': ['health'],
  'blood-drawn': ['health'],
  'feeling-noted': ['health'],
};

/** Measured, eaten or done on its day. All other kinds stand until the next word about the same thing. */
const OF_A_DAY: ReadonlySet<string> = new Set<KnownKind>([
  'body-weighed',
  'folds-measured',
  'girths-measured',
  'body-fat-measured',
  'intake-totalled',
  'day-closed',
  'cycle-noted',
  'plan-wished',
  'plan-adopted',
  'meal-eaten',
  'meal-skipped',
  'water-drunk',
  'session-begun',
  'session-ended',
  'session-reordered',
  'exercise-substituted',
  'exercise-added',
  'exercise-dropped',
  'set-done',
  'set-skipped',
  'cardio-done',
  'pain-noted',
  'check-in-closed',
  'correction-accepted',
  'supplement-taken',
  'supplement-skipped',
  'blood-drawn',
  'feeling-noted',
]);

/** Of every loan the last word, in the order in which they were first lent. */
export function loansOf(ledger: Ledger): readonly Loan[] {
  return [...new Map(ledger.of('copy-lent').map(({ data }) => [data.loan, data])).values()];
}

/**
 * The entries that a loan lets be read (SYN-24), sorted as the journal is: the chosen parts with their corrections and
 * removals, and the loan itself.
 */
export function lentEntries(ledger: Ledger, loan: Loan): readonly Entry[] {
  const entries = ledger.entries();
  // A fact goes with all its versions: a correction that moved it to an earlier day is one of what was lent.
  const lent = new Set(entries.filter((entry) => goes(entry, loan)).map((entry) => firstOf(ledger, entry)));
  return entries.filter((entry) => lent.has(firstOf(ledger, entry)));
}

function goes(entry: Entry, { loan, parts, since }: Loan): boolean {
  if (entry.kind === 'copy-lent') return entry.data['loan'] === loan;
  if (!isKnownKind(entry.kind) || !PARTS[entry.kind].some((part) => parts.includes(part))) return false;
  return since === undefined || !OF_A_DAY.has(entry.kind) || entry.day >= since;
}

/** The entry with which a fact began. */
function firstOf(ledger: Ledger, entry: Entry): string {
  return ledger.history(entry.id)[0]?.id ?? entry.id;
}
