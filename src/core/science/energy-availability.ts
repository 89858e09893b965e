import type { KilocaloriesPerDay, Kilograms } from '#core/units/quantities.ts';

/**
 * Energy availability, kcal per kg of fat-free mass and day: (intake - exercise) / FFM. Exercise is its net cost.
 * Source key: mountjoy-2018. Thresholds stand with the limits, not here.
 */
export function energyAvailability(
  intakeKcal: KilocaloriesPerDay,
  exerciseNetKcal: KilocaloriesPerDay,
  fatFreeKg: Kilograms,
): number {
  return (intakeKcal - exerciseNetKcal) / fatFreeKg;
}
