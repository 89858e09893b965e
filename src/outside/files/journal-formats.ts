import { calendarOf } from '#core/cycle/calendar.ts';
import { entriesToRows, rowsToEntries } from '#core/journal/csv-rows.ts';
import { momentInZone } from '../time-zones/time-zones.ts';
import { readCsv, writeCsv } from './csv.ts';
import { fhirExport, fhirImport } from './fhir-format.ts';
import type { JournalExport, JournalImport } from './journal-format.ts';
import { writeCalendar } from './icalendar.ts';
import { recipeExport, recipeImport } from './recipe-format.ts';

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

const calendarExport: JournalExport = {
  name: 'ical',
  says: 'a calendar (RFC 5545) of shows, dated tasks and stretches',
  fileEnding: 'ics',
  mediaType: 'text/calendar; charset=utf-8',
  write: (ledger) => writeCalendar(calendarOf(ledger, momentInZone)),
};

/** Faces list them; each format is one line here. */
export const journalExports: readonly JournalExport[] = [csvExport, calendarExport, fhirExport, recipeExport];
export const journalImports: readonly JournalImport[] = [csvImport, fhirImport, recipeImport];
