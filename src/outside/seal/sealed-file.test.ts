import { describe, expect, it } from 'vitest';
import { writeJournal } from '#core/journal/write-journal.ts';
import { demoJournal } from '../../../demo/journal.ts';
import { journalKeys } from './journal-keys.ts';
import { isSealedFile, openFile, sealFile } from './sealed-file.ts';

const keys = journalKeys(new Uint8Array(32).fill(6));
const entries = demoJournal(1).slice(0, 200);
const text = sealFile(keys, entries);

describe('a sealed copy', () => {
  it('[SYN-23] opens to the same journal to the byte, and shows nothing of it', () => {
    expect(isSealedFile(text)).toBe(true);
    const opened = openFile(keys, text);
    expect(opened.problems).toEqual([]);
    expect(writeJournal(opened.entries)).toBe(writeJournal(entries));
    for (const word of ['massKg', 'meal-eaten', 'kind', 'data']) expect(text).not.toContain(`"${word}"`);
  });

  it('[SYN-23] another key, or none, opens nothing and says what to do', () => {
    for (const other of [undefined, journalKeys(new Uint8Array(32).fill(7))])
      expect(openFile(other, text)).toMatchObject({ entries: [], problems: [{ code: 'seal/other-key' }] });
  });

  it('[SYN-23] cut and changed lines are named, all others are read', () => {
    const lines = text.split('\n');
    const changed = lines.with(5, (lines[5] ?? '').replace('"body":"', '"body":"A')).with(9, 'no json');
    const opened = openFile(keys, changed.slice(0, -4).join('\n'));
    expect(opened.problems.map(({ code, path }) => [code, path])).toEqual([
      ['seal/damaged', 'line 6'],
      ['seal/damaged', 'line 10'],
      ['seal/cut-off', 'the end'],
    ]);
    expect(opened.entries).toHaveLength(entries.length - 5);
  });

  it.each([
    ['a plain journal', writeJournal(entries)],
    ['nothing', ''],
    ['something else', '{"sealed":"other"}\n'],
  ])('[SYN-23] %s is not taken for one', (_what, other) => {
    expect(isSealedFile(other)).toBe(false);
  });
});
