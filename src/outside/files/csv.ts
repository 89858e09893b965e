import papaparse from 'papaparse';
import type { Problem } from '#core/problems/problem.ts';

/** RFC 4180: CRLF after every row, cells quoted where they hold a comma, quote or line end, quotes doubled. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.length === 0
    ? ''
    : `${papaparse.unparse(
        rows.map((row) => [...row]),
        { newline: '\r\n' },
      )}\r\n`;
}

/**
 * Reads RFC 4180, also with bare line feeds and a byte order mark. Rows with a fault are named and
 * left out; a quote that is never closed takes the rest of the file with it.
 */
export function readCsv(text: string): {
  rows: readonly (readonly string[])[];
  problems: readonly Problem[];
} {
  const parsed = papaparse.parse<string[]>(text.replace(/^\uFEFF/, ''), { delimiter: ',' });
  const faulty = new Map(parsed.errors.map((error) => [error.row ?? 0, error.message]));
  const problems = [...faulty].map(([row, detail]) => ({
    code: 'journal/row-not-csv',
    path: `row ${row + 1}`,
    message: `Row ${row + 1} is not CSV as RFC 4180 has it (${detail}).`,
    remedy: 'Close every quote, and double a quote inside quotes.',
  }));
  return { rows: parsed.data.map((row, i) => (faulty.has(i) ? [] : row)), problems };
}
