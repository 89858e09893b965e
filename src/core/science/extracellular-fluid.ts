import type { Kilograms, Milligrams } from '#core/units/quantities.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';

/**
 * Extracellular fluid, equation 3 of hall-2011, as a departure E from baseline (kg, taken as litres):
 * [Na] dE/dt = dNa - xi_Na E - xi_CI (1 - CI / CI_b). dNa is the change of dietary sodium, mg per day.
 */
export interface FluidCase {
  readonly sodiumChangeMgPerDay: Milligrams;
  /** Carbohydrate over its baseline. */
  readonly carbohydrateRatio: number;
}

/** Rate of change, kg per day. */
export function fluidRate(departureKg: Kilograms, given: FluidCase): number {
  return (
    (drive(given) - ADULT_ENERGY.renalSodiumMgPerLitreDay * departureKg) / ADULT_ENERGY.fluidSodiumMgPerLitre
  );
}

/** Where the departure settles, kg. */
export function settledFluidKg(given: FluidCase): Kilograms {
  return drive(given) / ADULT_ENERGY.renalSodiumMgPerLitreDay;
}

/** Departure after so many days of a constant case, kg: exponential with [Na] / xi_Na = 1.073 days. */
export function fluidAfterKg(startKg: Kilograms, given: FluidCase, days: number): Kilograms {
  const settled = settledFluidKg(given);
  const kept = Math.exp((-days * ADULT_ENERGY.renalSodiumMgPerLitreDay) / ADULT_ENERGY.fluidSodiumMgPerLitre);
  return settled + (startKg - settled) * kept;
}

function drive({ sodiumChangeMgPerDay, carbohydrateRatio }: FluidCase): number {
  return sodiumChangeMgPerDay - ADULT_ENERGY.carbohydrateSodiumMgPerDay * (1 - carbohydrateRatio);
}
