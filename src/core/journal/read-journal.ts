import { answered, refused, type Outcome, type Problem } from '../problems/problem.ts';
import type { Entry } from './entry.ts';
import { entryFault, isEntry, isPlain, MAX_DEPTH } from './entry-shape.ts';
import { byStamp } from './entry-order.ts';
import { sameEntry } from './same-entry.ts';
import { clashProblem, greater } from './union.ts';

/** A line longer than this is no entry: photographs are kept beside the journal, not in it. */
const MAX_LINE = 1_000_000;

/** Text in which a number could read as infinite: a three-digit exponent or three hundred digits in a row. */
const PERHAPS_INFINITE = /[eE]\+?\d{3}|\d{300}/;

export interface ReadJournal {
  /** One entry an id, sorted by stamp, then id. */
  readonly entries: readonly Entry[];
  /** Every damaged line, in the order of the file, `path` being "line N". */
  readonly problems: readonly Problem[];
  /** The line an entry stands on, counted from 1. */
  readonly lineOf: ReadonlyMap<string, number>;
  /** Lines passed over because the same entry stood above. */
  readonly repeated: number;
}

/**
 * Reads a journal file: JSON Lines, UTF-8, one entry a line. It never throws; what can be read is kept, and each
 * damaged line comes back as a problem with its place. A byte order mark, CRLF, empty lines and a missing last line
 * end are passed over. `undefined` among lines stands for one that is no UTF-8 text.
 */
export function readJournal(file: string | readonly (string | undefined)[]): ReadJournal {
  const lines = typeof file === 'string' ? file.split('\n') : file;
  const byId = new Map<string, Entry>();
  const lineOf = new Map<string, number>();
  const problems: Problem[] = [];
  let repeated = 0;
  for (let i = 0; i < lines.length; i++) {
    const line = i === 0 ? lines[i]?.replace(/^\uFEFF/, '') : lines[i];
    if (line !== undefined && line.trim() === '') continue;
    const read = readLine(line, i + 1);
    if (!read.ok) {
      problems.push(read.problem);
      continue;
    }
    const entry = read.value;
    const known = byId.get(entry.id);
    if (known) {
      if (sameEntry(known, entry)) repeated += 1;
      else problems.push({ ...clashProblem(known), path: `line ${i + 1}` });
    }
    const kept = known ? greater(known, entry) : entry;
    if (kept !== entry) continue;
    byId.set(entry.id, entry);
    lineOf.set(entry.id, i + 1);
  }
  return { entries: [...byId.values()].sort(byStamp), problems, lineOf, repeated };
}

function readLine(line: string | undefined, number: number): Outcome<Entry> {
  if (line === undefined) {
    return damaged('journal/not-text', number, 'is not UTF-8 text');
  }
  if (line.length > MAX_LINE) {
    return damaged('journal/line-too-long', number, `has more than ${MAX_LINE} characters`);
  }
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return damaged('journal/not-json', number, 'is not JSON');
  }
  if (mustBeWalked(line) && !isPlain(value)) {
    return damaged(
      'journal/not-plain',
      number,
      `has a number out of range or nests deeper than ${MAX_DEPTH} levels`,
    );
  }
  if (isEntry(value)) return answered(value);
  const fault = entryFault(value);
  if (!fault || fault.field === '') return damaged('journal/not-an-entry', number, 'is not an entry');
  return refused(
    'journal/not-an-entry',
    `line ${number}`,
    `Line ${number} was left out: its "${fault.field}" cannot be read.`,
    `Make "${fault.field}" ${fault.expected}, or take the line from an older copy of the file.`,
  );
}

/** Only lines with many brackets or with an extreme number can break the rule; the others need no second look. */
function mustBeWalked(line: string): boolean {
  let open = 0;
  for (let i = 0; i < line.length; i++) {
    const code = line.charCodeAt(i);
    if (code === 0x7b || code === 0x5b) open += 1;
  }
  return open > MAX_DEPTH || PERHAPS_INFINITE.test(line);
}

function damaged(code: string, number: number, what: string): Outcome<Entry> {
  return refused(
    code,
    `line ${number}`,
    `Line ${number} was left out: it ${what}.`,
    'Take the line from an older copy of the file, or delete it; all other lines are read.',
  );
}
