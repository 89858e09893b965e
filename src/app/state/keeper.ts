import { canonicalLine } from '#core/journal/canonical-line.ts';
import type { Entry } from '#core/journal/entry.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import type { AppendOutcome, JournalStore } from '#outside/store-port/journal-store.ts';
import type { Problem } from '#core/problems/problem.ts';
import { localMemory } from './local-memory.ts';

/** How writing stands, for the line that says so. `held` entries are in the ledger but not yet in the store. */
export type Saving =
  | { readonly status: 'saved' | 'saving' }
  | { readonly status: 'notSaved' | 'maybeSaved'; readonly held: number; readonly problem: Problem };

/** Keeps the entries of one journal in its store, one save after the other. */
export interface Keeper {
  /** Those that fail are held, here and in the lifeboat, and go out with the next save. */
  keep(entries: readonly Entry[]): Promise<AppendOutcome>;
  /** Entries that the store does not have yet. */
  held(): readonly Entry[];
}

/**
 * `which` names the journal; its lifeboat in local storage takes what the store could not, so that it outlives the
 * tab. What the lifeboat holds from an earlier day is held from the start and goes out with the first save.
 */
export function createKeeper(which: string, store: JournalStore, say: (saving: Saving) => void): Keeper {
  const lifeboat = `${which}/lifeboat`;
  let held: readonly Entry[] = readJournal(localMemory.get(lifeboat) ?? '').entries;
  let queue: Promise<unknown> = Promise.resolve();

  async function save(entries: readonly Entry[]): Promise<AppendOutcome> {
    const wanted = [...held, ...entries];
    say({ status: 'saving' });
    const outcome = await store.append(wanted);
    if (outcome.status === 'saved') {
      if (held.length > 0) localMemory.drop(lifeboat);
      held = [];
      say({ status: 'saved' });
      return outcome;
    }
    held = wanted;
    localMemory.set(lifeboat, wanted.map(canonicalLine).join('\n'));
    say({ status: outcome.status, held: wanted.length, problem: outcome.problem });
    return outcome;
  }

  return {
    keep(entries) {
      const saved = queue.then(() => save(entries));
      queue = saved;
      return saved;
    },
    held: () => held,
  };
}
