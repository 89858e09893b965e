import { LOINC_NOTICE } from '#core/tables/lab-analytes.ts';
import type { FhirBundle, FhirResource } from './fhir-shapes.ts';
import { nameUuid } from './name-uuid.ts';
import { observationOf, type BodyMeasurement } from './body-observations.ts';
import { panelResources, type WrittenPanel } from './panel-resources.ts';

export interface FhirContent {
  readonly athlete: { readonly sex?: 'female' | 'male'; readonly birthYear?: number };
  readonly panels: readonly WrittenPanel[];
  readonly body: readonly BodyMeasurement[];
}

/**
 * A FHIR R4 Bundle (collection) of panels and body measurements (HLT-25): one Patient without name, a DiagnosticReport
 * for each panel, an Observation for each value in the laboratory's own unit and interval. The same content gives the
 * same bundle, on every machine.
 */
export function writeFhir(content: FhirContent): FhirBundle {
  const patientId = nameUuid('athlete');
  const subject = { reference: `urn:uuid:${patientId}` };
  const { sex, birthYear } = content.athlete;
  const patient: FhirResource = {
    resourceType: 'Patient',
    id: patientId,
    ...(sex === undefined ? {} : { gender: sex }),
    ...(birthYear === undefined ? {} : { birthDate: String(birthYear) }),
  };
  const resources: FhirResource[] = [
    patient,
    ...content.panels.flatMap((panel) => panelResources(panel, subject)),
    ...content.body.map((measurement) => observationOf(measurement, subject)),
  ];
  return {
    resourceType: 'Bundle',
    type: 'collection',
    meta: { tag: [{ display: LOINC_NOTICE }] },
    entry: resources.map((resource) => ({ fullUrl: `urn:uuid:${resource.id}`, resource })),
  };
}
