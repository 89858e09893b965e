import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { JournalKeys } from './journal-keys.ts';
import { openEntry, sealEntry } from './seal-entry.ts';

const MARK = 'stagewright 1';

const head = v.object({ sealed: v.literal(MARK), journal: v.string(), entries: v.number() });
/** As an entry travels, but of any length: a file has no server to please. */
const line = v.strictObject({ id: v.string(), stamp: v.string(), body: v.string() });

/** A whole journal that only its key opens (SYN-23): JSON Lines, first what it is and how much, then an entry a line. */
export function sealFile(keys: JournalKeys, entries: readonly Entry[]): string {
  const first = { sealed: MARK, journal: keys.journal, entries: entries.length };
  return [first, ...entries.map((entry) => sealEntry(keys, entry))]
    .map((part) => `${JSON.stringify(part)}\n`)
    .join('');
}

/** Whether a text is such a file; read from its first line alone. */
export function isSealedFile(text: string): boolean {
  return headOf(text.slice(0, Math.max(0, text.indexOf('\n')))) !== undefined;
}

export interface OpenedFile {
  readonly entries: readonly Entry[];
  readonly problems: readonly Problem[];
}

/** The entries of a sealed file. Never throws; what does not open, and what is missing at the end, is named. */
export function openFile(keys: JournalKeys | undefined, text: string): OpenedFile {
  const [first = '', ...lines] = text.split('\n').filter((part) => part !== '');
  const said = headOf(first);
  if (!said || !keys || said.journal !== keys.journal) return { entries: [], problems: [OTHER_KEY] };
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  for (const [at, part] of lines.entries()) {
    const read = v.safeParse(line, jsonOf(part));
    const opened = read.success ? openEntry(keys, read.output) : undefined;
    if (opened?.ok) entries.push(opened.value);
    else problems.push(damaged(at + 2));
  }
  const missing = said.entries - lines.length;
  if (missing > 0) problems.push(cutOff(missing));
  return { entries, problems };
}

function headOf(text: string): v.InferOutput<typeof head> | undefined {
  const read = v.safeParse(head, jsonOf(text));
  return read.success ? read.output : undefined;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // A line that is no JSON is named as damaged.
    return undefined;
  }
}

const OTHER_KEY: Problem = {
  code: 'seal/other-key',
  path: 'line 1',
  message: 'This copy is sealed with a key that this device does not have.',
  remedy: 'Under Devices, join with the phrase on the recovery sheet of that journal; then take the copy in.',
};

function damaged(number: number): Problem {
  return {
    code: 'seal/damaged',
    path: `line ${number}`,
    message: `Line ${number} does not open: it was changed since it was sealed.`,
    remedy: 'All other lines are read. Look for this entry in another copy.',
  };
}

function cutOff(missing: number): Problem {
  return {
    code: 'seal/cut-off',
    path: 'the end',
    message: `${missing} ${missing === 1 ? 'entry is' : 'entries are'} missing at the end of this copy.`,
    remedy: 'What is there is read. Look for the rest in another copy.',
  };
}
