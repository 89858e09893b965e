import type { Ledger } from '#core/journal/ledger.ts';
import { roundTo } from '#core/units/rounding.ts';
import {
  CATEGORY,
  LOINC,
  UCUM,
  type FhirConcept,
  type FhirObservation,
  type FhirReference,
} from './fhir-shapes.ts';
import { nameUuid } from './name-uuid.ts';

/** A measurement of the body as one Observation; `at` is the moment with its offset as the journal writes it. */
export interface BodyMeasurement {
  readonly id: string;
  readonly name: string;
  readonly loinc?: string;
  readonly site?: string;
  readonly value: number;
  /** UCUM. */
  readonly unit: string;
  readonly at: string;
}

/** LOINC codes of body measurements; folds and most girths have none that names the site as the trade does. */
const codes = {
  bodyWeight: '29463-7',
  bodyFatPercent: '41982-0',
  waist: '8280-0',
  restingHeartRate: '40443-4',
} as const;

const vitalSigns: FhirConcept = {
  coding: [{ system: CATEGORY, code: 'vital-signs', display: 'Vital Signs' }],
};

/** Weigh-ins, folds (mean of the readings), girths, body fat and resting heart rate of the journal. */
export function bodyMeasurements(ledger: Ledger): BodyMeasurement[] {
  return [
    ...ledger.of('body-weighed').map(({ entry, data }) => ({
      id: entry.id,
      name: 'Body weight',
      loinc: codes.bodyWeight,
      value: data.massKg,
      unit: 'kg',
      at: entry.at,
    })),
    ...ledger.of('body-fat-measured').map(({ entry, data }) => ({
      id: entry.id,
      name: `Body fat (${data.method})`,
      loinc: codes.bodyFatPercent,
      value: data.percent,
      unit: '%',
      at: entry.at,
    })),
    ...ledger.of('folds-measured').flatMap(({ entry, data }) =>
      Object.entries(data.sites).map(([site, readings]) => ({
        id: `${entry.id} ${site}`,
        name: `Skinfold thickness, ${site}`,
        site,
        value: roundTo(readings.reduce((sum, reading) => sum + reading, 0) / readings.length, 2),
        unit: 'mm',
        at: entry.at,
      })),
    ),
    ...ledger.of('girths-measured').flatMap(({ entry, data }) =>
      Object.entries(data.sites).map(([site, girthCm]) => ({
        id: `${entry.id} ${site}`,
        name: `Girth, ${site}`,
        ...(site === 'waist' ? { loinc: codes.waist } : {}),
        site,
        value: girthCm,
        unit: 'cm',
        at: entry.at,
      })),
    ),
    ...ledger.of('feeling-noted').flatMap(({ entry, data }) =>
      data.restingHeartRateBpm === undefined
        ? []
        : [
            {
              id: entry.id,
              name: 'Heart rate, resting',
              loinc: codes.restingHeartRate,
              value: data.restingHeartRateBpm,
              unit: '/min',
              at: entry.at,
            },
          ],
    ),
  ];
}

export function observationOf(measurement: BodyMeasurement, subject: FhirReference): FhirObservation {
  const { id, name, loinc, site, value, unit, at } = measurement;
  return {
    resourceType: 'Observation',
    id: nameUuid(`${id} body`),
    status: 'final',
    category: [vitalSigns],
    code: {
      ...(loinc === undefined ? {} : { coding: [{ system: LOINC, code: loinc, display: name }] }),
      text: name,
    },
    subject,
    effectiveDateTime: at,
    valueQuantity: { value, unit, system: UCUM, code: unit },
    ...(site === undefined ? {} : { bodySite: { text: site } }),
  };
}
