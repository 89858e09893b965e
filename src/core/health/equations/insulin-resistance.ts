/**
 * HOMA-IR, a number without unit: glucose (mg/dL) * insulin (uIU/mL) / 405, both fasting; the same as mmol/L / 22.5.
 * Source: matthews-1985. Not validated for people in an energy deficit, in whom it reads very low.
 */
export function homaIr(fastingGlucoseMgPerDl: number, fastingInsulinUIuPerMl: number): number {
  return (fastingGlucoseMgPerDl * fastingInsulinUIuPerMl) / 405;
}
