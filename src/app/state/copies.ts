import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import type { Problem } from '#core/problems/problem.ts';
import { now } from './moments.ts';
import { which } from './journals.ts';
import { today } from './clock.ts';
import { ledger } from './ledger.ts';
import { localMemory } from './local-memory.ts';
import { commit } from './saving.ts';

const DAY_MS = 86_400_000;
/** Some hundred years of entries; what is larger is no journal and would only exhaust the device. */
const MOST_FILE_BYTES = 256 * 1024 * 1024;

/** Counts up when a copy was taken, so that the age is worked out anew. */
const copiesTaken = signal(0);

/** What a file holds, before or after it is taken in. */
export interface Imported {
  /** Entries that were not in the journal. */
  readonly added: number;
  /** Entries that were there already. */
  readonly known: number;
  /** Damaged lines, each with its place; all others are read. */
  readonly problems: readonly Problem[];
  readonly status: 'saved' | 'notSaved' | 'maybeSaved';
}

/** The whole journal as JSON Lines, held entries too. */
export function journalText(): string {
  return writeJournal(ledger.peek().entries());
}

/** Call once the copy is on its way out of this browser. */
export function noteExported(): void {
  localMemory.set(`${which.peek()}/exported`, String(Date.now()));
  copiesTaken.value += 1;
}

/** Whole days since the last copy left this browser; undefined where none ever did. */
export const exportedAgeDays: ReadonlySignal<number | undefined> = computed(() => {
  // Read, so that a copy just taken and the passing of time are both seen.
  void [now.value, copiesTaken.value];
  const exported = Number(localMemory.get(`${which.value}/exported`) ?? Number.NaN);
  return Number.isFinite(exported) ? Math.max(0, Math.floor((Date.now() - exported) / DAY_MS)) : undefined;
});

/** What taking a file in would do; nothing is written. */
export function previewImport(text: string): Omit<Imported, 'status'> {
  const { news, known, problems } = newsIn(readJournal(text));
  return { added: news.length, known, problems };
}

/** Takes the text of a journal in: the union with what is here. Doing it twice changes nothing. */
export function importText(text: string): Promise<Imported> {
  return takeFile(readJournal(text));
}

/** Takes a file in: a journal, or another format that is recognised. Bytes that are no text are named. */
export async function importFile(file: File): Promise<Imported> {
  if (file.size > MOST_FILE_BYTES) return { added: 0, known: 0, problems: [tooLarge(file)], status: 'saved' };
  const { journalImports, linesOfBytes } = await formats();
  const lines = linesOfBytes(new Uint8Array(await file.arrayBuffer()));
  const text = lines.map((line) => line ?? '\uFFFD').join('\n');
  const format = journalImports.find((candidate) => candidate.recognises(file.name, text));
  return takeFile(
    format ? format.read(text, { day: today.peek(), into: ledger.peek() }) : readJournal(lines),
  );
}

function tooLarge(file: File): Problem {
  return {
    code: 'journal/file-too-large',
    path: file.name,
    message: `The file has ${Math.round(file.size / 1024 / 1024)} MB; a journal has at most ${MOST_FILE_BYTES / 1024 / 1024} MB.`,
    remedy: 'Choose the copy of a journal, or divide the file by lines.',
  };
}

export interface ExportedFile {
  readonly name: string;
  readonly text: string;
  readonly mediaType: string;
}

/** The journal written for another program; undefined where there is no such format. */
export async function exportAs(name: string, day: string): Promise<ExportedFile | undefined> {
  const format = (await formats()).journalExports.find((candidate) => candidate.name === name);
  if (!format) return undefined;
  const text = format.write(ledger.peek(), {});
  return { name: `stagewright-${day}.${format.fileEnding}`, text, mediaType: format.mediaType };
}

/** Loaded when first needed: most days no file is read or written. */
async function formats() {
  const [{ journalExports, journalImports }, { linesOfBytes }] = await Promise.all([
    import('#outside/files/journal-formats.ts'),
    import('#outside/files/text-lines.ts'),
  ]);
  return { journalExports, journalImports, linesOfBytes };
}

export { askToPersist, persisted } from './persistence.ts';

interface FileRead {
  readonly entries: readonly Entry[];
  readonly problems: readonly Problem[];
}

async function takeFile(read: FileRead): Promise<Imported> {
  const { news, known, problems } = newsIn(read);
  if (news.length === 0) return { added: 0, known, problems, status: 'saved' };
  const outcome = await commit(news);
  return { added: news.length, known, problems, status: outcome.status };
}

function newsIn(read: FileRead): { news: readonly Entry[]; known: number; problems: readonly Problem[] } {
  const held = ledger.peek();
  const news = read.entries.filter((entry) => held.entry(entry.id) === undefined);
  return { news, known: read.entries.length - news.length, problems: read.problems };
}
