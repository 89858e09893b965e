import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkJournal } from '#core/journal/check-journal.ts';
import { linesOfBytes } from '#outside/files/text-lines.ts';

const FOLDER = join(import.meta.dirname, 'journal');
const broken = readdirSync(FOLDER).filter((name) => name.endsWith('.jsonl'));

/** One broken journal a kind of damage, and word for word what is said about it. */
describe('broken journals', () => {
  test.each(broken)('[JRN-02] %s says what happened and how to mend it', (name) => {
    const { problems, summary } = checkJournal(linesOfBytes(readFileSync(join(FOLDER, name))));
    const said = problems.map(
      ({ code, path, message, remedy }) => `${path}: ${message}\n  ${remedy}\n  (${code})\n`,
    );
    expect(said.join('')).toBe(readFileSync(join(FOLDER, name.replace('.jsonl', '.said.txt')), 'utf8'));
    expect(problems.every(({ code }) => code === `journal/${name.replace('.jsonl', '')}`)).toBe(true);
    expect(summary.entries).toBeGreaterThan(0);
  });
});
