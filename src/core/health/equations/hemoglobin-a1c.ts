import type { Percent } from '#core/units/quantities.ts';

/**
 * Hemoglobin A1c of the two standards: IFCC (mmol/mol) = 10.93 * NGSP (%) - 23.50. Not proportional, so no factor
 * converts it. Source: weykamp-2008.
 */
const SLOPE = 10.93;
const OFFSET = 23.5;

export function a1cIfccMmolPerMol(ngspPercent: Percent): number {
  return SLOPE * ngspPercent - OFFSET;
}

export function a1cNgspPercent(ifccMmolPerMol: number): Percent {
  return (ifccMmolPerMol + OFFSET) / SLOPE;
}

/**
 * Mean glucose of the last weeks, mg/dL = 28.7 * A1c (%) - 46.7. Source: nathan-2008. Wrong wherever red cells live
 * shorter or longer than usual (blood loss, iron deficiency).
 */
export function meanGlucoseMgPerDl(ngspPercent: Percent): number {
  return 28.7 * ngspPercent - 46.7;
}
