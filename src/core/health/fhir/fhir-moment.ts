import { parseDate } from '#core/units/civil-date.ts';
import { textOf, type JsonObject } from './json-access.ts';

/** A FHIR dateTime as written: its local date, and its local time where it has one. */
export interface FhirMoment {
  readonly date: string;
  readonly time?: string;
}

const DATE_TIME =
  /^(\d{4}-\d{2}-\d{2})(?:T([01]\d|2[0-3]):([0-5]\d)(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})?)?$/;

/** Reads a dateTime or instant; a year or month alone is too coarse for a draw and is none. */
export function readMoment(value: unknown): FhirMoment | undefined {
  const match = DATE_TIME.exec(textOf(value) ?? '');
  const date = match?.[1];
  if (date === undefined || parseDate(date) === undefined) return undefined;
  return match?.[2] === undefined ? { date } : { date, time: `${match[2]}:${match[3]}` };
}

/** When the specimen was taken, by the fields of an Observation or DiagnosticReport, the most exact first. */
export function effectiveMoment(resource: JsonObject): FhirMoment | undefined {
  const period = resource['effectivePeriod'];
  const start = typeof period === 'object' && period !== null && 'start' in period ? period.start : undefined;
  return (
    readMoment(resource['effectiveDateTime']) ?? readMoment(resource['effectiveInstant']) ?? readMoment(start)
  );
}
