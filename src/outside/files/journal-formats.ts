import type { Entry } from '#core/journal/entry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import type { Problem } from '#core/problems/problem.ts';
import { entriesToRows, rowsToEntries } from '#core/journal/csv-rows.ts';
import { readCsv, writeCsv } from './csv.ts';
import { recipeExport, recipeImport } from './recipe-format.ts';

export interface FormatOptions {
  /** Only this kind of entry (export); the kind of rows that name none (import). */
  readonly kind?: string;
  /** The day that facts without a date of their own stand on (import). */
  readonly day?: string;
}

/** A way to write a journal for another program. Faces list them; each is one line in `exports` below. */
export interface JournalExport {
  /** What `--as` names it by. */
  readonly name: string;
  readonly says: string;
  readonly fileEnding: string;
  readonly mediaType: string;
  readonly write: (ledger: Ledger, options: FormatOptions) => string;
}

/** A way to read entries from a file of another program. */
export interface JournalImport {
  /** What `--from` names it by. */
  readonly name: string;
  readonly says: string;
  /** Whether a file is of this format, by its name or how it begins. */
  readonly recognises: (fileName: string, text: string) => boolean;
  readonly read: (
    text: string,
    options: FormatOptions,
  ) => { readonly entries: readonly Entry[]; readonly problems: readonly Problem[] };
}

const csvExport: JournalExport = {
  name: 'csv',
  says: 'a table (RFC 4180), one row an entry',
  fileEnding: 'csv',
  mediaType: 'text/csv; charset=utf-8',
  write: (ledger, { kind }) =>
    writeCsv(entriesToRows(ledger.entries().filter((entry) => kind === undefined || entry.kind === kind))),
};

const csvImport: JournalImport = {
  name: 'csv',
  says: 'a table with the columns that the export writes, or day and data.FIELD',
  recognises: (fileName) => /\.csv$/i.test(fileName),
  read(text, { kind }) {
    const { rows, problems } = readCsv(text);
    const read = rowsToEntries(rows, kind);
    return { entries: read.entries, problems: [...problems, ...read.problems] };
  },
};

export const journalExports: readonly JournalExport[] = [csvExport, recipeExport];
export const journalImports: readonly JournalImport[] = [csvImport, recipeImport];
