import type { Entry } from './entry.ts';

/** Order of entries in a file and of versions in a history: by stamp, then id, by code unit. */
export function byStamp(a: Entry, b: Entry): number {
  if (a.stamp !== b.stamp) return a.stamp < b.stamp ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** The sorted list with one more in its place; the list handed in stays as it is. */
export function withInserted<Item>(
  sorted: readonly Item[],
  item: Item,
  order: (a: Item, b: Item) => number,
): readonly Item[] {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const other = sorted[middle];
    if (other !== undefined && order(other, item) <= 0) low = middle + 1;
    else high = middle;
  }
  return sorted.toSpliced(low, 0, item);
}
