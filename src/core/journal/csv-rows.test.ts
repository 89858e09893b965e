import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { entriesToRows, rowsToEntries } from './csv-rows.ts';

describe('entries as rows', () => {
  test('[JRN-32] text that could be taken for something else is written as JSON, a formula too', () => {
    const cellOf = (text: unknown) => entriesToRows([oneEntry({ data: { text } })])[1]?.at(-1);
    expect(['plain, text', '12', 'true', '', '=SUM(A1)', '-5 kg', '+1', '@x', '[1]'].map(cellOf)).toEqual([
      'plain, text',
      '"12"',
      '"true"',
      '""',
      '"=SUM(A1)"',
      '"-5 kg"',
      '"+1"',
      '"@x"',
      '"[1]"',
    ]);
    expect([-5, true, null, { a: 1 }, [1]].map(cellOf)).toEqual(['-5', 'true', 'null', '{"a":1}', '[1]']);
  });

  test('[JRN-33] rows of an own table become entries; the same row always the same one', () => {
    const rows = [
      ['day', 'data.massKg'],
      ['2027-03-01', '81.4'],
      ['', ''],
      ['2027-02-30', '81'],
      ['2027-03-02', 'heavy'],
      ['2027-03-03', '81', 'surplus'],
      ['2027-03-04', '80.9'],
    ];
    const read = rowsToEntries(rows, 'body-weighed');
    expect(read.entries.map((entry) => [entry.day, entry.at, entry.data])).toEqual([
      ['2027-03-01', '2027-03-01T12:00:00+00:00', { massKg: 81.4 }],
      ['2027-03-04', '2027-03-04T12:00:00+00:00', { massKg: 80.9 }],
    ]);
    expect(read.problems.map((problem) => [problem.code, problem.path])).toEqual([
      ['journal/day-not-a-date', 'row 4'],
      ['journal/wrong-value', 'row 5, massKg'],
      ['journal/row-too-long', 'row 6'],
    ]);
    expect(rowsToEntries(rows, 'body-weighed')).toEqual(read);
  });

  test('[JRN-33] rows that say just the same are as many entries, the same ones each time', () => {
    const glass = ['2027-03-01', 'water', '250'];
    const rows = [['day', 'data.drink', 'data.millilitres'], glass, glass, glass];
    const read = rowsToEntries(rows, 'water-drunk');
    expect(new Set(read.entries.map((entry) => entry.id)).size).toBe(3);
    expect(rowsToEntries(rows, 'water-drunk')).toEqual(read);
  });

  test('[JRN-33] an unknown column, an unknown kind and an unreadable entry are named', () => {
    expect(rowsToEntries([['day', 'massKg']]).problems[0]?.message).toBe(
      '"massKg" is not a column that is known here.',
    );
    expect(rowsToEntries([]).problems[0]?.message).toBe('The table is empty.');
    expect(rowsToEntries([['day'], ['2027-03-01']]).problems[0]?.code).toBe('journal/unknown-kind');
    expect(
      rowsToEntries([
        ['stamp', 'day'],
        ['s', '2027-03-01'],
      ]).problems[0]?.code,
    ).toBe('journal/row-without-id');
    const badMoment = [
      ['day', 'at', 'data.massKg'],
      ['2027-03-01', 'noonish', '80'],
    ];
    expect(rowsToEntries(badMoment, 'body-weighed').problems[0]?.message).toBe(
      'The "at" in row 2 cannot be read.',
    );
    const endless = [
      ['id', 'data.massKg'],
      ['x', '1e999'],
    ];
    expect(rowsToEntries(endless).problems[0]?.code).toBe('journal/not-plain');
    const row = ['x', 'not a moment'];
    expect(rowsToEntries([['id', 'at'], row]).problems[0]?.code).toBe('journal/not-an-entry');
  });
});
