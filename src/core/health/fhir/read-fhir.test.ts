import { describe, expect, it } from 'vitest';
import { alreadyKept, panelOfDraft } from './draft-to-panel.ts';
import { parseBoundedJson } from './bounded-json.ts';
import { readFhir, type FhirReading } from './read-fhir.ts';

const loinc = (code: string, display: string) => ({
  coding: [{ system: 'http://loinc.org', code, display }],
});
const mgPerDl = { unit: 'mg/dL', system: 'http://unitsofmeasure.org', code: 'mg/dL' };
const laboratory = [
  { coding: [{ system: 'http://terminology.hl7.org/CodeSystem/observation-category', code: 'laboratory' }] },
];

const creatinine = {
  resourceType: 'Observation',
  id: 'o1',
  status: 'final',
  category: laboratory,
  code: loinc('2160-0', 'Creatinine [Mass/volume] in Serum or Plasma'),
  subject: { reference: 'Patient/p1' },
  effectiveDateTime: '2027-03-01T07:40:00+01:00',
  valueQuantity: { value: 1.1, ...mgPerDl },
  referenceRange: [{ low: { value: 0.7, ...mgPerDl }, high: { value: 1.3, ...mgPerDl } }],
};

const bundle = (...resources: object[]) => ({
  resourceType: 'Bundle',
  type: 'searchset',
  entry: resources.map((resource) => ({ resource })),
});

function read(file: object): FhirReading {
  const outcome = readFhir(JSON.stringify(file));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}
const refusal = (text: string) => {
  const outcome = readFhir(text);
  return outcome.ok ? undefined : outcome.problem.code;
};
const draftOf = (observation: object) => read(bundle({ ...creatinine, ...observation })).panels[0]?.values[0];

