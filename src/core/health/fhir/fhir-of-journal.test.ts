import { describe, expect, it } from 'vitest';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { factsOfFhir, fhirOfJournal, type FhirImport } from './fhir-of-journal.ts';

const entry = (id: string, kind: string, data: Entry['data'], at = '2027-03-01T07:30:00+01:00'): Entry => ({
  id,
  stamp: `s${id}`,
  device: 'd',
  kind,
  day: at.slice(0, 10),
  at,
  zone: 'Europe/Lisbon',
  data,
});
const journal = createLedger([
  entry('1', 'athlete-described', {
    birthYear: 1994,
    sex: 'female',
    heightCm: 166,
    units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
    cautionsRead: [],
  }),
  entry('2', 'body-weighed', { massKg: 61.4 }),
  entry('3', 'blood-drawn', {
    panel: 'p',
    drawn: { date: '2027-03-01', time: '07:40' },
    taking: [],
    values: [{ name: 'ALT', value: '<5', unit: 'U/L' }],
    origin: 'typed',
  }),
]);

function imported(text: string, ledger = createLedger([])): FhirImport {
  const outcome = factsOfFhir(text, ledger);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

describe('a journal and a FHIR file', () => {
  const text = JSON.stringify(fhirOfJournal(journal));

  it('[HLT-26] another journal takes panels and weights in, with their day and time', () => {
    const { facts, problems } = imported(text);
    expect(problems).toEqual([]);
    expect(facts).toEqual([
      expect.objectContaining({ kind: 'blood-drawn', day: '2027-03-01', clock: '07:40' }),
      { kind: 'body-weighed', day: '2027-03-01', clock: '07:30', data: { massKg: 61.4 } },
    ]);
    expect(facts[0]?.data).toMatchObject({
      origin: 'fhir',
      values: [{ loinc: '1742-6', value: 5, comparator: '<', unit: 'U/L' }],
    });
  });

  it('[HLT-16] nothing is taken twice: not from the own file, not from one read before', () => {
    const first = imported(text).facts.map((fact, index) => entry(`n${index}`, fact.kind, { ...fact.data }));
    expect(imported(text, createLedger(first))).toMatchObject({ facts: [], known: 2 });
    expect(imported(text, journal).facts.map(({ kind }) => kind)).toEqual([]);
  });

  it('[HLT-25] an empty journal makes a bundle with no one’s name in it', () => {
    expect(fhirOfJournal(createLedger([])).entry).toHaveLength(1);
  });
});
