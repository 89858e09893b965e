import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { canonicalLine } from './canonical-line.ts';
import { checkJournal } from './check-journal.ts';

describe('checking a journal', () => {
  test('[JRN-30] names what is damaged and what is kept but not counted, in the order of the file', () => {
    const odd = oneEntry({ data: { massKg: 'eighty' } });
    const fine = oneEntry({ day: '2027-03-04' });
    const strange = oneEntry({ kind: 'moon-seen' });
    const removal = oneEntry({ kind: 'entry-removed', data: {}, replaces: fine.id });
    const lines = ['garbage', canonicalLine(odd), canonicalLine(strange), canonicalLine(fine), '{"id":1}'];
    const checked = checkJournal([...lines, canonicalLine(removal), canonicalLine(fine)]);
    expect(checked.problems.map((problem) => [problem.code, problem.path])).toEqual([
      ['journal/not-json', 'line 1'],
      ['journal/data-does-not-fit', 'line 2'],
      ['journal/not-an-entry', 'line 5'],
    ]);
    expect(checked.summary).toEqual({
      entries: 4,
      problems: 3,
      notInForce: 2,
      repeatedLines: 1,
      unknownKinds: ['moon-seen'],
      firstDay: '2027-03-01',
      lastDay: '2027-03-01',
      canonical: false,
    });
  });

  test('[JRN-30] a journal as this program writes it has no problem', () => {
    const checked = checkJournal([...[oneEntry(), oneEntry()].map(canonicalLine), '']);
    expect([checked.problems, checked.summary.canonical]).toEqual([[], true]);
    expect(checkJournal(['']).summary).toMatchObject({ entries: 0, problems: 0, canonical: true });
  });
});
