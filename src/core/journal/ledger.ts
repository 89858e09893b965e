import { safeParse } from 'valibot';
import type { Problem } from '../problems/problem.ts';
import { parseInstant } from '../units/instant.ts';
import { REMOVED, type Entry } from './entry.ts';
import { isKnownKind, kinds, type DataOf, type KnownKind } from './kinds/registry.ts';
import { createThreads } from './threads.ts';
import { upgrade } from './upgrades.ts';

/** An effective entry of a known kind, its data held against the kind's schema and upgraded to the newest version. */
export interface Fact<Kind extends KnownKind = KnownKind> {
  readonly entry: Entry;
  readonly kind: Kind;
  readonly day: string;
  /** Local minutes since midnight of `day`; past 1440 where the prep day ran over midnight. */
  readonly minutes: number;
  readonly epochMs: number;
  readonly data: DataOf<Kind>;
}

/**
 * The journal read: what is in force now, by kind, in the order it happened. Adding entries in any order, once or
 * twice, gives the same ledger (JRN-04). It holds no derived figure.
 */
export interface Ledger {
  /** Facts in force, ordered by day, then moment, then stamp. */
  of<Kind extends KnownKind>(kind: Kind): readonly Fact<Kind>[];
  /** The newest fact in force of a kind, by the order of `of`. */
  latest<Kind extends KnownKind>(kind: Kind): Fact<Kind> | undefined;
  /** All facts in force of one prep day, in order. */
  onDay(day: string): readonly Fact[];
  /** Every prep day that has a fact in force, ascending. */
  days(): readonly string[];
  /** Any entry ever written, superseded ones too. */
  entry(id: string): Entry | undefined;
  /** An entry of any time read as a fact, in force or not; undefined where it cannot be read. */
  fact(id: string): Fact | undefined;
  /** All versions of a fact, oldest first: the original, its corrections, its removal. */
  history(id: string): readonly Entry[];
  /** Whether this very entry is what counts now. */
  inForce(id: string): boolean;
  /** Every entry, sorted by stamp. */
  entries(): readonly Entry[];
  readonly latestStamp: string | undefined;
  readonly size: number;
  /** Entries kept but not readable: data that does not fit its kind, a version newer than this program. */
  readonly problems: readonly Problem[];
  /** Counts up with every entry that was new. */
  readonly revision: number;
}

export interface GrowingLedger extends Ledger {
  /** Takes entries in; those already there (same id) are passed over. Returns how many were new. */
  add(entries: Iterable<Entry>): number;
}

export function createLedger(entries: Iterable<Entry> = []): GrowingLedger {
  const byId = new Map<string, Entry>();
  const facts = new Map<string, Fact | undefined>();
  const idsByKind = new Map<string, string[]>();
  const idsByDay = new Map<string, string[]>();
  const sorted = new Map<string, readonly Fact[]>();
  const threads = createThreads(byId);
  const problems: Problem[] = [];
  let sortedEntries: Entry[] | undefined;
  let latestStamp: string | undefined;
  let revision = 0;

  function factOf(id: string): Fact | undefined {
    if (facts.has(id)) return facts.get(id);
    const entry = byId.get(id);
    const fact = entry && readFact(entry, problems);
    facts.set(id, fact);
    return fact;
  }

  function inOrderOf(key: string, ids: readonly string[] | undefined): readonly Fact[] {
    const known = sorted.get(key);
    if (known) return known;
    const found: Fact[] = [];
    for (const id of ids ?? []) {
      const fact = threads.inForce(id) ? factOf(id) : undefined;
      if (fact) found.push(fact);
    }
    sorted.set(key, found.sort(inOrder));
    return found;
  }

  // Only facts of the kind are indexed under it, so the narrowing holds.
  const of = <Kind extends KnownKind>(kind: Kind) =>
    inOrderOf(`kind ${kind}`, idsByKind.get(kind)) as readonly Fact<Kind>[];
  const onDay = (day: string) => inOrderOf(`day ${day}`, idsByDay.get(day));

  function take(entry: Entry): void {
    byId.set(entry.id, entry);
    threads.link(entry);
    append(idsByKind, entry.kind, entry.id);
    append(idsByDay, entry.day, entry.id);
    for (const version of threads.history(entry.id)) {
      sorted.delete(`kind ${version.kind}`);
      sorted.delete(`day ${version.day}`);
    }
    if (latestStamp === undefined || entry.stamp > latestStamp) latestStamp = entry.stamp;
  }

  const ledger: GrowingLedger = {
    add(more) {
      let added = 0;
      for (const entry of more) {
        if (byId.has(entry.id)) continue;
        take(entry);
        added += 1;
      }
      if (added > 0) {
        revision += 1;
        sortedEntries = undefined;
      }
      return added;
    },
    of,
    latest: (kind) => of(kind).at(-1),
    onDay,
    days: () => [...idsByDay.keys()].filter((day) => onDay(day).length > 0).sort(),
    entry: (id) => byId.get(id),
    fact: factOf,
    history: (id) => threads.history(id),
    inForce: (id) => threads.inForce(id),
    entries: () => {
      sortedEntries ??= [...byId.values()].sort(byStamp);
      return sortedEntries;
    },
    get latestStamp() {
      return latestStamp;
    },
    get size() {
      return byId.size;
    },
    get problems() {
      for (const id of byId.keys()) factOf(id);
      return problems;
    },
    get revision() {
      return revision;
    },
  };
  ledger.add(entries);
  return ledger;
}

function append(index: Map<string, string[]>, key: string, id: string): void {
  const list = index.get(key);
  if (list) list.push(id);
  else index.set(key, [id]);
}

/** Order of entries in a file and of versions in a history. */
export function byStamp(a: Entry, b: Entry): number {
  if (a.stamp !== b.stamp) return a.stamp < b.stamp ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

function inOrder(a: Fact, b: Fact): number {
  if (a.day !== b.day) return a.day < b.day ? -1 : 1;
  return a.epochMs - b.epochMs || byStamp(a.entry, b.entry);
}

function readFact(entry: Entry, problems: Problem[]): Fact | undefined {
  if (entry.kind === REMOVED || !isKnownKind(entry.kind)) return undefined;
  const moment = parseInstant(entry.at);
  const upgraded = upgrade(entry);
  if (!moment || !upgraded.ok) {
    problems.push(upgraded.ok ? unreadable(entry, 'its moment cannot be read') : upgraded.problem);
    return undefined;
  }
  const parsed = safeParse(kinds[entry.kind], upgraded.value);
  if (!parsed.success) {
    const issue = parsed.issues[0];
    const field = (issue.path ?? []).map((step) => String(step.key)).join('.');
    problems.push(unreadable(entry, `"${field}" does not fit`));
    return undefined;
  }
  const fact = {
    entry,
    kind: entry.kind,
    day: entry.day,
    minutes: moment.localMinutes + (moment.localDate > entry.day ? 1440 : 0),
    epochMs: moment.epochMs,
    data: parsed.output,
  };
  return fact as Fact;
}

function unreadable(entry: Entry, reason: string): Problem {
  return {
    code: 'journal/data-does-not-fit',
    path: entry.id,
    message: `The entry "${entry.kind}" of ${entry.day} is kept but not counted: ${reason}.`,
    remedy: 'Correct or remove it in the Journal.',
  };
}
