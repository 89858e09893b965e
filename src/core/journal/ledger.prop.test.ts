import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryEntries } from '../../../test/journal/arbitrary-entries.ts';
import { REMOVED, type Entry } from './entry.ts';
import { byStamp } from './entry-order.ts';
import { inOrder, readFact, type Fact } from './fact.ts';
import { isKnownKind, kinds, type KnownKind } from './kinds/registry.ts';
import { createLedger, type Ledger } from './ledger.ts';
import { unite } from './union.ts';

const runs = { seed: 20270302, numRuns: 400 };
const knownKinds = Object.keys(kinds).filter(isKnownKind);

/** Everything a ledger answers, as plain data. */
function answers(ledger: Ledger) {
  return {
    byKind: Object.fromEntries(knownKinds.map((kind) => [kind, ledger.of(kind)])),
    byDay: Object.fromEntries(ledger.days().map((day) => [day, ledger.onDay(day)])),
    entries: ledger.entries(),
    histories: ledger.entries().map((entry) => ledger.history(entry.id)),
    inForce: ledger.entries().map((entry) => ledger.inForce(entry.id)),
    latestStamp: ledger.latestStamp,
  };
}

/** The plain slow way: walk every correction for every question. */
function slowFactsInForce(all: readonly Entry[]): Fact[] {
  const entries = unite(all).entries;
  const neighbours = (id: string) =>
    entries.flatMap((e) => (e.id === id && e.replaces ? [e.replaces] : e.replaces === id ? [e.id] : []));
  const facts: Fact[] = [];
  for (const entry of entries) {
    const thread = new Set([entry.id]);
    for (const id of thread) for (const next of neighbours(id)) thread.add(next);
    const versions = entries.filter((e) => thread.has(e.id)).sort(byStamp);
    const leaves = versions.filter((e) => !versions.some((o) => o.replaces === e.id && o.id !== e.id));
    const counts = (leaves.length > 0 ? leaves : versions).at(-1);
    if (counts?.id !== entry.id || entry.kind === REMOVED || !isKnownKind(entry.kind)) continue;
    const fact = readFact(entry, entry.kind);
    if (fact.ok) facts.push(fact.value);
  }
  return facts.sort(inOrder);
}

const ofKind = (facts: readonly Fact[], kind: KnownKind) => facts.filter((fact) => fact.kind === kind);

describe('the ledger', () => {
  test('[JRN-06] answers the same whatever the order, once or twice', () => {
    fc.assert(
      fc.property(arbitraryEntries, fc.infiniteStream(fc.nat()), (entries, chance) => {
        const shuffled = entries
          .map((entry) => ({ entry, at: chance.next().value }))
          .sort((a, b) => a.at - b.at)
          .map(({ entry }) => entry);
        const expected = answers(createLedger(unite(entries).entries));
        expect(answers(createLedger(shuffled))).toEqual(expected);
        expect(answers(createLedger([...shuffled, ...entries]))).toEqual(expected);
      }),
      runs,
    );
  });

  test('[JRN-06] answers the same when asked between single entries as when folded at once', () => {
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const growing = createLedger();
        for (const entry of entries) {
          growing.add([entry]);
          answers(growing);
        }
        expect(answers(growing)).toEqual(answers(createLedger(unite(entries).entries)));
      }),
      runs,
    );
  });

  test('[JRN-06] agrees with the plain slow way of working out what is in force', () => {
    let corrected = 0;
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const slow = slowFactsInForce(entries);
        const ledger = createLedger(entries);
        for (const kind of knownKinds) expect(ledger.of(kind)).toEqual(ofKind(slow, kind));
        corrected += ledger.entries().filter((entry) => !ledger.inForce(entry.id)).length;
      }),
      runs,
    );
    expect(corrected).toBeGreaterThan(500);
  });

  test('[JRN-06] arrays keep their identity while nothing in them changes', () => {
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const ledger = createLedger();
        for (const entry of entries) {
          const before = knownKinds.map((kind) => ledger.of(kind));
          ledger.add([entry]);
          for (const [i, kind] of knownKinds.entries()) {
            const after = ledger.of(kind);
            const same = JSON.stringify(after) === JSON.stringify(before[i]);
            if (same && ledger.problems.length === 0) expect(after).toBe(before[i]);
          }
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });
});
