import { MOST_CHARACTERS, MOST_ENTRIES } from '../sync/exchange.ts';
import type { KeptEntry, SealedStore } from './sealed-store.ts';

/** Read at once, so that large entries are never in memory by the thousand. */
const CHUNK = 250;

/** The next entries after a place that fit one answer, by number and by size, and whether there are more. */
export async function pageAfter(
  store: SealedStore,
  journal: string,
  since: number,
): Promise<{ readonly kept: readonly KeptEntry[]; readonly more: boolean }> {
  const kept: KeptEntry[] = [];
  let characters = 0;
  while (kept.length < MOST_ENTRIES) {
    const chunk = await store.after(journal, kept.at(-1)?.seq ?? since, CHUNK);
    for (const entry of chunk) {
      characters += entry.body.length;
      if (kept.length > 0 && characters > MOST_CHARACTERS) return { kept, more: true };
      kept.push(entry);
    }
    if (chunk.length < CHUNK) return { kept, more: false };
  }
  return { kept, more: true };
}
