import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import { labUnits } from '#core/tables/lab-units.ts';
import { parseClock, formatClock } from '#core/units/clock.ts';
import { addDays } from '#core/units/civil-date.ts';
import { unitCode, unitCodeFor } from '../panel/convert-lab-value.ts';
import { analyteByCode, analyteByName } from '../panel/find-analyte.ts';
import { labAmount } from '../panel/lab-amount.ts';
import { loincOfResult } from '../panel/loinc-of-result.ts';
import type { DrawnPanel } from './draft-to-panel.ts';
import {
  CATEGORY,
  LOINC,
  UCUM,
  type FhirConcept,
  type FhirObservation,
  type FhirQuantity,
  type FhirReference,
  type FhirReport,
} from './fhir-shapes.ts';
import { nameUuid } from './name-uuid.ts';

/** A panel as the journal keeps it, with the offset of the place ("+01:00") where its time is to be written. */
export interface WrittenPanel {
  readonly data: DrawnPanel;
  readonly offset?: string;
}

const laboratory: FhirConcept = { coding: [{ system: CATEGORY, code: 'laboratory', display: 'Laboratory' }] };

/** LOINC 11502-2, "Laboratory report". */
const REPORT_CODE: FhirConcept = {
  coding: [{ system: LOINC, code: '11502-2', display: 'Laboratory report' }],
  text: 'Blood panel',
};

export function panelResources(
  panel: WrittenPanel,
  subject: FhirReference,
): (FhirReport | FhirObservation)[] {
  const { data } = panel;
  const effectiveDateTime = dateTimeOf(panel);
  const performer = data.laboratory === undefined ? {} : { performer: [{ display: data.laboratory }] };
  const observations = data.values.map(
    (value, index): FhirObservation => ({
      resourceType: 'Observation',
      id: nameUuid(`${data.panel} value ${index}`),
      status: 'final',
      category: [laboratory],
      code: codeOf(value),
      subject,
      effectiveDateTime,
      ...performer,
      valueQuantity: quantityOf(value),
      ...rangeOf(value),
    }),
  );
  const report: FhirReport = {
    resourceType: 'DiagnosticReport',
    id: nameUuid(`${data.panel} report`),
    ...(data.report === undefined ? {} : { identifier: [{ value: data.report }] }),
    status: 'final',
    category: [{ coding: [{ system: 'http://terminology.hl7.org/CodeSystem/v2-0074', code: 'LAB' }] }],
    code: REPORT_CODE,
    subject,
    effectiveDateTime,
    ...performer,
    result: observations.map(({ id }) => ({ reference: `urn:uuid:${id}` })),
  };
  return [report, ...observations];
}

/** A FHIR time needs its offset; where that is not known, the date alone is the truth. */
function dateTimeOf({ data, offset }: WrittenPanel): string {
  const minutes = data.drawn.time === undefined ? undefined : parseClock(data.drawn.time);
  if (minutes === undefined || offset === undefined) return data.drawn.date;
  const civil = addDays(data.drawn.date, Math.floor(minutes / 1440));
  return `${civil}T${formatClock(minutes % 1440)}:00${offset}`;
}

function codeOf(value: LabValue): FhirConcept {
  const found =
    (value.loinc && analyteByCode(value.loinc)) || (value.name && analyteByName(value.name)) || undefined;
  const unit = found && unitCodeFor(found.analyte, value.unit);
  const scaled = found !== undefined && found.massScale !== 1;
  const loinc = value.loinc ?? (found && unit && !scaled ? loincOfResult(found.analyte, unit) : undefined);
  const text = value.name ?? found?.analyte.name ?? loinc;
  return {
    ...(loinc === undefined
      ? {}
      : { coding: [{ system: LOINC, code: loinc, ...(text ? { display: text } : {}) }] }),
    ...(text === undefined ? {} : { text }),
  };
}

function quantityOf(value: LabValue): FhirQuantity {
  return { ...labAmount(value), ...unitOf(value) };
}

function unitOf(value: LabValue): { unit: string; system?: string; code?: string } {
  const found =
    (value.loinc && analyteByCode(value.loinc)) || (value.name && analyteByName(value.name)) || undefined;
  const code = found ? unitCodeFor(found.analyte, value.unit) : unitCode(value.unit);
  const known = code !== undefined && labUnits.has(code);
  return { unit: value.unit, ...(known ? { system: UCUM, code } : {}) };
}

function rangeOf(value: LabValue): Pick<FhirObservation, 'referenceRange'> {
  if (!value.interval) return {};
  const { low, high } = value.interval;
  const end = (amount: number): FhirQuantity => ({ value: amount, ...unitOf(value) });
  return {
    referenceRange: [
      {
        ...(low === undefined ? {} : { low: end(low) }),
        ...(high === undefined ? {} : { high: end(high) }),
      },
    ],
  };
}
