import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryEntries } from '../../../test/journal/arbitrary-entries.ts';
import { canonicalLine } from './canonical-line.ts';
import type { Entry } from './entry.ts';
import { readJournal } from './read-journal.ts';
import { unite } from './union.ts';
import { writeJournal } from './write-journal.ts';

const runs = { seed: 20270301, numRuns: 300 };
const merged = (...journals: readonly (readonly Entry[])[]) => writeJournal(unite(...journals).entries);

describe('the union of journals', () => {
  test('[JRN-05] is commutative to the byte', () => {
    fc.assert(
      fc.property(arbitraryEntries, arbitraryEntries, (a, b) => {
        expect(merged(a, b)).toBe(merged(b, a));
      }),
      runs,
    );
  });

  test('[JRN-05] is associative to the byte', () => {
    fc.assert(
      fc.property(arbitraryEntries, arbitraryEntries, arbitraryEntries, (a, b, c) => {
        const left = merged(unite(a, b).entries, c);
        expect(left).toBe(merged(a, unite(b, c).entries));
        expect(left).toBe(merged(c, a, b));
      }),
      runs,
    );
  });

  test('[JRN-05] is idempotent to the byte', () => {
    fc.assert(
      fc.property(arbitraryEntries, (a) => {
        expect(merged(a, a)).toBe(merged(a));
        expect(merged(unite(a).entries, a)).toBe(merged(a));
      }),
      runs,
    );
  });

  test('[JRN-05] names each id that stood for two entries, and the runs above had some', () => {
    let clashes = 0;
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const texts = new Map<string, Set<string>>();
        for (const entry of entries) {
          texts.set(entry.id, (texts.get(entry.id) ?? new Set()).add(canonicalLine(entry)));
        }
        const twofold = [...texts].filter(([, found]) => found.size > 1).map(([id]) => id);
        clashes += twofold.length;
        expect(unite(entries).problems.map((problem) => problem.path)).toEqual(twofold.sort());
      }),
      runs,
    );
    expect(clashes).toBeGreaterThan(100);
  });

  test('[JRN-04] print, read, print, read, print: same entries, same texts, no problems', () => {
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const once = writeJournal(entries);
        const read = readJournal(once);
        const twice = writeJournal(read.entries);
        expect([twice, writeJournal(readJournal(twice).entries)]).toEqual([once, once]);
        expect(read.problems).toEqual([]);
      }),
      runs,
    );
  });

  test('[JRN-03] the order of fields and of entries handed in does not show', () => {
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const turned = entries.map(turnedRound).reverse();
        expect(writeJournal(turned)).toBe(writeJournal(entries));
      }),
      runs,
    );
  });
});

function turnedRound(entry: Entry): Entry {
  const { id, stamp, device, kind, day, at, zone, data, ...rest } = entry;
  const turnedData = Object.fromEntries(Object.entries(data).reverse());
  return { ...rest, data: turnedData, zone, at, day, kind, device, stamp, id };
}
