import type { Entry } from '#core/journal/entry.ts';
import type { AppendOutcome, JournalStore, StoredEntries } from '../store-port/journal-store.ts';

/**
 * A journal kept for as long as the program runs: for tests, and where a browser offers no storage. `disk` is what
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
      const mark = lastMark() + 1;
      if (entries.length > 0) disk.set(mark, structuredClone(entries));
      return Promise.resolve({ status: 'saved', mark: lastMark() });
    },
    tidy: () => {
      const [mark, entries] = [lastMark(), [...disk.values()].flat()];
      disk.clear();
      if (entries.length > 0) disk.set(mark, entries);
      return Promise.resolve();
    },
    erase: () => {
      disk.clear();
      return Promise.resolve();
    },
    close: () => Promise.resolve(),
  };
}
