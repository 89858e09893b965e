import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { canonicalLine } from './canonical-line.ts';
import { readJournal } from './read-journal.ts';
import { writeJournal } from './write-journal.ts';

const [a, b, c] = [
  oneEntry(),
  oneEntry({ kind: 'note-written', data: { text: 'Knäckebröd, 100 %' } }),
  oneEntry(),
];
const lines = [a, b, c].map(canonicalLine);

describe('reading a journal', () => {
  test('[JRN-02] a damaged line is named with its place and remedy, all others are kept', () => {
    const read = readJournal([lines[0], '{"id":', lines[1], '[1]', lines[2]].join('\n'));
    expect(read.entries.map((entry) => entry.id)).toEqual([a.id, b.id, c.id]);
    expect(read.problems).toEqual([
      {
        code: 'journal/not-json',
        path: 'line 2',
        message: 'Line 2 was left out: it is not JSON.',
        remedy: 'Take the line from an older copy of the file, or delete it; all other lines are read.',
      },
      {
        code: 'journal/not-an-entry',
        path: 'line 4',
        message: 'Line 4 was left out: it is not an entry.',
        remedy: 'Take the line from an older copy of the file, or delete it; all other lines are read.',
      },
    ]);
  });

  test.each([
    ['id', { id: 7 }],
    ['id', { id: '' }],
    ['id', { id: 'two words' }],
    ['stamp', { stamp: undefined }],
    ['device', { device: null }],
    ['kind', { kind: '' }],
    ['version', { version: 1.5 }],
    ['day', { day: '2027-02-30' }],
    ['at', { at: '2027-03-01' }],
    ['zone', { zone: {} }],
    ['data', { data: [1] }],
    ['replaces', { replaces: 3 }],
  ])('[JRN-02] a line whose "%s" cannot be read says so: %o', (field, broken) => {
    const read = readJournal(`${JSON.stringify({ ...a, ...broken })}\n${lines[1]}`);
    expect(read.entries.map((entry) => entry.id)).toEqual([b.id]);
    expect(read.problems[0]?.message).toBe(`Line 1 was left out: its "${field}" cannot be read.`);
    expect(read.problems[0]?.remedy).toContain(`Make "${field}" `);
  });

  test('[JRN-15] a byte order mark, CRLF, empty lines, no last line end and repeated lines are no damage', () => {
    const read = readJournal(`\uFEFF${lines[0]}\r\n\r\n  \r\n${lines[1]}\r\n${lines[0]}\r\n${lines[2]}`);
    expect(read.problems).toEqual([]);
    expect(read.repeated).toBe(1);
    expect(writeJournal(read.entries)).toBe(`${lines.join('\n')}\n`);
  });

  test('[JRN-18] a bomb of brackets, an endless line and an infinite number are refused by name', () => {
    const bomb = `{"id":"x","data":${'['.repeat(200_000)}${']'.repeat(200_000)}}`;
    const deep = JSON.stringify({
      ...a,
      id: 'deep',
      data: { x: JSON.parse('['.repeat(40) + ']'.repeat(40)) },
    });
    const long = JSON.stringify({ ...a, id: 'long', data: { text: 'x'.repeat(1_000_001) } });
    const infinite = lines[0]?.replace('"massKg":80', '"massKg":1e999') ?? '';
    const read = readJournal([bomb, deep, long, infinite, lines[1]].join('\n'));
    expect(read.problems.map((problem) => problem.code)).toEqual([
      'journal/not-plain',
      'journal/not-plain',
      'journal/line-too-long',
      'journal/not-plain',
    ]);
    expect(read.entries).toHaveLength(1);
  });

  test('[JRN-05] one id for two entries in a file is a problem; the same one stays whatever their order', () => {
    const other = { ...a, data: { massKg: 81 } };
    const [one, two] = [
      readJournal([canonicalLine(a), canonicalLine(other)]),
      readJournal([canonicalLine(other), canonicalLine(a)]),
    ];
    expect(one.problems.map((problem) => [problem.code, problem.path])).toEqual([
      ['journal/id-clash', 'line 2'],
    ]);
    expect(one.entries).toEqual(two.entries);
    expect(one.entries[0]?.data).toEqual({ massKg: 81 });
  });

  test('[JRN-09] kinds and fields not known here are kept and written again', () => {
    const strange = { ...a, kind: 'moon-seen', data: { phase: 'full' }, mood: { b: 1, a: [2] } };
    const text = writeJournal(readJournal(JSON.stringify(strange)).entries);
    expect(text).toContain('"kind":"moon-seen"');
    expect(text).toMatch(/"mood":\{"a":\[2\],"b":1\}\}\n$/);
  });

  test('[JRN-09] a field named __proto__ is data like any other', () => {
    const line = canonicalLine(a).replace('{"massKg":80}', '{"__proto__":{"x":1},"massKg":80}');
    expect(writeJournal(readJournal(line).entries)).toBe(`${line}\n`);
  });
});
