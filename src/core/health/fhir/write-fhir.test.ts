import fc from 'fast-check';
import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { healthKinds } from '#core/journal/kinds/health.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { bundleValidator } from '../../../../test/health/bundle-validator.ts';
import { LOINC_NOTICE, labAnalytes } from '#core/tables/lab-analytes.ts';
import { hasLoincCheckDigit } from '../panel/loinc-check-digit.ts';
import { bodyMeasurements } from './body-observations.ts';
import { panelOfDraft, type DrawnPanel } from './draft-to-panel.ts';
import { nameUuid } from './name-uuid.ts';
import { readFhir } from './read-fhir.ts';
import { writeFhir } from './write-fhir.ts';

const isBundle = bundleValidator();

const panel: DrawnPanel = parse(healthKinds['blood-drawn'], {
  panel: 'mid-preparation',
  laboratory: 'Harbour Laboratory',
  drawn: { date: '2027-03-01', time: '07:40', fastedHours: 12 },
  taking: ['creatine'],
  values: [
    { name: 'ALT', value: 38, unit: 'U/L', interval: { high: 35 } },
    { loinc: '2160-0', value: 1.2, unit: 'mg/dL', interval: { low: 0.7, high: 1.3 } },
    { name: 'glucose', value: 4.9, unit: 'mmol/L' },
    { name: 'TSH', value: '<0.1', unit: 'mIU/L' },
    { name: 'Zonulin', value: 5, unit: 'zu' },
    { name: 'urea', value: 30, unit: 'mg/dL' },
  ],
  origin: 'typed',
  report: 'R-77',
});

describe('a FHIR bundle written', () => {
  it("[HLT-25] validates against the standard's JSON schema", () => {
    const bundle = writeFhir({
      athlete: { sex: 'female', birthYear: 1994 },
      panels: [{ data: panel, offset: '+01:00' }],
      body: bodyMeasurements(
        createLedger([
          {
            id: 'w1',
            stamp: 's1',
            device: 'd',
            kind: 'body-weighed',
            day: '2027-03-01',
            at: '2027-03-01T06:10:00+01:00',
            zone: 'Europe/Lisbon',
            data: { massKg: 61.4 },
          },
          {
            id: 'f1',
            stamp: 's2',
            device: 'd',
            kind: 'folds-measured',
            day: '2027-03-01',
            at: '2027-03-01T06:20:00+01:00',
            zone: 'Europe/Lisbon',
            data: { sites: { triceps: [9, 9.4, 9.2] } },
          },
          {
            id: 'h1',
            stamp: 's3',
            device: 'd',
            kind: 'feeling-noted',
            day: '2027-03-01',
            at: '2027-03-01T06:21:00+01:00',
            zone: 'Europe/Lisbon',
            data: { restingHeartRateBpm: 47 },
          },
        ]),
      ),
    });
    expect(isBundle(bundle)).toBe(true);
    expect(bundle.entry).toHaveLength(1 + 1 + 6 + 3);
    expect(bundle.meta.tag[0]?.display).toBe(LOINC_NOTICE);
    expect(JSON.stringify(bundle)).toContain('"value":9.2');
  });

  it('[HLT-25] the schema would find a mistake', () => {
    const bundle = writeFhir({ athlete: {}, panels: [{ data: panel }], body: [] });
    const broken = JSON.parse(JSON.stringify(bundle).replace('"status":"final"', '"status":"done"'));
    expect(isBundle(broken)).toBe(false);
  });

  it("[HLT-25] codes each value by its unit, keeps the laboratory's unit and interval, invents none", () => {
    const text = JSON.stringify(writeFhir({ athlete: {}, panels: [{ data: panel }], body: [] }));
    expect(text).toContain('"code":"14749-6"');
    expect(text).toContain(
      '"comparator":"<","unit":"mIU/L","system":"http://unitsofmeasure.org","code":"m[IU]/L"',
    );
    expect(text).toContain('{"value":5,"unit":"zu"}');
    expect(text).not.toContain('3094-0');
    expect(text).toContain('"effectiveDateTime":"2027-03-01"');
  });

  it('[HLT-25] same content, same bytes; every resource its own name', () => {
    const content = { athlete: {}, panels: [{ data: panel }], body: [] };
    expect(JSON.stringify(writeFhir(content))).toBe(JSON.stringify(writeFhir(content)));
    const ids = Array.from({ length: 5000 }, (_, index) => nameUuid(`value ${index}`));
    expect(new Set(ids).size).toBe(5000);
    expect(
      ids.every((id) => /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(id)),
    ).toBe(true);
  });

  it('[HLT-25] the codes of body measurements and of the report pass the check digit', () => {
    for (const code of ['29463-7', '41982-0', '8280-0', '40443-4', '11502-2'])
      expect(hasLoincCheckDigit(code)).toBe(true);
  });

  it('[HLT-26] what is written is read back the same', () => {
    const value = fc.record(
      {
        analyte: fc.constantFrom(...labAnalytes),
        si: fc.boolean(),
        amount: fc.double({ min: 0.001, max: 5000, noNaN: true }).map((x) => Number(x.toPrecision(4))),
        comparator: fc.constantFrom('<', '<=', '>', '>=' as const),
        high: fc.integer({ min: 1, max: 900 }),
      },
      { requiredKeys: ['analyte', 'si', 'amount'] },
    );
    fc.assert(
      fc.property(
        fc.uniqueArray(value, { minLength: 1, maxLength: 12, selector: ({ analyte }) => analyte.key }),
        (values) => {
          const data: DrawnPanel = parse(healthKinds['blood-drawn'], {
            ...panel,
            taking: [],
            origin: 'fhir',
            drawn: { date: '2027-03-01', time: '07:40' },
            values: values.map(({ analyte, si, amount, comparator, high }) => ({
              loinc: si ? analyte.loincSi : analyte.loinc,
              name: analyte.name,
              value: amount,
              ...(comparator === undefined ? {} : { comparator }),
              unit: si ? analyte.unitSi : analyte.unit,
              ...(high === undefined ? {} : { interval: { high } }),
            })),
          });
          const bundle = writeFhir({ athlete: {}, panels: [{ data, offset: '-05:00' }], body: [] });
          expect(isBundle(bundle)).toBe(true);
          const read = readFhir(JSON.stringify(bundle));
          const draft = read.ok ? read.value.panels[0] : undefined;
          const back = draft && panelOfDraft(draft, data.panel);
          expect(back?.left).toEqual([]);
          expect(back?.data).toEqual(data);
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });
});
