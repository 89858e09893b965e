import type { Problem } from '../problems/problem.ts';
import type { Entry } from './entry.ts';
import { byStamp, withInserted } from './entry-order.ts';
import { readFact, type Fact } from './fact.ts';
import { isKnownKind, type KnownKind } from './kinds/registry.ts';
import { sameEntry } from './same-entry.ts';
import { createShelves } from './shelves.ts';
import { readStamp } from './stamp.ts';
import { createThreads, type Threads } from './threads.ts';
import { clashProblem, greater } from './union.ts';

export type { Fact } from './fact.ts';

/**
 * The journal read: what is in force now, by kind, in the order it happened. Adding entries in any order, once or
 * twice, gives the same ledger (JRN-06). It holds no derived figure. Data is held against its kind when first asked
 * for; the arrays answered keep their identity for as long as nothing in them changes.
 */
export interface Ledger {
  /** Facts in force, ordered by day, then moment, then stamp. */
  of<Kind extends KnownKind>(kind: Kind): readonly Fact<Kind>[];
  /** The newest fact in force of a kind, by the order of `of`. */
  latest<Kind extends KnownKind>(kind: Kind): Fact<Kind> | undefined;
  /** All facts in force of one prep day, in order. */
  onDay(day: string): readonly Fact[];
  /** Every prep day that has an entry of a known kind in force, ascending. */
  days(): readonly string[];
  /** Any entry ever written, superseded ones too. */
  entry(id: string): Entry | undefined;
  /** An entry of any time read as a fact, in force or not; undefined where it cannot be read. */
  fact(id: string): Fact | undefined;
  /** All versions of a fact, oldest first: the original, its corrections, its removal. */
  history(id: string): readonly Entry[];
  /** Whether this very entry is what counts now. */
  inForce(id: string): boolean;
  /** Every entry, sorted by stamp, then id. */
  entries(): readonly Entry[];
  /** The greatest stamp that can be read. */
  readonly latestStamp: string | undefined;
  readonly size: number;
  /**
   * Entries in force that are kept but not counted (data that does not fit its kind, a version newer than this
   * program), and ids that stood for two entries. Reads every entry: for a check, not for a screen.
   */
  readonly problems: readonly Problem[];
  /** Counts up whenever something new arrived. */
  readonly revision: number;
}

export interface GrowingLedger extends Ledger {
  /** Takes entries in; those already there are passed over. Returns how many were new. */
  add(entries: Iterable<Entry>): number;
}

function factOf(entry: Entry | undefined): Fact | undefined {
  if (!entry || !isKnownKind(entry.kind)) return undefined;
  const read = readFact(entry, entry.kind);
  return read.ok ? read.value : undefined;
}

/** Up to so many new entries are put in their place one by one; more are sorted anew. */
const FEW = 32;

export function createLedger(entries: Iterable<Entry> = []): GrowingLedger {
  const index = createIndex();
  let revision = 0;
  const ledger: GrowingLedger = {
    add(more) {
      const added = index.add(more);
      if (added > 0) revision += 1;
      return added;
    },
    // Only facts of the kind are indexed under it, so the narrowing holds.
    of: <Kind extends KnownKind>(kind: Kind) => index.byKind.facts(kind) as readonly Fact<Kind>[],
    latest: (kind) => ledger.of(kind).at(-1),
    onDay: (day) => index.byDay.facts(day),
    days: () => index.days(),
    entry: (id) => index.byId.get(id),
    fact: (id) => factOf(index.byId.get(id)),
    history: (id) => index.threads().history(id),
    inForce: (id) => index.threads().inForce(id),
    entries: () => index.sorted(),
    get latestStamp() {
      return index.latestStamp();
    },
    get size() {
      return index.byId.size;
    },
    get problems() {
      return index.problems();
    },
    get revision() {
      return revision;
    },
  };
  ledger.add(entries);
  return ledger;
}

/** A stamp that cannot be read is never the latest. */
const stampRead = (entry: Entry) => readStamp(entry.stamp) !== undefined;

type Reading = ReturnType<typeof readFact>;

