import type { Kilograms } from '#core/units/quantities.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { type Studied, withinStudied } from './studied-range.ts';

const RHO_FAT = ADULT_ENERGY.fatDensityKjPerKg;
const RHO_LEAN = ADULT_ENERGY.leanDensityKjPerKg;

/** C of equation 6, kg: 10.4 kg rho_L / rho_F = 2.001. */
export const FORBES_ENERGY_KG = (ADULT_ENERGY.forbesKg * RHO_LEAN) / RHO_FAT;

/** Share of an energy imbalance that goes to lean tissue, p = C / (C + F) (equation 6 of hall-2011; F kg). */
export function forbesEnergyShare(fatKg: Kilograms): number {
  return FORBES_ENERGY_KG / (FORBES_ENERGY_KG + fatKg);
}

/**
 * Share of a small change of mass that is lean, 10.4 / (10.4 + F). Source key: forbes-1987. Untrained people, mostly
 * women, cross-sectional: lifters on much protein lose far less lean, so this is no law for them.
 */
export function forbesMassShare(fatKg: Kilograms): number {
  return ADULT_ENERGY.forbesKg / (ADULT_ENERGY.forbesKg + fatKg);
}

/** Fat-free mass on the Forbes curve, 10.4 ln F + 14.2 kg (women; forbes-1987, from memory). Asked for 3 to 90 kg of fat. */
export function forbesCurveKg(fatKg: Kilograms): Studied<Kilograms> {
  return withinStudied(
    [{ quantity: 'fatKg', found: fatKg, low: 3, high: 90 }],
    () => ADULT_ENERGY.forbesKg * Math.log(fatKg) + 14.2,
  );
}

/** Energy share p of lean tissue for a lean share q of the mass that changes: q rho_L / (q rho_L + (1 - q) rho_F). */
export function energyShareOfMassShare(leanMassShare: number): number {
  const lean = leanMassShare * RHO_LEAN;
  return lean / (lean + (1 - leanMassShare) * RHO_FAT);
}

/** Energy density of a change of mass of which the share q is lean, kJ/kg: (1 - q) 39.5 + q 7.6 MJ/kg. */
export function energyDensityKjPerKg(leanMassShare: number): number {
  return (1 - leanMassShare) * RHO_FAT + leanMassShare * RHO_LEAN;
}