describe('a FHIR file read', () => {
  it("[HLT-20] takes value, unit, comparator, code and the laboratory's own range", () => {
    expect(draftOf({})).toEqual({
      path: 'entry.0.resource',
      loinc: '2160-0',
      name: 'Creatinine [Mass/volume] in Serum or Plasma',
      value: 1.1,
      unit: 'mg/dL',
      interval: { low: 0.7, high: 1.3 },
    });
    const bound = { valueQuantity: { value: 0.1, comparator: '<', ...mgPerDl } };
    expect(draftOf(bound)).toMatchObject({ value: 0.1, comparator: '<' });
    expect(read(bundle(creatinine)).panels[0]?.drawn).toEqual({ date: '2027-03-01', time: '07:40' });
  });

  it("[HLT-20] the name on the report goes before the code list's", () => {
    expect(draftOf({ code: { ...loinc('2160-0', 'Creatinine'), text: 'CREA (serum)' } })?.name).toBe(
      'CREA (serum)',
    );
  });

  it('[HLT-20] a code whose check digit does not fit is left out, the name kept', () => {
    expect(draftOf({ code: loinc('2160-1', 'Creatinine') })).not.toHaveProperty('loinc');
  });

  it('[HLT-20] numbers written as texts are read, words are passed over with a word', () => {
    const written = (valueString: string) => draftOf({ valueQuantity: undefined, valueString });
    expect(written('<0.1')).toMatchObject({ value: 0.1, comparator: '<' });
    expect(written('5.2 mg/dL')).toMatchObject({ value: 5.2, unit: 'mg/dL' });
    const words = read(bundle({ ...creatinine, valueQuantity: undefined, valueString: 'not detected' }));
    expect(words.panels).toEqual([]);
    expect(words.problems[0]?.code).toBe('health/fhir-passed-over');
  });

  it.each([
    ['0.7-1.3', { low: 0.7, high: 1.3 }],
    ['0.7 \u2013 1.3 mg/dL', { low: 0.7, high: 1.3 }],
    ['<1.3', { high: 1.3 }],
    ['>= 60', { low: 60 }],
  ])('[HLT-20] a range in words is read: %s', (text, interval) => {
    expect(draftOf({ referenceRange: [{ text }] })?.interval).toEqual(interval);
  });

  it('[HLT-20] a range of another kind, of another unit or turned round is not taken for the normal one', () => {
    const range = (more: object) => draftOf({ referenceRange: [{ low: { value: 2 }, ...more }] })?.interval;
    expect(range({})).toEqual({ low: 2 });
    expect(range({ type: { coding: [{ code: 'therapeutic' }] } })).toBeUndefined();
    expect(range({ low: { value: 62, unit: 'umol/L' } })).toBeUndefined();
    expect(range({ high: { value: 1 } })).toBeUndefined();
  });

  it('[HLT-21] a value without unit is named and asked for, never guessed', () => {
    const { panels, problems } = read(bundle({ ...creatinine, valueQuantity: { value: 1.1 } }));
    expect(problems).toEqual([
      expect.objectContaining({ code: 'health/fhir-no-unit', path: 'entry.0.resource' }),
    ]);
    const draft = panels[0];
    expect(draft && panelOfDraft(draft, 'p').left).toHaveLength(1);
    expect(draft && panelOfDraft(draft, 'p').data).toBeUndefined();
  });

  it('[HLT-21] a value without a date is named, not dated', () => {
    const { panels, problems } = read(bundle({ ...creatinine, effectiveDateTime: '2027' }));
    expect(panels).toEqual([]);
    expect(problems[0]?.code).toBe('health/fhir-no-date');
  });

  it('[HLT-22] reports of one moment are one panel; their laboratory and numbers are kept', () => {
    const report = (id: string, result: string) => ({
      resourceType: 'DiagnosticReport',
      id,
      status: 'final',
      code: { text: 'CBC' },
      subject: { reference: 'Patient/p1' },
      effectiveDateTime: '2027-03-01T07:40:00+01:00',
      performer: [{ display: 'Harbour Laboratory' }],
      result: [{ reference: `Observation/${result}` }],
    });
    const glucose = {
      ...creatinine,
      id: 'o2',
      code: loinc('2345-7', 'Glucose'),
      effectiveDateTime: undefined,
    };
    const { panels } = read(
      bundle(report('r1', 'o1'), report('r2', 'o2'), creatinine, glucose, {
        ...creatinine,
        id: 'o3',
        effectiveDateTime: '2027-01-05',
      }),
    );
    expect(panels.map(({ drawn, values }) => [drawn.date, values.length])).toEqual([
      ['2027-01-05', 1],
      ['2027-03-01', 2],
    ]);
    expect(panels[1]).toMatchObject({ laboratory: 'Harbour Laboratory', report: 'r1, r2' });
  });

  it('[HLT-22] a report may hold its results inside itself, a panel in components', () => {
    const report = {
      resourceType: 'DiagnosticReport',
      status: 'final',
      code: { text: 'Lipids' },
      effectiveDateTime: '2027-03-01',
      contained: [{ ...creatinine, id: 'in', subject: undefined, effectiveDateTime: undefined }],
      result: [{ reference: '#in' }],
    };
    expect(read(report).panels[0]?.drawn).toEqual({ date: '2027-03-01' });
    const split = {
      ...creatinine,
      valueQuantity: undefined,
      component: [{ code: loinc('2085-9', 'HDL'), valueQuantity: { value: 55, ...mgPerDl } }],
    };
    expect(read(bundle(split)).panels[0]?.values[0]).toMatchObject({
      loinc: '2085-9',
      path: 'entry.0.resource.component.0',
    });
  });

  it('[HLT-22] void results and measurements of another kind are left alone; body weight is read', () => {
    const vital = [{ coding: [{ code: 'vital-signs' }] }];
    const weight = {
      ...creatinine,
      category: vital,
      code: loinc('29463-7', 'Body weight'),
      valueQuantity: { value: 180, unit: '[lb_av]' },
    };
    const pulse = { ...creatinine, category: vital, code: loinc('8867-4', 'Heart rate') };
    const reading = read(bundle({ ...creatinine, status: 'entered-in-error' }, weight, pulse));
    expect(reading.panels).toEqual([]);
    expect(reading.weights[0]?.massKg).toBeCloseTo(81.65, 2);
  });

  it('[HLT-23] the file of several people is refused', () => {
    const other = { ...creatinine, subject: { reference: 'Patient/p2' } };
    expect(refusal(JSON.stringify(bundle(creatinine, other)))).toBe('health/fhir-several-people');
    const people = [
      { resourceType: 'Patient', id: 'p1' },
      { resourceType: 'Patient', id: 'p2' },
    ];
    expect(refusal(JSON.stringify(bundle(creatinine, ...people)))).toBe('health/fhir-several-people');
    expect(
      refusal(JSON.stringify(bundle(creatinine, { resourceType: 'Patient', id: 'p1' }))),
    ).toBeUndefined();
  });

  it.each([
    ['{"resourceType":"Bundle","entry":[', 'health/fhir-not-json'],
    ['<Bundle/>', 'health/fhir-not-json'],
    ['[]', 'health/fhir-other-resource'],
    ['{"resourceType":"Medication"}', 'health/fhir-other-resource'],
    [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, 'health/fhir-too-deep'],
    [`${'{"a":'.repeat(70)}1${'}'.repeat(70)}`, 'health/fhir-too-deep'],
  ])('[HLT-24] is refused without harm: %#', (text, code) => {
    expect(refusal(text)).toBe(code);
  });

  it('[HLT-24] a file too big or with too many parts is refused before it is built', () => {
    const bounds = { characters: 100, depth: 5, parts: 20 };
    const code = (text: string) => {
      const outcome = parseBoundedJson(text, bounds);
      return outcome.ok ? 'read' : outcome.problem.code;
    };
    expect(code(`"${'x'.repeat(200)}"`)).toBe('health/fhir-too-big');
    expect(code(`[${'1,'.repeat(30)}1]`)).toBe('health/fhir-too-big');
    expect(code('{"a":"[[[[[[[[{{{{,,,,,,,,,,,,,,,,,,,,,,,,\\"[["}')).toBe('read');
  });

  it('[HLT-24] whatever the file holds, reading does not throw', () => {
    const odd = [
      null,
      1,
      'x',
      [],
      {},
      { resourceType: 5 },
      { resourceType: 'Observation', code: [] },
      {
        resourceType: 'Observation',
        code: { coding: 'x', text: 7 },
        valueQuantity: { value: '5' },
        component: [null, 3],
        referenceRange: 'no',
      },
    ];
    const text = JSON.stringify({
      resourceType: 'Bundle',
      entry: odd.flatMap((resource) => [resource, { resource }]),
    });
    expect(readFhir(text).ok).toBe(true);
  });

  it('[HLT-16] a file read twice is noticed', () => {
    const draft = read(bundle(creatinine)).panels[0];
    const kept = draft && panelOfDraft(draft, 'p').data;
    expect(draft && kept && alreadyKept(draft, [kept])).toBe(true);
    const other = read(bundle({ ...creatinine, valueQuantity: { value: 1.2, ...mgPerDl } })).panels[0];
    expect(other && kept && alreadyKept(other, [kept])).toBe(false);
    const typed = kept && { ...kept, values: [{ name: 'creatinine', value: 97, unit: '\u00B5mol/L' }] };
    expect(draft && typed && alreadyKept(draft, [typed])).toBe(true);
  });
});
