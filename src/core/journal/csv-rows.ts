import { answered, refused, type Outcome, type Problem } from '../problems/problem.ts';
import type { Entry } from './entry.ts';
import { entryFault, isEntry, isPlain, MAX_DEPTH } from './entry-shape.ts';
import { importedEntry } from './imported-entry.ts';

/** Columns every table has, in this order; then "data.<field>", then "also.<field>" for fields not known here. */
const COLUMNS = ['id', 'stamp', 'device', 'kind', 'version', 'day', 'at', 'zone', 'replaces'] as const;
const DATA = 'data.';
const ALSO = 'also.';

/** Cells that a spreadsheet would take for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Entries as a table: a heading row and one row an entry. A cell is empty where the field is absent. Text stands as
 * it is, unless it could be taken for something else (a number, "true", an object, a formula): then, like objects
 * and lists, it is written as JSON. So every entry comes back as it was.
 */
export function entriesToRows(entries: readonly Entry[]): string[][] {
  const named = entries.map(byColumn);
  const more = new Set(named.flatMap((cells) => [...cells.keys()]));
  for (const column of COLUMNS) more.delete(column);
  const rank = (column: string) => `${column.startsWith(DATA) ? 0 : 1}${column}`;
  const columns = [...COLUMNS, ...[...more].sort((a, b) => (rank(a) < rank(b) ? -1 : 1))];
  return [columns, ...named.map((cells) => columns.map((column) => cells.get(column) ?? ''))];
}

function byColumn(entry: Entry): Map<string, string> {
  const cells = new Map<string, string>();
  for (const [field, value] of Object.entries(entry)) {
    if (field === 'data' || value === undefined) continue;
    const known = COLUMNS.some((column) => column === field);
    cells.set(known ? field : ALSO + field, known ? String(value) : toCell(value));
  }
  for (const [field, value] of Object.entries(entry.data)) {
    if (value !== undefined) cells.set(DATA + field, toCell(value));
  }
  return cells;
}

function toCell(value: unknown): string {
  if (typeof value !== 'string') return JSON.stringify(value);
  return value === '' || FORMULA.test(value) || fromJson(value) !== undefined ? JSON.stringify(value) : value;
}

function fromCell(cell: string): unknown {
  return (fromJson(cell) ?? { value: cell }).value;
}

function fromJson(text: string): { value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

export interface RowsRead {
  readonly entries: readonly Entry[];
  /** Each row that could not be read, `path` being "row N" as a spreadsheet counts. */
  readonly problems: readonly Problem[];
}

/**
 * Reads a table back. Rows of an own table without `id` become new entries: they need a kind (a column, or `kind`)
 * and a day; their data is held against the kind; the same row always becomes the same entry.
 */
export function rowsToEntries(rows: readonly (readonly string[])[], kind?: string): RowsRead {
  const [columns, ...body] = rows;
  const strange = columns?.find((column) => !isColumn(column));
  if (!columns || strange !== undefined) {
    return { entries: [], problems: [noColumn(strange)] };
  }
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  const twins = new Map<string, number>();
  for (const [index, row] of body.entries()) {
    if (row.every((cell) => cell === '')) continue;
    const text = JSON.stringify(row);
    const twin = twins.get(text) ?? 0;
    twins.set(text, twin + 1);
    const read = readRow(columns, row, {
      place: `row ${index + 2}`,
      twin,
      ...(kind === undefined ? {} : { kind }),
    });
    if (read.ok) entries.push(read.value);
    else problems.push(read.problem);
  }
  return { entries, problems };
}

interface RowPlace {
  readonly place: string;
  /** How many rows above say just the same. */
  readonly twin: number;
  /** The kind of rows that name none. */
  readonly kind?: string;
}

function readRow(columns: readonly string[], row: readonly string[], where: RowPlace): Outcome<Entry> {
  const { place, twin, kind } = where;
  if (row.length > columns.length) {
    return refused(
      'journal/row-too-long',
      place,
      `There are more cells than columns in ${place}.`,
      'Quote cells that contain a comma.',
    );
  }
  const fields = new Map<string, unknown>();
  const data: [string, unknown][] = [];
  for (const [i, column] of columns.entries()) {
    const cell = row[i] ?? '';
    if (cell === '') continue;
    if (column.startsWith(DATA)) data.push([column.slice(DATA.length), fromCell(cell)]);
    else if (column.startsWith(ALSO)) fields.set(column.slice(ALSO.length), fromCell(cell));
    else fields.set(column, column === 'version' ? Number(cell) : cell);
  }
  fields.set('data', Object.fromEntries(data));
  if (!fields.has('kind') && kind !== undefined) fields.set('kind', kind);
  return fields.has('id') ? knownRow(fields, place) : newRow(fields, place, twin);
}

function knownRow(fields: ReadonlyMap<string, unknown>, place: string): Outcome<Entry> {
  const entry: unknown = Object.fromEntries(fields);
  if (!isPlain(entry)) {
    return refused(
      'journal/not-plain',
      place,
      `A cell in ${place} has a number out of range or nests deeper than ${MAX_DEPTH} levels.`,
      'Correct the cell.',
    );
  }
  if (isEntry(entry)) return answered(entry);
  const fault = entryFault(entry);
  return refused(
    'journal/not-an-entry',
    place,
    `The "${fault?.field}" in ${place} cannot be read.`,
    `Make it ${fault?.expected}.`,
  );
}

/** A row without id becomes a new entry; fields of an entry that only a device gives are not taken from it. */
function newRow(fields: ReadonlyMap<string, unknown>, place: string, twin: number): Outcome<Entry> {
  const stray = [...fields.keys()].find((field) => !OWN_TABLE.includes(field));
  if (stray !== undefined) {
    return refused(
      'journal/row-without-id',
      place,
      `The row in ${place} has "${stray}" but no "id".`,
      'Give the row its id, or leave out everything but kind, day, at, zone and data.',
    );
  }
  const text = (field: string) => (fields.has(field) ? { [field]: String(fields.get(field)) } : {});
  const fact = { kind: '', day: '', ...text('kind'), ...text('day'), ...text('at'), ...text('zone') };
  return importedEntry({ ...fact, data: fields.get('data') }, place, twin);
}

/** Fields that rows of an own table may have. */
const OWN_TABLE = ['kind', 'day', 'at', 'zone', 'data'];

function isColumn(column: string): boolean {
  return column.startsWith(DATA) || column.startsWith(ALSO) || COLUMNS.some((known) => known === column);
}

function noColumn(column: string | undefined): Problem {
  return {
    code: 'journal/unknown-column',
    path: 'row 1',
    message: column === undefined ? 'The table is empty.' : `"${column}" is not a column that is known here.`,
    remedy: `Head the columns ${COLUMNS.join(', ')}, or data.FIELD for a field of the entry's data.`,
  };
}
