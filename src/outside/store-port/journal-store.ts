import type { Problem } from '#core/problems/problem.ts';
import type { Entry } from '#core/journal/entry.ts';

/**
 * How a save ended. `notSaved` is certain: nothing of it was kept, it is safe to try again. `maybeSaved` means no
 * answer came: read the store again before saying anything. Trying again is harmless either way, since an entry
 * kept twice counts once.
 */
export type AppendOutcome =
  | { readonly status: 'saved'; readonly mark: number }
  | { readonly status: 'notSaved' | 'maybeSaved'; readonly problem: Problem };

export interface StoredEntries {
  readonly entries: readonly Entry[];
  /** What was kept but cannot be read, with its place. */
  readonly problems: readonly Problem[];
  /** Everything up to here has been read; ask `read` for what came after. Marks only grow. */
  readonly mark: number;
}

/** Where a journal is kept. Every adapter passes the contract of test/contract/journal-store-contract.ts. */
export interface JournalStore {
  /** Entries kept after a mark (0: all of them). An entry may come twice; rejects only where nothing can be read. */
  read(afterMark: number): Promise<StoredEntries>;
  /** Keeps all of the entries or none; answered `saved` only once they outlive this program. Never rejects. */
  append(entries: readonly Entry[]): Promise<AppendOutcome>;
  /** Packs small records together for a quicker start; where it cannot, all stays as it was. Changes nothing read. */
  tidy(): Promise<void>;
  /** Forgets everything in this store for good. */
  erase(): Promise<void>;
  /** Lets go of the store; it may be opened again. */
  close(): Promise<void>;
}
