import { fhirOfJournal, factsOfFhir } from '#core/health/fhir/fhir-of-journal.ts';
import type { Entry } from '#core/journal/entry.ts';
import { importedEntry } from '#core/journal/imported-entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import type { Problem } from '#core/problems/problem.ts';
import { parseClock } from '#core/units/clock.ts';
import type { JournalExport, JournalImport } from './journal-format.ts';

export const fhirExport: JournalExport = {
  name: 'fhir',
  says: 'blood panels and body measurements as a FHIR R4 Bundle',
  fileEnding: 'fhir.json',
  mediaType: 'application/fhir+json; charset=utf-8',
  write: (ledger) => `${JSON.stringify(fhirOfJournal(ledger), undefined, 2)}\n`,
};

/** Panels and weights of a file that a laboratory or a portal gave; what the journal has already is passed over. */
export const fhirImport: JournalImport = {
  name: 'fhir',
  says: 'blood panels and weights of a FHIR R4 Bundle, DiagnosticReport or Observation',
  recognises: (_, text) =>
    /^\s*\{[^]{0,4000}"resourceType"\s*:\s*"(Bundle|DiagnosticReport|Observation)"/.test(text),
  read(text, { into }) {
    const outcome = factsOfFhir(text, into ?? createLedger([]));
    if (!outcome.ok) return { entries: [], problems: [outcome.problem] };
    const entries: Entry[] = [];
    const problems: Problem[] = [...outcome.value.problems];
    for (const { kind, day, clock, data } of outcome.value.facts) {
      const minutes = clock === undefined ? undefined : parseClock(clock);
      const entry = importedEntry(
        { kind, day, data, ...(minutes === undefined ? {} : { clock: minutes }) },
        `the ${kind === 'blood-drawn' ? 'panel' : 'weight'} of ${day}`,
      );
      if (entry.ok) entries.push(entry.value);
      else problems.push(entry.problem);
    }
    return { entries, problems };
  },
};
