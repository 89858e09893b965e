import { rawCookedPairs as rows } from './data/raw-cooked-pairs.ts';
import { tableFoodId } from './table-food.ts';
import { cellWord, readTextTable } from './text-table.ts';

export interface RawCookedPair {
  readonly raw: string;
  readonly cooked: string;
  /** What stays the same between the two samples; "none": they are no pair for a yield. */
  readonly conserved: 'protein' | 'dry-matter' | 'none';
}

/** Raw and cooked rows of the same food, by food id. */
export const rawCookedPairs: readonly RawCookedPair[] = readTextTable(rows, 3).map((cells) => {
  const [raw = '', cooked = '', conserved] = cells;
  return {
    raw: tableFoodId(raw),
    cooked: tableFoodId(cooked),
    conserved: cellWord(conserved, ['protein', 'dry-matter', 'none']),
  };
});
