import { ADULT_ENERGY } from './adult-energy-parameters.ts';

/**
 * Adaptive thermogenesis, equation 8 of hall-2011: tau dAT/dt = beta_AT dEI - AT with AT(0) = 0.
 * Answers AT after so many days of a constant change of intake, in the unit of that change per day.
 */
export function adaptiveThermogenesis(intakeChangePerDay: number, days: number): number {
  const settled = ADULT_ENERGY.adaptationShare * intakeChangePerDay;
  return settled * (1 - Math.exp(-days / ADULT_ENERGY.adaptationDays));
}
