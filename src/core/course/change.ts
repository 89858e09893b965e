import type { KilocaloriesPerDay } from '#core/units/quantities.ts';
import type { FutureDay } from './future-day.ts';

/** A change of the plan on every day from a date on, kcal a day. Absent: left as it is. */
export interface Change {
  readonly energyKcal?: KilocaloriesPerDay;
  readonly cardioKcal?: KilocaloriesPerDay;
}

/**
 * The plan with the change in it. Food changes carbohydrate by `carbohydrateShare` of the energy, fat by the rest;
 * protein stays. Nothing falls below zero.
 */
export function withChange(
  days: readonly FutureDay[],
  change: Change,
  from: string,
  carbohydrateShare: number,
): readonly FutureDay[] {
  const { energyKcal = 0, cardioKcal = 0 } = change;
  if (energyKcal === 0 && cardioKcal === 0) return days;
  return days.map((day) =>
    day.date < from
      ? day
      : {
          ...day,
          energyKcal: Math.max(0, day.energyKcal + energyKcal),
          carbohydrateKcal: Math.max(0, day.carbohydrateKcal + carbohydrateShare * energyKcal),
          cardioKcal: Math.max(0, day.cardioKcal + cardioKcal),
        },
  );
}

/** Size of a change: what is asked of the athlete each day, kcal. */
export function sizeOf({ energyKcal = 0, cardioKcal = 0 }: Change): number {
  return Math.abs(energyKcal) + Math.abs(cardioKcal);
}
