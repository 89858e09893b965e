import type { Entry } from '#core/journal/entry.ts';
import type { AppendOutcome, JournalStore, StoredEntries } from '../store-port/journal-store.ts';
import { storeUnreachable } from '../store-port/store-problems.ts';

/**
 * A journal kept for as long as the program runs: for tests. `disk` is what
 * outlives a close; hand the same one in to open the store again.
 */
export function memoryStore(disk: Map<number, readonly Entry[]> = new Map()): JournalStore {
  const lastMark = () => Math.max(0, ...disk.keys());
  return {
    read: (afterMark): Promise<StoredEntries> => {
      const entries = [...disk].filter(([mark]) => mark > afterMark).flatMap(([, kept]) => kept);
      return Promise.resolve({ entries, problems: [], mark: lastMark() });
    },
    append: (entries): Promise<AppendOutcome> => {
      try {
        if (entries.length > 0) disk.set(lastMark() + 1, structuredClone(entries));
        return Promise.resolve({ status: 'saved', mark: lastMark() });
      } catch (fault) {
        const detail = fault instanceof Error ? fault.message : String(fault);
        return Promise.resolve({ status: 'notSaved', problem: storeUnreachable(detail) });
      }
    },
    tidy: () => {
      const marks = [...disk.keys()];
      const entries = [...disk.values()].flat();
      try {
        // The packed record first, then away with the others: stopped in between, entries are there twice, which counts once.
        if (marks.length > 1) disk.set(lastMark(), entries);
        for (const mark of marks.slice(0, -1)) disk.delete(mark);
      } catch {
        // Packing is a favour to the next start: what could not be packed is still there.
      }
      return Promise.resolve();
    },
    erase: () => {
      disk.clear();
      return Promise.resolve();
    },
    close: () => Promise.resolve(),
  };
}
