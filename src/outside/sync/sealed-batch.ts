import type { Entry } from '#core/journal/entry.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { JournalKeys } from '../seal/journal-keys.ts';
import { MOST_BODY_CHARACTERS, sealEntry, type SealedEntry } from '../seal/seal-entry.ts';
import { MOST_CHARACTERS } from './exchange.ts';

export interface SealedBatch {
  readonly sealed: readonly SealedEntry[];
  /** How many of the entries are dealt with. */
  readonly upTo: number;
  /** Entries that no server takes: they stay on this device, and do not hold up the others. */
  readonly problems: readonly Problem[];
}

/** The next entries that fit one request, by number and by size. */
export function sealedBatch(
  keys: JournalKeys,
  entries: readonly Entry[],
  from: number,
  most: number,
): SealedBatch {
  const sealed: SealedEntry[] = [];
  const problems: Problem[] = [];
  let [upTo, characters] = [from, 0];
  for (const entry of entries.slice(from, from + most)) {
    const next = sealEntry(keys, entry);
    characters += next.body.length;
    if (sealed.length > 0 && characters > MOST_CHARACTERS) break;
    upTo += 1;
    if (next.body.length <= MOST_BODY_CHARACTERS) sealed.push(next);
    else problems.push(staysHere(entry));
  }
  return { sealed, upTo, problems };
}

function staysHere(entry: Entry): Problem {
  return {
    code: 'sync/stays-here',
    path: entry.id,
    message: `An entry of ${entry.day} (${entry.kind}) is too large to be sent.`,
    remedy: 'It stays on this device. A copy saved under Copies has it, and another device can take it in.',
  };
}
