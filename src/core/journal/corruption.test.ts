import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { canonicalLine } from './canonical-line.ts';
import { readJournal } from './read-journal.ts';

const entries = [oneEntry(), oneEntry({ kind: 'note-written', data: { text: 'ok' } }), oneEntry()];
const lines = entries.map(canonicalLine);
const text = `${lines.join('\n')}\n`;
const startOf = lines.map((_, i) => lines.slice(0, i).join('\n').length + (i > 0 ? 1 : 0));

describe('a damaged journal', () => {
  test('[JRN-16] cut at every byte: whole lines are kept, a cut one is named', () => {
    for (let cut = 0; cut <= text.length; cut++) {
      const read = readJournal(text.slice(0, cut));
      const whole = lines.filter((line, i) => (startOf[i] ?? 0) + line.length <= cut).length;
      const lineIsCut = whole < lines.length && cut > (startOf[whole] ?? 0);
      expect([read.entries.length, read.problems.length]).toEqual([whole, lineIsCut ? 1 : 0]);
      if (lineIsCut) expect(read.problems[0]?.path).toBe(`line ${whole + 1}`);
    }
  });

  test('[JRN-16] every byte changed in turn, to each kind of byte: the other lines are untouched', () => {
    for (let at = 0; at < text.length; at++) {
      for (const byte of ['\u0000', '"', '{', '\n', '9', '\u{FFFD}', '\\']) {
        if (text[at] === byte) continue;
        const read = readJournal(text.slice(0, at) + byte + text.slice(at + 1));
        const hit = startOf.findLastIndex((start) => at >= start);
        const joined = text[at] === '\n' ? [hit, hit + 1] : [hit];
        for (const [i, entry] of entries.entries()) {
          const found = read.entries.find((candidate) => candidate.id === entry.id);
          if (!joined.includes(i)) expect(found).toEqual(entry);
        }
        expect(read.entries.length + read.problems.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  test('[JRN-16] bytes that are no text at all are named line by line', () => {
    const read = readJournal([undefined, lines[0], '\u0000\u0001\u0002', lines[1]]);
    expect(read.entries).toHaveLength(2);
    expect(read.problems.map((problem) => [problem.code, problem.path])).toEqual([
      ['journal/not-text', 'line 1'],
      ['journal/not-json', 'line 3'],
    ]);
  });
});
