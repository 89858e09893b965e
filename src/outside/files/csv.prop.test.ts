import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { arbitraryEntries } from '../../../test/journal/arbitrary-entries.ts';
import { readCsv, writeCsv } from './csv.ts';
import { journalExports, journalImports } from './journal-formats.ts';

const csvOut = journalExports.find((format) => format.name === 'csv');
const csvIn = journalImports.find((format) => format.name === 'csv');

describe('CSV', () => {
  test('[JRN-32] every cell comes back, whatever is in it', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('"', ',', '\n', '\r\n', '""', ' a ', "'"),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1 }), (rows) => {
        const read = readCsv(writeCsv(rows));
        expect(read.problems).toEqual([]);
        expect(read.rows.slice(0, rows.length)).toEqual(rows);
      }),
      { seed: 20270304, numRuns: 300 },
    );
  });

  test('[JRN-32] a journal exported and imported is the same to the byte', () => {
    let cells = 0;
    fc.assert(
      fc.property(arbitraryEntries, (entries) => {
        const text = csvOut?.write(createLedger(entries), {}) ?? '';
        const read = csvIn?.read(text, {});
        cells += text.length;
        expect(read?.problems).toEqual([]);
        expect(writeJournal(read?.entries ?? [])).toBe(writeJournal(entries));
      }),
      { seed: 20270305, numRuns: 300 },
    );
    expect(cells).toBeGreaterThan(10_000);
  });

  test('[JRN-32] the examples of RFC 4180, section 2', () => {
    // RFC 4180 section 2: rules 1, 3, 6 and 7 with their own examples.
    expect(readCsv('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n').rows.slice(0, 2)).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(readCsv('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx').rows).toEqual([
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(readCsv('"aaa","b""bb","ccc"').rows).toEqual([['aaa', 'b"bb', 'ccc']]);
    expect(
      writeCsv([
        ['aaa', 'b"bb', 'c,c'],
        ['a\r\nb', '', 'x'],
      ]),
    ).toBe('aaa,"b""bb","c,c"\r\n"a\r\nb",,x\r\n');
  });

  test('[JRN-33] a row that is not CSV is named, the rows before it are taken', () => {
    const read = readCsv('a,b\r\n1,2\r\n"3"x,4\r\n5,6\r\n');
    expect([...new Set(read.problems.map((problem) => `${problem.code} ${problem.path}`))]).toEqual([
      'journal/row-not-csv row 3',
    ]);
    expect(read.rows.filter((row) => row.length > 0)).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });
});
