import type { Entry } from '#core/journal/entry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import type { Problem } from '#core/problems/problem.ts';

export interface FormatOptions {
  /** Only this kind of entry (export); the kind of rows that name none (import). */
  readonly kind?: string;
  /** The day that facts without a date of their own stand on (import). */
  readonly day?: string;
  /** The journal that an import is for: what it has already is not taken again. */
  readonly into?: Ledger;
}

/** A way to write a journal for another program. */
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
