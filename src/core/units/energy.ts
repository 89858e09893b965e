import type { Kilocalories, Kilojoules } from './quantities.ts';

/** Thermochemical kilocalorie, exact by definition. */
export const KILOJOULES_PER_KILOCALORIE = 4.184;

export function toKilojoules(energyKcal: Kilocalories): Kilojoules {
  return energyKcal * KILOJOULES_PER_KILOCALORIE;
}

export function toKilocalories(energyKj: Kilojoules): Kilocalories {
  return energyKj / KILOJOULES_PER_KILOCALORIE;
}
