import { canonicalLine } from '#core/journal/canonical-line.ts';
import type { Entry } from '#core/journal/entry.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import type { AppendOutcome, JournalStore, StoredEntries } from '../store-port/journal-store.ts';
import { storageFull, storeSilent, storeUnreachable } from '../store-port/store-problems.ts';
import type { Connection, Database } from './open-database.ts';

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
    tidy: async () => tidy(await connection.get()),
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
  const adding: Promise<number>[] = [];
  try {
    for (let i = 0; i < entries.length; i += RUN_LENGTH) {
      adding.push(change.store.add(asText(entries.slice(i, i + RUN_LENGTH))));
    }
  } catch (fault) {
    change.abort();
    await Promise.allSettled([...adding, change.done]);
    throw fault;
  }
  // The transaction's own fault says why ("quota exceeded"); that of a request in it only says "aborted".
  const [ended, added] = await Promise.allSettled([change.done, Promise.all(adding)]);
  if (ended.status === 'rejected') throw ended.reason;
  if (added.status === 'rejected') throw added.reason;
  return added.value.at(-1) ?? 0;
}

async function tidy(database: Database): Promise<void> {
  const change = database.transaction('log', 'readwrite', { durability: 'strict' });
  const [runs, marks] = await Promise.all([change.store.getAll(), change.store.getAllKeys()]);
  const loose = runs
    .map((text, index) => ({ text, mark: marks[index] ?? 0, lines: text.split('\n').length }))
    .filter((run) => run.lines < RUN_LENGTH);
  if (loose.length > LOOSE_RECORDS) {
    let [text, lines] = ['', 0];
    for (const [index, run] of loose.entries()) {
      text = text === '' ? run.text : `${text}\n${run.text}`;
      lines += run.lines;
      await change.store.delete(run.mark);
      if (lines < RUN_LENGTH && index < loose.length - 1) continue;
      // Under the greatest number among them: who has read up to there has read all of them.
      await change.store.put(text, run.mark);
      [text, lines] = ['', 0];
    }
  }
  await change.done;
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
