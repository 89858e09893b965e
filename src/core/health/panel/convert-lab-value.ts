import type { LabAnalyte } from '#core/tables/lab-analytes.ts';
import {
  enzymes,
  extraUnits,
  labUnits,
  singleCharge,
  unitSpellings,
  type LabUnit,
} from '#core/tables/lab-units.ts';
import { a1cIfccMmolPerMol, a1cNgspPercent } from '../equations/hemoglobin-a1c.ts';

/** The UCUM code a printed unit stands for, or undefined where it is none that is known. */
export function unitCode(printed: string): string | undefined {
  const text = printed.trim();
  return labUnits.has(text) ? text : unitSpellings.get(text);
}

/** The UCUM code for this analyte: for enzymes "IU/L" is the enzyme unit. */
export function unitCodeFor(analyte: LabAnalyte, printed: string): string | undefined {
  const code = unitCode(printed);
  return code === '[IU]/L' && enzymes.includes(analyte.key) ? 'U/L' : code;
}

/** Units to offer for an analyte, the conventional and the SI unit first; their multiples are read too. */
export function acceptedUnits(analyte: LabAnalyte): string[] {
  const charges = singleCharge.includes(analyte.key) ? ['meq/L'] : [];
  return [
    ...new Set([analyte.unit, analyte.unitSi, ...Object.keys(extraUnits[analyte.key] ?? {}), ...charges]),
  ];
}

/** A value of this unit in the analyte's conventional unit; undefined where the unit cannot be the analyte's. */
export function toConventional(
  analyte: LabAnalyte,
  value: number,
  unit: string,
  massScale = 1,
): number | undefined {
  if (analyte.key === 'hba1c') {
    if (unit === '%') return value;
    return unit === 'mmol/mol' ? a1cNgspPercent(value) : undefined;
  }
  const extra = extraUnits[analyte.key]?.[unit];
  if (extra !== undefined) return value * extra;
  if (unit === analyte.unit) return value * massScale;
  const [from, conventional, si] = [
    labUnits.get(unit),
    labUnits.get(analyte.unit),
    labUnits.get(analyte.unitSi),
  ];
  if (!from || !conventional || !si || !mayCarry(analyte, from)) return undefined;
  if (from.measure === conventional.measure) return scaled(value, from, conventional) * massScale;
  if (from.measure !== si.measure || analyte.siPerUnit === undefined) return undefined;
  return scaled(value, from, si) / analyte.siPerUnit;
}

/** A value of this unit in the analyte's SI unit, by the printed factor exactly. */
export function toSi(analyte: LabAnalyte, value: number, unit: string, massScale = 1): number | undefined {
  if (unit === analyte.unitSi && analyte.unitSi !== analyte.unit) return value;
  const [from, conventional, si] = [
    labUnits.get(unit),
    labUnits.get(analyte.unit),
    labUnits.get(analyte.unitSi),
  ];
  if (from && si && conventional && from.measure === si.measure && si.measure !== conventional.measure) {
    const direct =
      mayCarry(analyte, from) && analyte.key !== 'hba1c' && extraUnits[analyte.key]?.[unit] === undefined;
    if (direct) return withoutDust(scaled(value, from, si));
  }
  const inConventional = toConventional(analyte, value, unit, massScale);
  return inConventional === undefined ? undefined : siOfConventional(analyte, inConventional);
}

function siOfConventional(analyte: LabAnalyte, value: number): number {
  if (analyte.siPerUnit === undefined) return withoutDust(a1cIfccMmolPerMol(value));
  return withoutDust(value * analyte.siPerUnit);
}

/** A conventional value written in another unit that the analyte accepts. */
export function fromConventional(analyte: LabAnalyte, value: number, unit: string, massScale = 1): number {
  if (analyte.key === 'hba1c') return unit === '%' ? value : withoutDust(a1cIfccMmolPerMol(value));
  const one = toConventional(analyte, 1, unit, massScale);
  if (one === undefined) throw new RangeError(`${analyte.key} has no unit ${unit}`);
  return withoutDust(value / one);
}

function scaled(value: number, from: LabUnit, to: LabUnit): number {
  return from.code === to.code ? value : value * (from.baseUnits / to.baseUnits);
}

/** Milliequivalents only for ions of one charge; a share of moles only for hemoglobin A1c. */
function mayCarry(analyte: LabAnalyte, unit: LabUnit): boolean {
  if (unit.code === 'meq/L') return singleCharge.includes(analyte.key);
  return unit.code !== 'mmol/mol';
}

/** Twelve digits are more than any laboratory prints; what lies behind them is binary dust. */
export function withoutDust(value: number): number {
  return Number(value.toPrecision(12));
}
