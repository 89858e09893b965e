/** The parts of FHIR R4 that are written here (hl7.org/fhir/R4), no more. */
export interface FhirCoding {
  readonly system?: string;
  readonly code?: string;
  readonly display?: string;
}

export interface FhirConcept {
  readonly coding?: readonly FhirCoding[];
  readonly text?: string;
}

export interface FhirQuantity {
  readonly value: number;
  readonly comparator?: '<' | '<=' | '>' | '>=';
  readonly unit: string;
  readonly system?: string;
  readonly code?: string;
}

export interface FhirReference {
  readonly reference: string;
}

export interface FhirObservation {
  readonly resourceType: 'Observation';
  readonly id: string;
  readonly status: 'final';
  readonly category: readonly FhirConcept[];
  readonly code: FhirConcept;
  readonly subject: FhirReference;
  readonly effectiveDateTime: string;
  readonly performer?: readonly { readonly display: string }[];
  readonly valueQuantity: FhirQuantity;
  readonly bodySite?: FhirConcept;
  readonly referenceRange?: readonly { readonly low?: FhirQuantity; readonly high?: FhirQuantity }[];
}

export interface FhirReport {
  readonly resourceType: 'DiagnosticReport';
  readonly id: string;
  readonly identifier?: readonly { readonly value: string }[];
  readonly status: 'final';
  readonly category: readonly FhirConcept[];
  readonly code: FhirConcept;
  readonly subject: FhirReference;
  readonly effectiveDateTime: string;
  readonly performer?: readonly { readonly display: string }[];
  readonly result: readonly FhirReference[];
}

export interface FhirPatient {
  readonly resourceType: 'Patient';
  readonly id: string;
  readonly gender?: 'female' | 'male';
  readonly birthDate?: string;
}

export type FhirResource = FhirPatient | FhirObservation | FhirReport;

export interface FhirBundle {
  readonly resourceType: 'Bundle';
  readonly type: 'collection';
  readonly meta: { readonly tag: readonly FhirCoding[] };
  readonly entry: readonly { readonly fullUrl: string; readonly resource: FhirResource }[];
}

export const LOINC = 'http://loinc.org';
export const UCUM = 'http://unitsofmeasure.org';
export const CATEGORY = 'http://terminology.hl7.org/CodeSystem/observation-category';
