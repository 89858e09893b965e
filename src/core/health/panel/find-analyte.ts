import { labAnalytes, type LabAnalyte } from '#core/tables/lab-analytes.ts';
import { fastingCodes, labNames, otherCodes, troponinCodes, ureaByMass } from '#core/tables/lab-names.ts';
import { plainName } from '../plain-name.ts';

/** What a code or name stands for in the table of analytes. */
export interface FoundAnalyte {
  readonly analyte: LabAnalyte;
  /** Multiplies a value in grams before all else: urea by mass is not urea nitrogen. */
  readonly massScale: number;
  /** The code itself says that the blood was drawn fasting. */
  readonly fastingCode: boolean;
}

const byKey = new Map(labAnalytes.map((analyte) => [analyte.key, analyte]));
const byCode = new Map<string, LabAnalyte>(
  labAnalytes.flatMap((analyte) => [[analyte.loinc, analyte] as const, [analyte.loincSi, analyte] as const]),
);
const byName = new Map<string, LabAnalyte>();
for (const analyte of labAnalytes) {
  for (const name of [analyte.key, analyte.name, ...(labNames[analyte.key] ?? [])]) {
    byName.set(plainName(name), analyte);
  }
}
const ureaNames = new Set(ureaByMass.names.map(plainName));

/** The analyte of a key of the table; asking for one that is not there is a fault of the program. */
export function analyteOf(key: string): LabAnalyte {
  const analyte = byKey.get(key);
  if (!analyte) throw new RangeError(`no analyte "${key}"`);
  return analyte;
}

export function analyteByCode(loinc: string): FoundAnalyte | undefined {
  if (loinc === ureaByMass.loinc) return urea();
  const analyte = byCode.get(loinc) ?? byKey.get(otherCodes[loinc] ?? '');
  return analyte && { analyte, massScale: 1, fastingCode: fastingCodes.includes(loinc) };
}

export function analyteByName(name: string): FoundAnalyte | undefined {
  const plain = plainName(name);
  if (ureaNames.has(plain)) return urea();
  const analyte = byName.get(plain);
  return analyte && { analyte, massScale: 1, fastingCode: false };
}

function urea(): FoundAnalyte {
  return { analyte: analyteOf('bun'), massScale: ureaByMass.nitrogenShare, fastingCode: false };
}

/** A heart muscle protein: not in the table, yet a rise of it is an emergency. */
export function isTroponin(loinc: string | undefined, name: string | undefined): boolean {
  return (loinc !== undefined && troponinCodes.includes(loinc)) || plainName(name ?? '').includes('troponin');
}
