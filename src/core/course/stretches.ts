import { isoWeekday } from '#core/units/civil-date.ts';
import type { Grams, Kilocalories, KilocaloriesPerDay } from '#core/units/quantities.ts';
import type { FutureDay } from './future-day.ts';

/** Days planned otherwise: a diet break near maintenance, higher-carbohydrate days, travel. */
export interface Stretch {
  readonly type: 'diet break' | 'higher-carbohydrate days' | 'travel';
  readonly from: string;
  readonly until: string;
  /** Absent: what keeps the balance on these days. */
  readonly energyKcal?: Kilocalories | undefined;
  /** Absent: all the energy added is carbohydrate. */
  readonly carbohydrateG?: Grams | undefined;
  /** 1 Monday to 7 Sunday; absent: every day of the stretch. */
  readonly weekdays?: readonly number[] | undefined;
}

/**
 * The plan with stretches in it (CRS-11). `balanceKcal` is the logged intake that keeps the balance without cardio; on
 * a day of a stretch without an energy of its own, intake is that plus the day's cardio, if it is more than planned.
 */
export function withStretches(
  days: readonly FutureDay[],
  stretches: readonly Stretch[],
  balanceKcal: KilocaloriesPerDay,
): readonly FutureDay[] {
  if (stretches.length === 0) return days;
  return days.map((day) => {
    const stretch = day.basis === 'known' ? undefined : stretches.find((one) => covers(one, day.date));
    return stretch ? inStretch(day, stretch, balanceKcal) : day;
  });
}

export function covers(stretch: Stretch, date: string): boolean {
  return (
    stretch.from <= date &&
    date <= stretch.until &&
    (stretch.weekdays === undefined || stretch.weekdays.includes(isoWeekday(date)))
  );
}

function inStretch(day: FutureDay, stretch: Stretch, balanceKcal: KilocaloriesPerDay): FutureDay {
  const energyKcal = stretch.energyKcal ?? Math.max(day.energyKcal, balanceKcal + day.cardioKcal);
  const carbohydrateKcal =
    stretch.carbohydrateG === undefined
      ? Math.max(0, day.carbohydrateKcal + energyKcal - day.energyKcal)
      : 4 * stretch.carbohydrateG;
  return { ...day, energyKcal, carbohydrateKcal };
}
