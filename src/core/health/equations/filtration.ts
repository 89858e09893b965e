import { withinStudied, type Studied } from '#core/science/studied-range.ts';
import type { Years } from '#core/units/quantities.ts';

export type Sex = 'female' | 'male';

interface Person {
  readonly sex: Sex;
  readonly ageYears: Years;
}

const adult = (ageYears: Years) => ({ quantity: 'ageYears', found: ageYears, low: 18, high: 110 });

/**
 * Filtration by creatinine, CKD-EPI 2021, mL/min per 1.73 m2 (adults).
 * 142 * min(Scr/k, 1)^a * max(Scr/k, 1)^-1.200 * 0.9938^age * 1.012 if female; Scr mg/dL; k 0.7 female, 0.9 male;
 * a -0.241 female, -0.302 male. Source: inker-2021. Muscle mass, creatine and cooked meat raise creatinine, so it reads
 * too low in people who carry much muscle.
 */
export function filtrationByCreatinine(person: Person, creatinineMgPerDl: number): Studied<number> {
  const [k, a, sexFactor] = person.sex === 'female' ? [0.7, -0.241, 1.012] : [0.9, -0.302, 1];
  const ratio = creatinineMgPerDl / k;
  return withinStudied(
    [adult(person.ageYears)],
    () => 142 * Math.min(ratio, 1) ** a * Math.max(ratio, 1) ** -1.2 * 0.9938 ** person.ageYears * sexFactor,
  );
}

/**
 * Filtration by cystatin C, CKD-EPI 2012, mL/min per 1.73 m2 (adults).
 * 133 * min(c/0.8, 1)^-0.499 * max(c/0.8, 1)^-1.328 * 0.996^age * 0.932 if female; c mg/L. Source: inker-2012.
 * Free of muscle mass; moved by thyroid state, corticosteroids and inflammation.
 */
export function filtrationByCystatinC(person: Person, cystatinCMgPerL: number): Studied<number> {
  const ratio = cystatinCMgPerL / 0.8;
  const sexFactor = person.sex === 'female' ? 0.932 : 1;
  return withinStudied(
    [adult(person.ageYears)],
    () =>
      133 *
      Math.min(ratio, 1) ** -0.499 *
      Math.max(ratio, 1) ** -1.328 *
      0.996 ** person.ageYears *
      sexFactor,
  );
}

/**
 * Filtration by both, CKD-EPI 2021, mL/min per 1.73 m2 (adults).
 * 135 * min(Scr/k, 1)^a * max(Scr/k, 1)^-0.544 * min(c/0.8, 1)^-0.323 * max(c/0.8, 1)^-0.778 * 0.9961^age * 0.963 if
 * female; a -0.219 female, -0.144 male. Source: inker-2021.
 */
export function filtrationByBoth(
  person: Person,
  creatinineMgPerDl: number,
  cystatinCMgPerL: number,
): Studied<number> {
  const [k, a, sexFactor] = person.sex === 'female' ? [0.7, -0.219, 0.963] : [0.9, -0.144, 1];
  const [byCreatinine, byCystatin] = [creatinineMgPerDl / k, cystatinCMgPerL / 0.8];
  return withinStudied(
    [adult(person.ageYears)],
    () =>
      135 *
      Math.min(byCreatinine, 1) ** a *
      Math.max(byCreatinine, 1) ** -0.544 *
      Math.min(byCystatin, 1) ** -0.323 *
      Math.max(byCystatin, 1) ** -0.778 *
      0.9961 ** person.ageYears *
      sexFactor,
  );
}
