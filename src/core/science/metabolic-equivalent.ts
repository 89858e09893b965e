import type { Kilocalories, Kilograms, Minutes } from '#core/units/quantities.ts';

/** One MET, mL of oxygen per kg and minute; about 1 kcal per kg and hour. Source key: ainsworth-2011. */
export const MET_OXYGEN = 3.5;
/** Energy of a litre of oxygen in the metabolic equations, kcal. Source key: acsm-2018. */
export const KCAL_PER_LITRE = 5;

/** METs of a gross oxygen uptake, mL per kg and minute. */
export function metsOfOxygen(oxygenMlPerKgMinute: number): number {
  return oxygenMlPerKgMinute / MET_OXYGEN;
}

/** Gross energy of an oxygen uptake, kcal per minute. */
export function kcalPerMinuteOfOxygen(oxygenMlPerKgMinute: number, massKg: Kilograms): number {
  return ((oxygenMlPerKgMinute * massKg) / 1000) * KCAL_PER_LITRE;
}

/** Gross energy of an activity, kcal: MET kg h. It counts resting energy once more than a daily budget does. */
export function grossCostKcal(mets: number, massKg: Kilograms, minutes: Minutes): Kilocalories {
  return (mets * massKg * minutes) / 60;
}

/** Net energy of an activity, kcal: (MET - 1) kg h. This is what is added to a day that already rests. */
export function netCostKcal(mets: number, massKg: Kilograms, minutes: Minutes): Kilocalories {
  return grossCostKcal(Math.max(0, mets - 1), massKg, minutes);
}
