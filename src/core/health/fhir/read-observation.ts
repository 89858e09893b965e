import { hasLoincCheckDigit } from '../panel/loinc-check-digit.ts';
import { unitCode } from '../panel/convert-lab-value.ts';
import { asObject, numberOf, objectsIn, textOf, type JsonObject } from './json-access.ts';

/** A value of a file, as far as it says: without a unit it must be asked for. */
export interface DraftValue {
  /** Place in the file. */
  readonly path: string;
  readonly loinc?: string;
  readonly name?: string;
  readonly value: number;
  readonly comparator?: '<' | '<=' | '>' | '>=';
  readonly unit?: string;
  readonly interval?: { readonly low?: number; readonly high?: number };
}

/** What an Observation (or one of its components) holds: a value, or the reason why it holds none for a panel. */
export type ReadObservation = { readonly draft: DraftValue } | { readonly passedOver: string };

const LOINC_SYSTEMS = ['http://loinc.org', 'https://loinc.org', 'urn:oid:2.16.840.1.113883.6.1'];
const UCUM_SYSTEMS = [
  'http://unitsofmeasure.org',
  'https://unitsofmeasure.org',
  'urn:oid:2.16.840.1.113883.6.8',
];
/** Larger numbers are identifiers, not results. */
const LARGEST = 1e9;
const NUMBER_TEXT = /^(<=|>=|<|>)?\s*(\d{1,9}(?:\.\d{1,9})?)\s*(.*)$/;

export function readObservation(part: JsonObject, path: string): ReadObservation {
  const { loinc, name } = readCode(asObject(part['code']));
  if (loinc === undefined && name === undefined) return { passedOver: 'it says neither code nor name' };
  const said = quantity(part) ?? plainNumber(part) ?? numberInText(textOf(part['valueString']));
  if (!said) return { passedOver: `it holds no number (${name ?? loinc})` };
  if (said.value < 0 || said.value > LARGEST) {
    return { passedOver: `its number ${said.value} is none of a blood panel (${name ?? loinc})` };
  }
  const interval = readRange(objectsIn(part['referenceRange']), said.unit);
  return {
    draft: {
      path,
      ...(loinc === undefined ? {} : { loinc }),
      ...(name === undefined ? {} : { name }),
      ...said,
      ...(interval ? { interval } : {}),
    },
  };
}

/** The LOINC code (one whose check digit fits) and the name a CodeableConcept gives. */
export function readCode(concept: JsonObject | undefined): { loinc?: string; name?: string } {
  const codings = objectsIn(concept?.['coding']);
  const loinc = codings
    .filter((coding) => LOINC_SYSTEMS.includes(textOf(coding['system']) ?? ''))
    .map((coding) => textOf(coding['code']))
    .find((code) => code !== undefined && /^\d{1,7}-\d$/.test(code) && hasLoincCheckDigit(code));
  const name = textOf(concept?.['text']) ?? codings.map((coding) => textOf(coding['display'])).find(Boolean);
  return {
    ...(loinc === undefined ? {} : { loinc }),
    ...(name === undefined ? {} : { name: name.slice(0, 120) }),
  };
}

type Said = Pick<DraftValue, 'value' | 'comparator' | 'unit'>;

function quantity(part: JsonObject): Said | undefined {
  const given = asObject(part['valueQuantity']);
  const value = numberOf(given?.['value']);
  if (!given || value === undefined) return undefined;
  const comparator = (['<', '<=', '>', '>='] as const).find((sign) => sign === given['comparator']);
  const unit = readUnit(given);
  return { value, ...(comparator ? { comparator } : {}), ...(unit === undefined ? {} : { unit }) };
}

/** The UCUM code where the file says that it is one, else the printed unit; "1" and "" are no unit. */
function readUnit(given: JsonObject): string | undefined {
  const [code, printed] = [textOf(given['code']), textOf(given['unit'])];
  const coded = UCUM_SYSTEMS.includes(textOf(given['system']) ?? '') ? code : undefined;
  return (coded ?? printed ?? code)?.slice(0, 40);
}

function plainNumber(part: JsonObject): Said | undefined {
  const value = numberOf(part['valueInteger']);
  return value === undefined ? undefined : { value };
}

/** "<0.1", "5.2 mg/dL": a number that was written as a text; a rest that is no unit makes it none. */
function numberInText(text: string | undefined): Said | undefined {
  const match = NUMBER_TEXT.exec(text ?? '');
  if (!match) return undefined;
  const [, sign, digits, rest = ''] = match;
  const unit = rest === '' ? undefined : unitCode(rest);
  if (rest !== '' && unit === undefined) return undefined;
  const comparator = sign as DraftValue['comparator'];
  return { value: Number(digits), ...(comparator ? { comparator } : {}), ...(unit ? { unit } : {}) };
}

/** The normal range, where its ends have the value's unit. */
function readRange(ranges: readonly JsonObject[], unit: string | undefined): DraftValue['interval'] {
  const normal = ranges.find((range) => isNormal(range));
  if (!normal) return undefined;
  const [low, high] = [asObject(normal['low']), asObject(normal['high'])];
  const foreign = [low, high].some((end) => end && readUnit(end) !== undefined && readUnit(end) !== unit);
  if (foreign) return undefined;
  const ends = { low: numberOf(low?.['value']), high: numberOf(high?.['value']) };
  const given =
    ends.low === undefined && ends.high === undefined ? rangeInText(textOf(normal['text'])) : ends;
  if (given.low === undefined && given.high === undefined) return undefined;
  if (
    (given.low ?? 0) < 0 ||
    (given.low !== undefined && given.high !== undefined && given.low > given.high)
  ) {
    return undefined;
  }
  return {
    ...(given.low === undefined ? {} : { low: given.low }),
    ...(given.high === undefined ? {} : { high: given.high }),
  };
}

function isNormal(range: JsonObject): boolean {
  const type = asObject(range['type']);
  if (!type) return true;
  const codes = objectsIn(type['coding']).map((coding) => textOf(coding['code']));
  return codes.length === 0 || codes.includes('normal');
}

function rangeInText(text: string | undefined): { low?: number | undefined; high?: number | undefined } {
  const between = /^(\d+(?:\.\d+)?)\s*(?:-|\u2013|to)\s*(\d+(?:\.\d+)?)\b/.exec(text ?? '');
  if (between) return { low: Number(between[1]), high: Number(between[2]) };
  const below = /^(?:<=?|up to)\s*(\d+(?:\.\d+)?)\b/.exec(text ?? '');
  if (below) return { high: Number(below[1]) };
  const above = /^>=?\s*(\d+(?:\.\d+)?)\b/.exec(text ?? '');
  return above ? { low: Number(above[1]) } : {};
}
