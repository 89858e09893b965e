import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { LabAnalyte } from '#core/tables/lab-analytes.ts';
import {
  acceptedUnits,
  toConventional,
  toSi,
  unitCode,
  unitCodeFor,
  withoutDust,
} from './convert-lab-value.ts';
import type { Sex } from '../equations/filtration.ts';
import { analyteByCode, analyteByName, isTroponin, type FoundAnalyte } from './find-analyte.ts';
import { loincOfResult } from './loinc-of-result.ts';
import { labAmount, type Comparator } from './lab-amount.ts';
import { hasLoincCheckDigit } from './loinc-check-digit.ts';
import { unitDoubt } from './unit-doubt.ts';

/** A value of a panel, understood as far as the table knows it. */
export interface ReadValue {
  /** Place in the list of values. */
  readonly index: number;
  readonly loinc?: string;
  readonly name: string;
  /** The number as printed; with a comparator it is a bound, and nothing is computed from it. */
  readonly value: number;
  readonly comparator?: Comparator;
  /** UCUM where it is known, else as printed. */
  readonly unit: string;
  /** The laboratory's own interval, in `unit`. */
  readonly ownInterval?: { readonly low?: number; readonly high?: number };
  readonly troponin: boolean;
  /** Absent for what the table does not know. */
  readonly known?: KnownValue;
}

export interface KnownValue {
  readonly analyte: LabAnalyte;
  readonly massScale: number;
  readonly fastingCode: boolean;
  readonly conventional: number;
  readonly si: number;
  /** Said when the value is possible but would be ordinary in another unit. */
  readonly unitDoubt?: string;
}

/** Reads one value; refuses a code with a wrong check digit, a unit that cannot be, a value no living person has. */
export function readValue(given: LabValue, index: number, list: string, sex: Sex): Outcome<ReadValue> {
  const path = `${list}.${index}`;
  if (given.loinc !== undefined && !hasLoincCheckDigit(given.loinc)) {
    return refused(
      'health/loinc-check-digit',
      `${path}.loinc`,
      `"${given.loinc}" is not a LOINC code: its last digit does not fit the others.`,
      'Compare it with the report, or leave the code out and write the name.',
    );
  }
  const [byCode, byName] = [
    given.loinc && analyteByCode(given.loinc),
    given.name && analyteByName(given.name),
  ];
  if (byCode && byName && byCode.analyte !== byName.analyte) {
    return refused(
      'health/code-and-name-differ',
      path,
      `The code ${given.loinc} is ${byCode.analyte.name}, the name "${given.name}" is ${byName.analyte.name}.`,
      'Keep the one that the report prints and leave the other out.',
    );
  }
  const common = {
    index,
    ...labAmount(given),
    ...(given.interval === undefined ? {} : { ownInterval: ends(given.interval) }),
    troponin: isTroponin(given.loinc, given.name),
  };
  const found = byCode || byName || undefined;
  // A code that the table does not know says what was measured more exactly than any name does.
  if (!found || (given.loinc !== undefined && !byCode)) return answered({ ...common, ...unknown(given) });
  return readKnown(given, path, found, common, sex);
}

type Common = Omit<ReadValue, 'loinc' | 'name' | 'unit' | 'known'>;

function readKnown(
  given: LabValue,
  path: string,
  found: FoundAnalyte,
  common: Common,
  sex: Sex,
): Outcome<ReadValue> {
  const { analyte, fastingCode, massScale } = found;
  const unit = unitCodeFor(analyte, given.unit) ?? '';
  const conventional = toConventional(analyte, common.value, unit, massScale);
  const si = toSi(analyte, common.value, unit, massScale);
  if (conventional === undefined || si === undefined) {
    return refused(
      unit === '' ? 'health/unknown-unit' : 'health/unit-of-another-kind',
      `${path}.unit`,
      `${analyte.name} cannot be read in "${given.unit}".`,
      `Write the unit the report prints; ${analyte.name} is read in ${acceptedUnits(analyte).join(', ')} and in multiples of these.`,
    );
  }
  const doubt = given.unitConfirmed
    ? undefined
    : unitDoubt({ analyte, value: common.value, unit, conventional, massScale, sex });
  if (doubt?.asked) return refused(doubt.code, `${path}.unit`, doubt.message, doubt.remedy);
  return answered({
    ...common,
    loinc: given.loinc ?? loincOfResult(analyte, unit),
    name: analyte.name,
    unit,
    known: {
      analyte,
      massScale,
      fastingCode,
      conventional: withoutDust(conventional),
      si,
      ...(doubt ? { unitDoubt: doubt.message } : {}),
    },
  });
}

function unknown(given: LabValue): Pick<ReadValue, 'loinc' | 'name' | 'unit'> {
  return {
    ...(given.loinc === undefined ? {} : { loinc: given.loinc }),
    name: given.name ?? given.loinc ?? '',
    unit: unitCode(given.unit) ?? given.unit,
  };
}

function ends(interval: { low?: number | undefined; high?: number | undefined }): {
  low?: number;
  high?: number;
} {
  return {
    ...(interval.low === undefined ? {} : { low: interval.low }),
    ...(interval.high === undefined ? {} : { high: interval.high }),
  };
}
