import { readJournal } from '#core/journal/read-journal.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { createLedger, type Ledger } from '#core/journal/ledger.ts';
import type { Entry } from '#core/journal/entry.ts';
import { kinds, type KnownKind } from '#core/journal/kinds/registry.ts';
import { tenYears } from './ten-years.ts';

const SIZES = [25_000, 50_000, 100_000, 200_000];

/** Ten years of a full journal: reading the file, folding it, and one entry more, with the growth of each. */
export function benchJournal(): void {
  console.log('\nJournal (10 years: 200 000 entries, 2 % corrections)');
  console.log('  entries   read ms   fold ms   all facts ms   ms per 1000   write ms   one more ms');
  // Warmed up first, so that growth compares entries with entries and not cold code with warm.
  for (let i = 0; i < 3; i++) allFacts(createLedger(readJournal(writeJournal(tenYears(10_000))).entries));
  let [first, last] = [0, 0];
  for (const size of SIZES) {
    const entries = tenYears(size);
    const text = writeJournal(entries);
    const [readMs, read] = timed(() => readJournal(text));
    const [foldMs, ledger] = timed(() => createLedger(read.entries));
    const [factsMs] = timed(() => allFacts(ledger));
    const [writeMs] = timed(() => writeJournal(ledger.entries()));
    const oneMs = oneMore(ledger, entries);
    const perThousand = ((foldMs + factsMs) / size) * 1000;
    if (size === SIZES[0]) first = perThousand;
    last = perThousand;
    console.log(
      [size, readMs, foldMs, factsMs, perThousand, writeMs, oneMs]
        .map((value, i) => (i === 0 ? String(value) : value.toFixed(2)).padStart(i === 0 ? 9 : 11))
        .join(' '),
    );
  }
  console.log(
    `  growth per entry from ${SIZES[0]} to ${SIZES.at(-1)} entries: x ${(last / first).toFixed(2)}`,
  );
}

function timed<Value>(work: () => Value): [ms: number, value: Value] {
  const before = performance.now();
  const value = work();
  return [performance.now() - before, value];
}

function allFacts(ledger: Ledger): number {
  const known = Object.keys(kinds) as KnownKind[];
  return known.reduce((count, kind) => count + ledger.of(kind).length, 0);
}

/** The median of one entry more, on warm shelves, read back by kind and day. */
function oneMore(ledger: ReturnType<typeof createLedger>, entries: readonly Entry[]): number {
  const times: number[] = [];
  for (let i = 0; i < 101; i++) {
    const old = entries[Math.floor((entries.length / 101) * i)];
    if (!old) continue;
    const entry = { ...old, id: `more-${i}`, stamp: `${old.stamp}${i}` };
    ledger.entries();
    ledger.onDay(old.day);
    const [ms] = timed(() => {
      ledger.add([entry]);
      return [ledger.onDay(entry.day), ledger.entries(), allFacts(ledger)];
    });
    times.push(ms);
  }
  return times.sort((a, b) => a - b)[50] ?? Number.NaN;
}
