import type { Kilograms, Kilojoules } from '#core/units/quantities.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';

/**
 * Glycogen, equation 2 of hall-2011: rho_G dG/dt = CI - k_G G^2 with k_G = CI_b / G_init^2.
 * G kg; CI carbohydrate energy, kJ per day, CI_b its baseline. Adults; glycogen of muscle and liver together.
 */
export interface GlycogenCase {
  readonly carbohydrateKjPerDay: Kilojoules;
  readonly baselineCarbohydrateKjPerDay: Kilojoules;
  readonly baselineGlycogenKg?: Kilograms;
}

/** Rate of change, kg per day. */
export function glycogenRate(glycogenKg: Kilograms, given: GlycogenCase): number {
  const baseline = given.baselineGlycogenKg ?? ADULT_ENERGY.baselineGlycogenKg;
  const drain = given.baselineCarbohydrateKjPerDay / baseline ** 2;
  return (given.carbohydrateKjPerDay - drain * glycogenKg ** 2) / ADULT_ENERGY.glycogenDensityKjPerKg;
}

/** Where glycogen settles under constant intake, kg: G_init sqrt(CI / CI_b). */
export function settledGlycogenKg(given: GlycogenCase): Kilograms {
  const baseline = given.baselineGlycogenKg ?? ADULT_ENERGY.baselineGlycogenKg;
  return baseline * Math.sqrt(given.carbohydrateKjPerDay / given.baselineCarbohydrateKjPerDay);
}

/** Mass of glycogen with the water bound to it, kg. */
export function wetGlycogenKg(glycogenKg: Kilograms): Kilograms {
  return (1 + ADULT_ENERGY.glycogenWaterRatio) * glycogenKg;
}
