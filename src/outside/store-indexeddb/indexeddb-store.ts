import { canonicalLine } from '#core/journal/canonical-line.ts';
import type { Entry } from '#core/journal/entry.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import type { AppendOutcome, JournalStore, StoredEntries } from '../store-port/journal-store.ts';
import { storageFull, storeSilent, storeUnreachable } from '../store-port/store-problems.ts';
import type { Change, Connection, Database } from './open-database.ts';

/** Entries in one record of a packed run. The cost of IndexedDB is per record (0.16 ms), not per byte. */
const RUN_LENGTH = 1000;

/** Small records that may gather before `tidy` packs them. */
const LOOSE_RECORDS = 64;

const PATIENCE_SECONDS = 20;

/** The journal in the browser's own database. Durability is asked for as strictly as the browser offers it. */
export function indexedDbStore(connection: Connection): JournalStore {
  return {
    read: async (afterMark) => readAfter(await connection.get(), afterMark),
    append: (entries) => orSilence(append(connection, entries)),
    tidy: () => tidy(connection),
    erase: async () => {
      const database = await connection.get();
      const change = database.transaction(['log', 'blobs'], 'readwrite');
      await Promise.all([
        change.objectStore('log').clear(),
        change.objectStore('blobs').clear(),
        change.done,
      ]);
    },
    close: () => connection.close(),
  };
}

async function readAfter(database: Database, afterMark: number): Promise<StoredEntries> {
  const range = IDBKeyRange.lowerBound(afterMark, true);
  const reading = database.transaction('log');
  const [runs, marks] = await Promise.all([reading.store.getAll(range), reading.store.getAllKeys(range)]);
  const { entries, problems } = readJournal(runs.flatMap((run) => run.split('\n')));
  return { entries, problems, mark: marks.at(-1) ?? afterMark };
}

async function append(connection: Connection, entries: readonly Entry[]): Promise<AppendOutcome> {
  try {
    return { status: 'saved', mark: await keep(await connection.get(), entries) };
  } catch (fault) {
    if (!isCut(fault)) return notSaved(fault);
  }
  try {
    return { status: 'saved', mark: await keep(await connection.get(), entries) };
  } catch (fault) {
    return notSaved(fault);
  }
}

/** One transaction: all runs or none. It is awaited to its end, for only then are the entries on the disk. */
async function keep(database: Database, entries: readonly Entry[]): Promise<number> {
  const change = database.transaction('log', 'readwrite', { durability: 'strict' });
  const runs = Array.from({ length: Math.ceil(entries.length / RUN_LENGTH) }, (_, i) =>
    entries.slice(i * RUN_LENGTH, (i + 1) * RUN_LENGTH),
  );
  const marks = await carryOut(
    change,
    runs.map((run) => () => change.store.add(asText(run))),
  );
  return marks.at(-1) ?? 0;
}

/** In one transaction, so that stopped half-way nothing has changed; then the runs are as good as they were. */
async function tidy(connection: Connection): Promise<void> {
  try {
    const change = (await connection.get()).transaction('log', 'readwrite', { durability: 'strict' });
    const [runs, marks] = await Promise.all([change.store.getAll(), change.store.getAllKeys()]);
    const loose = runs
      .map((text, index) => ({ text, mark: marks[index] ?? 0, lines: text.split('\n').length }))
      .filter((run) => run.lines < RUN_LENGTH);
    const packed = loose.length > LOOSE_RECORDS ? packRuns(loose) : [];
    await carryOut<unknown>(
      change,
      packed.flatMap((run) => [
        ...run.marks.slice(0, -1).map((mark) => () => change.store.delete(mark)),
        // Under the greatest number among them: who has read up to there has read all of them.
        () => change.store.put(run.texts.join('\n'), run.marks.at(-1)),
      ]),
    );
  } catch (fault) {
    // Packing is a favour to the next start. That the store cannot be reached is said by the next save.
    if (!(fault instanceof DOMException)) throw fault;
  }
}

/** Starts the writes in order and waits until their transaction has ended; rejects where it ended without them. */
async function carryOut<Result>(
  change: Change,
  writes: readonly (() => Promise<Result>)[],
): Promise<readonly Result[]> {
  const started: Promise<Result>[] = [];
  let thrown: unknown;
  try {
    for (const write of writes) started.push(write());
  } catch (fault) {
    thrown = fault;
    abort(change);
  }
  // The transaction's own fault says why ("quota exceeded"); that of a write in it only says "aborted".
  const [ended, results] = await Promise.all([
    change.done.then(
      () => undefined,
      (fault: unknown) => ({ fault }),
    ),
    Promise.allSettled(started),
  ]);
  if (ended) throw thrown ?? ended.fault;
  return results.filter((result) => result.status === 'fulfilled').map((result) => result.value);
}

function abort(change: Change): void {
  try {
    change.abort();
  } catch (fault) {
    // It has been undone already, which is as good.
    if (!(fault instanceof DOMException)) throw fault;
  }
}

interface Run {
  readonly text: string;
  readonly mark: number;
  readonly lines: number;
}

function packRuns(runs: readonly Run[]): { texts: string[]; marks: number[] }[] {
  const packed: { texts: string[]; marks: number[]; lines: number }[] = [];
  for (const run of runs) {
    let last = packed.at(-1);
    if (!last || last.lines >= RUN_LENGTH) packed.push((last = { texts: [], marks: [], lines: 0 }));
    last.texts.push(run.text);
    last.marks.push(run.mark);
    last.lines += run.lines;
  }
  return packed;
}

function asText(entries: readonly Entry[]): string {
  return entries.map(canonicalLine).join('\n');
}

/** The connection was cut before the work began: nothing has happened, and a new connection may serve. */
function isCut(fault: unknown): boolean {
  return fault instanceof DOMException && fault.name === 'InvalidStateError';
}

function notSaved(fault: unknown): AppendOutcome {
  const full = fault instanceof DOMException && fault.name === 'QuotaExceededError';
  const detail = fault instanceof Error ? fault.message || fault.name : String(fault);
  return { status: 'notSaved', problem: full ? storageFull() : storeUnreachable(detail) };
}

/** The answer, or `maybeSaved` where none comes in time: a save that hangs must not look like one that is done. */
function orSilence(answer: Promise<AppendOutcome>): Promise<AppendOutcome> {
  return new Promise((resolve) => {
    const timer = setTimeout(
      () => resolve({ status: 'maybeSaved', problem: storeSilent(PATIENCE_SECONDS) }),
      PATIENCE_SECONDS * 1000,
    );
    void answer.then((outcome) => {
      clearTimeout(timer);
      resolve(outcome);
    });
  });
}
