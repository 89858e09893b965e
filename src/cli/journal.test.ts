import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { oneEntry } from '../../test/journal/one-entry.ts';
import { journalCommand } from './journal.ts';

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

/** Runs the command in this process, with files named within the folder. */
async function journal(...args: readonly string[]): Promise<Ran> {
  const [out, err]: [string[], string[]] = [[], []];
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation((text, ...rest) => took(out, text, rest)),
    vi.spyOn(process.stderr, 'write').mockImplementation((text, ...rest) => took(err, text, rest)),
  ];
  const status = await journalCommand.run(
    args.map((arg) => (/\.(jsonl|csv)$/.test(arg) ? join(folder, arg) : arg)),
  );
  for (const spy of spies) spy.mockRestore();
  const bare = (texts: readonly string[]) => texts.join('').replaceAll(join(folder, '/'), '');
  return { status, out: bare(out), err: bare(err) };
}

function took(texts: string[], text: string | Uint8Array, rest: readonly unknown[]): true {
  texts.push(text.toString());
  for (const done of rest) if (typeof done === 'function') done();
  return true;
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
    const [there, back] = [
      await journal('merge', 'one.jsonl', 'two.jsonl'),
      await journal('merge', 'two.jsonl', 'one.jsonl'),
    ];
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

  test('[JRN-35] demo writes the invented athlete, the same bytes for the same seed, without a fault', async () => {
    const [one, again, other, bad] = [
      await journal('demo'),
      await journal('demo', '--seed', '1'),
      await journal('demo', '--seed', '2'),
      await journal('demo', '--seed', 'lucky'),
    ];
    expect([one?.status, bad?.status]).toEqual([0, 2]);
    expect(again?.out).toBe(one?.out);
    expect(other?.out).not.toBe(one?.out);
    writeFileSync(join(folder, 'demo.jsonl'), one?.out ?? '');
    const checked = await journal('check', 'demo.jsonl');
    expect(checked.status).toBe(0);
    expect(JSON.parse(checked.out).summary).toMatchObject({ problems: 0, canonical: true, unknownKinds: [] });
  });

  test('[CRS-27] export as a calendar writes the show, its dates and nothing else', async () => {
    const demo = await journal('demo');
    writeFileSync(join(folder, 'season.jsonl'), demo.out);
    const { status, out } = await journal('export', 'season.jsonl', '--as', 'ical');
    expect(status).toBe(0);
    expect(out.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\n')).toBe(true);
    const titles = [...out.matchAll(/^SUMMARY:(.*)\r$/gm)].map(([, title]) => title);
    expect(new Set(titles)).toEqual(
      new Set([
        'Hallmouth Spring Classic',
        'Posing practice',
        'Registration closes',
        'Athlete check-in',
        'First coat of tan',
        'Rehearsal: carbohydrate loading',
        String.raw`Rehearsal: photographs in the stage poses\, notes`,
      ]),
    );
    expect(out.match(/BEGIN:VEVENT/g)).toHaveLength(titles.length);
  });

  test('[JRN-30] the program itself answers and ends with the status', async () => {
    const command = [join(import.meta.dirname, '../../bin/stagewright'), 'journal', 'check', '-'];
    const child = execFile(process.execPath, command);
    child.stdin?.end('garbage\n');
    const out: string[] = [];
    child.stdout?.on('data', (text: string) => out.push(text));
    const status = await new Promise((resolve) => child.once('close', resolve));
    expect([status, out.join('').split('\n').length]).toEqual([1, 3]);
  });

  test('[JRN-34] an unknown format, option or verb and a missing file are named', async () => {
    const runs = [
      await journal('export', 'one.jsonl', '--as', 'xlsx'),
      await journal('import', 'one.csv'),
      await journal('check', 'one.jsonl', '--fast'),
      await journal('shred', 'one.jsonl'),
      await journal('check', 'nowhere.jsonl'),
      await journal('check', 'one.jsonl', '--as', 'csv'),
      await journal('export', 'one.jsonl', '--as', 'csv', '--kind', 'meal-eten'),
      await journal(),
    ];
    expect(runs.map((run) => run.status)).toEqual([2, 2, 2, 2, 1, 2, 1, 2]);
    expect(runs[0]?.err).toContain('There is no export "xlsx"; there are csv');
    expect(runs[5]?.err).toContain('"--as" is not known to journal check.');
    expect(runs[6]?.err).toContain('journal/no-such-kind');
    expect(JSON.parse(runs[4]?.out ?? '').problem.message).toBe('"nowhere.jsonl" cannot be read (ENOENT).');
  });
});
