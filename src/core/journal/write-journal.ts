import { canonicalLine } from './canonical-line.ts';
import type { Entry } from './entry.ts';
import { unite } from './union.ts';

/** The journal as a file: JSON Lines, sorted by stamp, then id. Same entries, same bytes, whatever their order. */
export function writeJournal(entries: Iterable<Entry>): string {
  return unite(entries)
    .entries.map((entry) => `${canonicalLine(entry)}\n`)
    .join('');
}
