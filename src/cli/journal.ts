import { readFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { parseArgs } from 'node:util';
import { checkJournal } from '#core/journal/check-journal.ts';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import { unite } from '#core/journal/union.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { answered, refused, type Outcome, type Problem } from '#core/problems/problem.ts';
import { journalExports, journalImports } from '#outside/files/journal-formats.ts';
import { linesOfBytes } from '#outside/files/text-lines.ts';
import { demoJournal } from '#demo/journal.ts';
import type { PlainCommand } from './command.ts';
import { finiteJson } from './finite-json.ts';
import { writeOut } from './write-out.ts';

type Lines = readonly (string | undefined)[];

const exportNames = journalExports.map((format) => format.name).join('|');
const importNames = journalImports.map((format) => format.name).join('|');

const help = `stagewright journal check FILE                          every damaged line with its place, then a summary
stagewright journal merge FILE FILE... > OUT            the union of journals, the same whatever their order
stagewright journal export FILE --as ${exportNames} [--kind KIND] > OUT
stagewright journal import FILE --from ${importNames} [--kind KIND] > OUT
stagewright journal demo [--seed N] > OUT                the invented athlete's journal

A journal is JSON Lines, one entry a line, sorted by stamp. "-" as FILE is standard input.
The exit status is 1 where something could not be read; everything else is still done.`;

export const journalCommand: PlainCommand = {
  name: 'journal',
  summary: 'The journal file: check, merge, export, import, demo.',
  help,
  async run(args) {
    const [verb = '', ...rest] = args;
    const read = readArguments(rest);
    if (!read.ok) return usage(read.problem.message);
    const { files, options } = read.value;
    const stray = Object.keys(options).find((option) => !(TAKES[verb] ?? []).includes(option));
    if (TAKES[verb] && stray !== undefined) return usage(`"--${stray}" is not known to journal ${verb}.`);
    const [file] = files;
    if (verb === 'merge' && files.length >= 1) return merge(files);
    if (verb === 'demo' && files.length === 0) return demo(options.seed ?? '1');
    if (verb === 'check' && file !== undefined && files.length === 1) return check(file);
    if (verb === 'export' && file !== undefined && files.length === 1) return exportAs(file, options);
    if (verb === 'import' && file !== undefined && files.length === 1) return importFrom(file, options);
    return usage(
      verb === '' ? 'Say what to do with the journal.' : `"journal ${args.join(' ')}" is not complete.`,
    );
  },
};

/** The options each verb takes. */
const TAKES: Readonly<Record<string, readonly string[]>> = {
  check: [],
  merge: [],
  export: ['as', 'kind'],
  import: ['from', 'kind'],
  demo: ['seed'],
};

interface Arguments {
  readonly files: readonly string[];
  readonly options: {
    readonly as?: string;
    readonly from?: string;
    readonly kind?: string;
    readonly seed?: string;
  };
}

function readArguments(args: readonly string[]): Outcome<Arguments> {
  try {
    const text = { type: 'string' } as const;
    const parsed = parseArgs({
      args: [...args],
      options: { as: text, from: text, kind: text, seed: text },
      allowPositionals: true,
    });
    return answered({ files: parsed.positionals, options: parsed.values });
  } catch (fault) {
    const message = fault instanceof Error ? fault.message : String(fault);
    return refused('journal/unknown-option', '', message, 'See journal --help.');
  }
}

async function check(file: string): Promise<number> {
  const lines = await readLines(file);
  if (!lines.ok) {
    await writeOut(`${finiteJson({ problem: lines.problem })}\n`);
    return 1;
  }
  const { problems, summary } = checkJournal(lines.value);
  const answers = [...problems.map((problem) => ({ problem })), { summary }];
  await writeOut(answers.map((answer) => `${finiteJson(answer)}\n`).join(''));
  return problems.length > 0 ? 1 : 0;
}

async function merge(files: readonly string[]): Promise<number> {
  const journals: (readonly Entry[])[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    const lines = await readLines(file);
    if (!lines.ok) return say([lines.problem]);
    const read = readJournal(lines.value);
    journals.push(read.entries);
    for (const problem of read.problems) problems.push({ ...problem, path: `${file}, ${problem.path}` });
  }
  const union = unite(...journals);
  await writeOut(writeJournal(union.entries));
  return say([...problems, ...union.problems]);
}

async function exportAs(file: string, options: Arguments['options']): Promise<number> {
  const format = journalExports.find((candidate) => candidate.name === options.as);
  if (!format) return usage(`There is no export "${options.as ?? ''}"; there are ${exportNames}.`);
  const lines = await readLines(file);
  if (!lines.ok) return say([lines.problem]);
  const read = readJournal(lines.value);
  const { kind } = options;
  if (kind !== undefined && !read.entries.some((entry) => entry.kind === kind)) {
    return say([...read.problems, noSuchKind(file, kind)]);
  }
  await writeOut(format.write(createLedger(read.entries), options));
  return say(read.problems);
}

async function importFrom(file: string, options: Arguments['options']): Promise<number> {
  const format = journalImports.find((candidate) => candidate.name === options.from);
  if (!format) return usage(`There is no import "${options.from ?? ''}"; there are ${importNames}.`);
  const lines = await readLines(file);
  if (!lines.ok) return say([lines.problem]);
  const damaged = lines.value.findIndex((line) => line === undefined);
  if (damaged !== -1) return say([notText(file, damaged + 1)]);
  const day = new Date().toISOString().slice(0, 10);
  const read = format.read(lines.value.join('\n'), { day, ...options });
  await writeOut(writeJournal(read.entries));
  return say(read.problems);
}

async function demo(seed: string): Promise<number> {
  if (!/^\d{1,9}$/.test(seed)) return usage(`"${seed}" is no seed; a seed is a whole number.`);
  await writeOut(writeJournal(demoJournal(Number(seed))));
  return 0;
}

async function readLines(file: string): Promise<Outcome<Lines>> {
  try {
    return answered(linesOfBytes(await (file === '-' ? buffer(process.stdin) : readFile(file))));
  } catch (fault) {
    const reason = fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault);
    return refused(
      'journal/no-file',
      file,
      `"${file}" cannot be read (${reason}).`,
      'Check the name and whether this user may read the file.',
    );
  }
}

function noSuchKind(file: string, kind: string): Problem {
  return {
    code: 'journal/no-such-kind',
    path: file,
    message: `There is no entry of the kind "${kind}" in "${file}".`,
    remedy: 'Correct its spelling, or leave --kind out to write all kinds.',
  };
}

function notText(file: string, line: number): Problem {
  return {
    code: 'journal/not-text',
    path: `${file}, line ${line}`,
    message: `Line ${line} of "${file}" is not UTF-8 text.`,
    remedy: 'Save the file as UTF-8 in the program it comes from.',
  };
}

/** Problems go to standard error where standard output carries a file; they make the exit status 1. */
function say(problems: readonly Problem[]): number {
  for (const problem of problems) process.stderr.write(`${finiteJson({ problem })}\n`);
  return problems.length > 0 ? 1 : 0;
}

function usage(message: string): number {
  process.stderr.write(`${message}\n\n${help}\n`);
  return 2;
}
