import type { LabAnalyte } from '#core/tables/lab-analytes.ts';
import { labIntervals } from '#core/tables/lab-intervals.ts';
import { extraUnits } from '#core/tables/lab-units.ts';
import { plausibleValues } from '#core/tables/plausible-values.ts';
import type { Sex } from '../equations/filtration.ts';
import { toConventional } from './convert-lab-value.ts';

/** A doubt whether a value has the unit it was given. `asked`: too unlikely to be taken without being confirmed. */
export interface UnitDoubt {
  readonly asked: boolean;
  readonly code: 'health/unit-suspect' | 'health/value-implausible';
  readonly message: string;
  readonly remedy: string;
}

/** How far outside the usual interval a value may lie before another unit is thought of. */
const FAR = 3;

/**
 * Milligrams typed for millimoles and the like. A value that no living person has is asked about; one that is possible
 * but far off, while the same number in the analyte's other unit is ordinary, is let through with a word.
 */
export function unitDoubt(given: {
  readonly analyte: LabAnalyte;
  readonly value: number;
  readonly unit: string;
  readonly conventional: number;
  readonly massScale: number;
  readonly sex: Sex;
}): UnitDoubt | undefined {
  const { analyte, value, unit, conventional, massScale } = given;
  const [least, most] = plausibleValues[analyte.key] ?? [0, Number.POSITIVE_INFINITY];
  const impossible = conventional < least || conventional > most;
  const band = usualBand(analyte, given.sex);
  const farOff = conventional < band.low / FAR || conventional > band.high * FAR;
  if (!impossible && !farOff) return undefined;
  const reach = impossible ? FAR : 1;
  const other = otherUnits(analyte, unit).find((candidate) => {
    const read = toConventional(analyte, value, candidate, massScale);
    return read !== undefined && read >= band.low / reach && read <= band.high * reach;
  });
  if (!impossible && other === undefined) return undefined;
  const confirm = `If ${value} ${unit} is really what the report prints, add "unitConfirmed": true.`;
  if (other === undefined) {
    return {
      asked: true,
      code: 'health/value-implausible',
      message: `${analyte.name} ${value} ${unit} is beyond what a living adult has.`,
      remedy: `Compare the number and its unit with the report. ${confirm}`,
    };
  }
  return {
    asked: impossible,
    code: 'health/unit-suspect',
    message: `${analyte.name} ${value} ${unit} is far from usual, while ${value} ${other} would be ordinary: the unit may be a slip.`,
    remedy: `If the report prints ${other}, write that. ${confirm}`,
  };
}

function otherUnits(analyte: LabAnalyte, unit: string): string[] {
  const all = [analyte.unit, analyte.unitSi, ...Object.keys(extraUnits[analyte.key] ?? {})];
  return all.filter((candidate) => candidate !== unit);
}

/** The usual interval; an open end is a tenth or ten times of the other. */
function usualBand(analyte: LabAnalyte, sex: Sex): { low: number; high: number } {
  const { low, high } = labIntervals.get(analyte.key)?.[sex] ?? {};
  return {
    low: low ?? (high === undefined ? 0 : high / 10),
    high: high ?? (low === undefined ? Number.POSITIVE_INFINITY : low * 10),
  };
}
