import type { Kilograms } from '#core/units/quantities.ts';

/**
 * Linear form of the dynamic model about a body (polidori-2016, equations 1 to 3), kcal:
 * dEI = rho dBW/dt + epsilon (BW - BW0) + dDelta BW0 / (1 - beta).
 */
export interface LinearBalance {
  /** dL/dF on the Forbes curve, 10.4 / F. */
  readonly alpha: number;
  /** kcal per day and kg of mass changed. */
  readonly epsilon: number;
  /** kcal per kg, the factor 1 / (1 - beta) included. */
  readonly rho: number;
  readonly timeConstantDays: number;
  readonly halfTimeDays: number;
}

/** Parameters of that paper in kcal (their rounding differs a little from the full model's). */
const LINEAR = {
  fatDepositionKcalPerKg: 180,
  fatDensityKcalPerKg: 9_400,
  leanDepositionKcalPerKg: 230,
  leanDensityKcalPerKg: 1_800,
  fatMaintenanceKcal: 3.2,
  leanMaintenanceKcal: 22,
  beta: 0.24,
  forbesKg: 10.4,
} as const;

/** Coefficients for a fat mass and an activity cost delta (kcal per kg and day). Source key: polidori-2016. */
export function linearBalance(fatKg: Kilograms, activityKcalPerKgDay: number): LinearBalance {
  const alpha = LINEAR.forbesKg / fatKg;
  const kept = 1 - LINEAR.beta;
  const rho =
    (LINEAR.fatDepositionKcalPerKg +
      LINEAR.fatDensityKcalPerKg +
      alpha * (LINEAR.leanDepositionKcalPerKg + LINEAR.leanDensityKcalPerKg)) /
    (kept * (1 + alpha));
  const maintenance = (LINEAR.fatMaintenanceKcal + alpha * LINEAR.leanMaintenanceKcal) / (1 + alpha);
  const epsilon = (maintenance + activityKcalPerKgDay) / kept;
  const timeConstantDays = rho / epsilon;
  return { alpha, epsilon, rho, timeConstantDays, halfTimeDays: Math.LN2 * timeConstantDays };
}
