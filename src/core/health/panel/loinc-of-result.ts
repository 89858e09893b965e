import type { LabAnalyte } from '#core/tables/lab-analytes.ts';
import { labUnits } from '#core/tables/lab-units.ts';

/** The code of a result in this unit: results in moles have another code than results in grams. */
export function loincOfResult(analyte: LabAnalyte, unit: string): string {
  const [measure, conventional] = [labUnits.get(unit)?.measure, labUnits.get(analyte.unit)?.measure];
  if (analyte.key === 'hba1c') return unit === '%' ? analyte.loinc : analyte.loincSi;
  return measure === conventional ? analyte.loinc : analyte.loincSi;
}
