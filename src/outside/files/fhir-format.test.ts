import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { demoJournal } from '#demo/journal.ts';
import { bundleValidator } from '../../../test/health/bundle-validator.ts';
import { fhirExport, fhirImport } from './fhir-format.ts';

const isBundle = bundleValidator();
const ledger = createLedger(demoJournal(1));
const text = fhirExport.write(ledger, {});

describe('a journal as a FHIR file', () => {
  it('[HLT-25] keeps to the standard’s JSON schema, body weights included', () => {
    const bundle: unknown = JSON.parse(text);
    expect([isBundle(bundle), isBundle.errors]).toEqual([true, null]);
    // 29463-7 is the LOINC code of body weight in the standard's vital signs profile.
    expect(text.split('"29463-7"').length).toBeGreaterThan(100);
    expect(text).toContain('"1742-6"');
  });

  it('[HLT-27] taken into an empty journal it brings panels and weights; taken in again, nothing', () => {
    const { entries, problems } = fhirImport.read(text, {});
    expect(problems).toEqual([]);
    expect(entries.filter(({ kind }) => kind === 'blood-drawn')).toHaveLength(2);
    const into = createLedger(entries);
    expect(into.problems).toEqual([]);
    expect(fhirImport.read(text, { into }).entries).toEqual([]);
    expect(fhirImport.read(text, { into: ledger }).entries).toEqual([]);
    // The same file on another device makes the very same entries.
    expect(fhirImport.read(text, {}).entries).toEqual(entries);
  });

  it('[HLT-27] is told by what it is, not by its name; what is no FHIR is a problem', () => {
    expect(fhirImport.recognises('results', text)).toBe(true);
    expect(fhirImport.recognises('journal.json', '{"id":"1","kind":"note-written"}')).toBe(false);
    expect(fhirImport.read('{"resourceType":"Bundle"', {}).problems[0]?.code).toBe('health/fhir-not-json');
  });
});
