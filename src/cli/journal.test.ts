import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { oneEntry } from '../../test/journal/one-entry.ts';

const [a, b, c] = [
  oneEntry({ day: '2027-03-01' }),
  oneEntry({ kind: 'note-written', data: { text: 'a "quoted", note\r\nof two lines' } }),
  oneEntry({ day: '2027-03-02' }),
];
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'stagewright-journal-'));
  writeFileSync(join(folder, 'one.jsonl'), writeJournal([a, b]));
  writeFileSync(join(folder, 'two.jsonl'), writeJournal([b, c]));
  const damaged = [
    canonicalLine(a),
    Buffer.from([0xff, 0xfe, 0x00]),
    'x'.repeat(2_000_000),
    canonicalLine(c),
  ];
  writeFileSync(
    join(folder, 'damaged.jsonl'),
    Buffer.concat(damaged.flatMap((line) => [Buffer.from(line), Buffer.from('\n')])),
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

function journal(...args: readonly string[]): Promise<Ran> {
  return new Promise((resolve) => {
    const command = [join(import.meta.dirname, '../../bin/stagewright'), 'journal', ...args];
    execFile(process.execPath, command, { cwd: folder, maxBuffer: 1e8 }, (fault, out, err) => {
      resolve({ status: fault ? Number(fault.code) : 0, out, err });
    });
  });
}

describe('the journal command', { timeout: 30_000 }, () => {
  test('[JRN-30] check lists every damaged line with its place, then one summary', async () => {
    const { status, out, err } = await journal('check', 'damaged.jsonl');
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(answers.map((answer) => answer.problem?.path ?? 'summary')).toEqual([
      'line 2',
      'line 3',
      'summary',
    ]);
    expect(answers.at(-1).summary).toMatchObject({ entries: 2, problems: 2 });
    expect([status, err]).toEqual([1, '']);
  });

  test('[JRN-31] merge gives the same bytes whatever the order, and merged again', async () => {
    const [there, back] = await Promise.all([
      journal('merge', 'one.jsonl', 'two.jsonl'),
      journal('merge', 'two.jsonl', 'one.jsonl'),
    ]);
    expect(there).toEqual({ status: 0, out: writeJournal([a, b, c]), err: '' });
    expect(back).toEqual(there);
    writeFileSync(join(folder, 'both.jsonl'), there.out);
    expect(await journal('merge', 'both.jsonl', 'one.jsonl', 'both.jsonl')).toEqual(there);
  });

  test('[JRN-31] merge keeps what can be read and says what cannot', async () => {
    const { status, out, err } = await journal('merge', 'damaged.jsonl', 'one.jsonl');
    expect([status, out]).toEqual([1, writeJournal([a, b, c])]);
    expect(
      err
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line).problem.path),
    ).toEqual(['damaged.jsonl, line 2', 'damaged.jsonl, line 3']);
  });

  test('[JRN-32] export as CSV and import from it gives the file back to the byte', async () => {
    const { out, status } = await journal('export', 'one.jsonl', '--as', 'csv');
    expect(status).toBe(0);
    expect(out.split('\r\n')[0]).toBe(
      'id,stamp,device,kind,version,day,at,zone,replaces,data.massKg,data.text',
    );
    writeFileSync(join(folder, 'one.csv'), out);
    const back = await journal('import', 'one.csv', '--from', 'csv');
    expect(back).toEqual({ status: 0, out: readFileSync(join(folder, 'one.jsonl'), 'utf8'), err: '' });
  });

  test('[JRN-34] an unknown format, option or verb and a missing file are named', async () => {
    const runs = await Promise.all([
      journal('export', 'one.jsonl', '--as', 'xlsx'),
      journal('import', 'one.csv'),
      journal('check', 'one.jsonl', '--fast'),
      journal('shred', 'one.jsonl'),
      journal('check', 'nowhere.jsonl'),
    ]);
    expect(runs.map((run) => run.status)).toEqual([2, 2, 2, 2, 1]);
    expect(runs[0]?.err).toContain('There is no export "xlsx"; there are csv');
    expect(JSON.parse(runs[4]?.out ?? '').problem.message).toBe('"nowhere.jsonl" cannot be read (ENOENT).');
  });
});