/** Reads entries as facts when first asked, and remembers. */
function createReader(byId: ReadonlyMap<string, Entry>, inForce: (id: string) => boolean) {
  const read = new Map<string, Reading>();
  function readOf(id: string): Reading | undefined {
    const known = read.get(id);
    if (known) return known;
    const entry = byId.get(id);
    if (!entry || !isKnownKind(entry.kind)) return undefined;
    const outcome = readFact(entry, entry.kind);
    read.set(id, outcome);
    return outcome;
  }
  return {
    factInForce(this: void, id: string): Fact | undefined {
      const outcome = inForce(id) ? readOf(id) : undefined;
      return outcome?.ok ? outcome.value : undefined;
    },
    problems(): Problem[] {
      const found: Problem[] = [];
      for (const id of byId.keys()) {
        const outcome = inForce(id) ? readOf(id) : undefined;
        if (outcome && !outcome.ok) found.push(outcome.problem);
      }
      return found;
    },
    clear: () => read.clear(),
  };
}

/** Days that have an entry of a known kind in force, ascending. */
function daysCounted(
  byDay: ReturnType<typeof createShelves>,
  byId: ReadonlyMap<string, Entry>,
  threads: Threads,
): readonly string[] {
  const counts = (id: string) => isKnownKind(byId.get(id)?.kind ?? '') && threads.inForce(id);
  return [...byDay.keys()].filter((day) => byDay.ids(day).some(counts)).sort();
}

/** What the ledger remembers to answer quickly; all of it follows from the entries. */
function createIndex() {
  const byId = new Map<string, Entry>();
  const reader = createReader(byId, (id) => threads.inForce(id));
  const clashes = new Map<string, Problem>();
  const byKind = createShelves((fact) => fact.kind, reader.factInForce);
  const byDay = createShelves((fact) => fact.day, reader.factInForce);
  let threads: Threads = createThreads(byId);
  let sorted: readonly Entry[] | undefined;
  let days: readonly string[] | undefined;

  function shelve(entry: Entry, few: boolean): void {
    byId.set(entry.id, entry);
    threads.link(entry);
    byKind.put(entry.kind, entry.id);
    byDay.put(entry.day, entry.id);
    days = undefined;
    const versions = threads.joined(entry.id) ? threads.history(entry.id) : [entry];
    if (few) settle(entry, versions);
    else unsettle(versions);
  }

  function settle(entry: Entry, versions: readonly Entry[]): void {
    const counting = versions.find((version) => threads.inForce(version.id));
    const counts = counting && reader.factInForce(counting.id);
    byKind.resettle(new Set(versions.map((version) => version.kind)), versions, counts);
    byDay.resettle(new Set(versions.map((version) => version.day)), versions, counts);
    sorted = sorted && withInserted(sorted, entry, byStamp);
  }

  function unsettle(versions: readonly Entry[]): void {
    for (const { kind, day } of versions) {
      byKind.forget(kind);
      byDay.forget(day);
    }
    sorted = undefined;
  }

  /** Another entry took the place of one with the same id: its old links cannot be undone, so all begins anew. */
  function rebuild(): void {
    threads = createThreads(byId);
    for (const shelves of [byKind, byDay]) shelves.clear();
    reader.clear();
    for (const entry of byId.values()) shelve(entry, false);
  }

  return {
    byId,
    byKind,
    byDay,
    threads: () => threads,
    add(more: Iterable<Entry>): number {
      const list = [...more];
      let [added, replacedOne] = [0, false];
      for (const entry of list) {
        const known = byId.get(entry.id);
        if (known && sameEntry(known, entry)) continue;
        if (!known) {
          shelve(entry, list.length <= FEW);
          added += 1;
          continue;
        }
        const kept = greater(known, entry);
        clashes.set(entry.id, clashProblem(kept));
        replacedOne ||= kept !== known;
        if (kept !== known) byId.set(entry.id, kept);
        added += kept === known ? 0 : 1;
      }
      if (replacedOne) rebuild();
      return added;
    },
    sorted: () => (sorted ??= [...byId.values()].sort(byStamp)),
    days: () => (days ??= daysCounted(byDay, byId, threads)),
    latestStamp: () => (sorted ??= [...byId.values()].sort(byStamp)).findLast(stampRead)?.stamp,
    problems: () => [...clashes.values(), ...reader.problems()],
  };
}
