import { answered, refused, type Outcome, type Problem } from '#core/problems/problem.ts';
import { parseBoundedJson } from './bounded-json.ts';
import { effectiveMoment, readMoment, type FhirMoment } from './fhir-moment.ts';
import { resourcesOf, type FhirResources, type PlacedResource } from './fhir-resources.ts';
import { asObject, objectsIn, textOf } from './json-access.ts';
import { readCode, readObservation, type DraftValue } from './read-observation.ts';

/** Results of one moment of drawing, from however many reports. */
export interface DraftPanel {
  readonly drawn: FhirMoment;
  readonly laboratory?: string;
  /** The reports' own numbers. */
  readonly report?: string;
  readonly values: readonly DraftValue[];
}

export interface FhirReading {
  /** Oldest first. */
  readonly panels: readonly DraftPanel[];
  readonly weights: readonly { readonly drawn: FhirMoment; readonly massKg: number }[];
  /** What could not be taken as it stands, with place and remedy: missing units, missing dates, passed over. */
  readonly problems: readonly Problem[];
}

const BODY_WEIGHT = '29463-7';
const NOT_OF_A_PANEL = [
  'vital-signs',
  'social-history',
  'imaging',
  'survey',
  'exam',
  'activity',
  'procedure',
  'therapy',
];
const VOID = ['entered-in-error', 'cancelled'];
const KILOGRAMS_PER: Readonly<Record<string, number>> = {
  kg: 1,
  g: 0.001,
  '[lb_av]': 0.45359237,
  lb: 0.45359237,
  lbs: 0.45359237,
};

/**
 * Reads a FHIR R4 Bundle, DiagnosticReport or Observation as patient portals export it (HLT-20 to HLT-24). Every
 * laboratory value comes back as a draft of a panel with its place in the file; nothing is guessed: a value without unit is
 * a problem that names it. A file of more than one person is refused.
 */
export function readFhir(text: string): Outcome<FhirReading> {
  const parsed = parseBoundedJson(text);
  if (!parsed.ok) return parsed;
  const root = asObject(parsed.value);
  const type = textOf(root?.['resourceType']);
  if (!root || !['Bundle', 'DiagnosticReport', 'Observation'].includes(type ?? '')) {
    return refused(
      'health/fhir-other-resource',
      'resourceType',
      `The file is ${type === undefined ? 'no FHIR resource' : `a FHIR ${type}`}.`,
      'Give a Bundle, a DiagnosticReport or an Observation, as the portal exports laboratory results.',
    );
  }
  const resources = resourcesOf(root);
  const people = severalPeople(resources);
  if (people) return people;
  return answered(collect(resources));
}

function severalPeople(resources: FhirResources): Outcome<never> | undefined {
  const patients = resources.all.filter(({ type }) => type === 'Patient').length;
  const subjects = new Set(
    resources.all
      .filter(({ type }) => type === 'Observation' || type === 'DiagnosticReport')
      .map(({ resource }) => textOf(asObject(resource['subject'])?.['reference']))
      .filter((subject) => subject !== undefined),
  );
  if (patients <= 1 && (patients === 1 || subjects.size <= 1)) return undefined;
  return refused(
    'health/fhir-several-people',
    'subject',
    'The file holds results of more than one person.',
    'Export the record of one person and read that.',
  );
}

interface Gathered {
  readonly panels: Map<
    string,
    { drawn: FhirMoment; laboratories: Set<string>; reports: Set<string>; values: DraftValue[] }
  >;
  readonly weights: { drawn: FhirMoment; massKg: number }[];
  readonly problems: Problem[];
}

function collect(resources: FhirResources): FhirReading {
  const out: Gathered = { panels: new Map(), weights: [], problems: [] };
  const reportOf = reportsByObservation(resources);
  for (const placed of resources.all) {
    if (placed.type === 'Observation') takeObservation(placed, reportOf.get(placed), out);
  }
  const panels = [...out.panels.values()].map(({ drawn, laboratories, reports, values }): DraftPanel => {
    const [laboratory] = laboratories;
    const report = [...reports].sort().join(', ').slice(0, 200);
    return {
      drawn,
      ...(laboratory === undefined ? {} : { laboratory }),
      ...(report === '' ? {} : { report }),
      values,
    };
  });
  panels.sort((a, b) => (keyOf(a.drawn) < keyOf(b.drawn) ? -1 : 1));
  return { panels, weights: out.weights, problems: out.problems };
}

