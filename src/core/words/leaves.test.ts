import { describe, expect, it } from 'vitest';
import { leavesOf, withLeaf } from './leaves.ts';

const data = {
  slot: 'm1',
  items: [
    { source: 'food', grams: 120 },
    { source: 'food', grams: 30 },
  ],
  packed: true,
};

describe('single values of an entry', () => {
  it('[JRN-41] each stands by its path', () => {
    expect(leavesOf(data).map((leaf) => leaf.path.join('.'))).toEqual([
      'slot',
      'items.0.source',
      'items.0.grams',
      'items.1.source',
      'items.1.grams',
      'packed',
    ]);
  });

  it('[JRN-41] replacing one leaves all others, and the original, as they were', () => {
    const before = JSON.stringify(data);
    expect(withLeaf(data, ['items', '1', 'grams'], 45)).toEqual({
      ...data,
      items: [data.items[0], { source: 'food', grams: 45 }],
    });
    expect(JSON.stringify(data)).toBe(before);
  });
});