function reportsByObservation(resources: FhirResources): Map<PlacedResource, PlacedResource> {
  const reports = new Map<PlacedResource, PlacedResource>();
  for (const report of resources.all) {
    if (report.type !== 'DiagnosticReport') continue;
    for (const reference of objectsIn(report.resource['result'])) {
      const observation = resources.resolve(reference, report);
      if (observation && !reports.has(observation)) reports.set(observation, report);
    }
  }
  return reports;
}

function takeObservation(placed: PlacedResource, report: PlacedResource | undefined, out: Gathered): void {
  const { resource, path } = placed;
  if (VOID.includes(textOf(resource['status']) ?? '')) return;
  const isWeight = readCode(asObject(resource['code'])).loinc === BODY_WEIGHT;
  const categories = objectsIn(resource['category']).flatMap((category) =>
    objectsIn(category['coding']).map((coding) => textOf(coding['code']) ?? ''),
  );
  if (!isWeight && categories.some((category) => NOT_OF_A_PANEL.includes(category))) return;
  const drawn = momentOf(resource, report);
  const components = objectsIn(resource['component']);
  const parts = components.map((part, index) => ({ part, at: `${path}.component.${index}` }));
  const own = { part: resource, at: path };
  for (const { part, at } of parts.length > 0 && resource['valueQuantity'] === undefined
    ? parts
    : [own, ...parts]) {
    const read = readObservation(part, at);
    if ('passedOver' in read) {
      if (objectsIn(resource['hasMember']).length === 0) out.problems.push(passedOver(at, read.passedOver));
    } else if (!drawn) out.problems.push(withoutDate(read.draft));
    else if (isWeight) takeWeight(read.draft, drawn, out);
    else takeValue(read.draft, drawn, report, resource, out);
  }
}

function momentOf(
  resource: PlacedResource['resource'],
  report: PlacedResource | undefined,
): FhirMoment | undefined {
  return (
    effectiveMoment(resource) ??
    (report && effectiveMoment(report.resource)) ??
    readMoment(resource['issued']) ??
    (report && readMoment(report.resource['issued']))
  );
}

function takeWeight(draft: DraftValue, drawn: FhirMoment, out: Gathered): void {
  const factor = KILOGRAMS_PER[draft.unit ?? ''];
  if (factor === undefined) out.problems.push(withoutUnit(draft));
  else if (draft.comparator === undefined) out.weights.push({ drawn, massKg: draft.value * factor });
}

function takeValue(
  draft: DraftValue,
  drawn: FhirMoment,
  report: PlacedResource | undefined,
  resource: PlacedResource['resource'],
  out: Gathered,
): void {
  const key = keyOf(drawn);
  const panel = out.panels.get(key) ?? { drawn, laboratories: new Set(), reports: new Set(), values: [] };
  out.panels.set(key, panel);
  panel.values.push(draft);
  if (draft.unit === undefined) out.problems.push(withoutUnit(draft));
  const performer = objectsIn(report?.resource['performer'] ?? resource['performer'])[0];
  const laboratory = textOf(performer?.['display']);
  if (laboratory !== undefined) panel.laboratories.add(laboratory.slice(0, 120));
  const identifier = objectsIn(report?.resource['identifier'])[0];
  const number = textOf(identifier?.['value']) ?? textOf(report?.resource['id']);
  if (number !== undefined) panel.reports.add(number);
}

function keyOf(drawn: FhirMoment): string {
  return `${drawn.date} ${drawn.time ?? ''}`;
}

function called(draft: DraftValue): string {
  return draft.name ?? draft.loinc ?? 'A value';
}

function withoutUnit(draft: DraftValue): Problem {
  return {
    code: 'health/fhir-no-unit',
    path: draft.path,
    message: `${called(draft)} ${draft.comparator ?? ''}${draft.value} has no unit${draft.unit === undefined ? '' : ' that is known'} in the file.`,
    remedy: 'Look at the printed report and write the unit beside it; without one it is not taken.',
  };
}

function withoutDate(draft: DraftValue): Problem {
  return {
    code: 'health/fhir-no-date',
    path: draft.path,
    message: `${called(draft)} has no date of drawing in the file.`,
    remedy: 'Enter the value by hand with the date of the printed report.',
  };
}

function passedOver(path: string, reason: string): Problem {
  return {
    code: 'health/fhir-passed-over',
    path,
    message: `A result was passed over: ${reason}.`,
    remedy: 'Enter it by hand if it matters; results in words are not kept here.',
  };
}
