import { daysBetween, isoWeekday } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';

/** How a weekday departs from its week: a higher-carbohydrate Saturday, a lean Monday. Departures add to zero. */
export interface WeekRhythm {
  readonly energyKcal: (weekday: number) => number;
  readonly carbohydrateKcal: (weekday: number) => number;
}

const WEEKS = 6;
/** Logged days a week must have to speak for its days. */
const LEAST_DAYS = 5;
/** Weeks that a departure must outweigh to be believed in full. Common practice, no source. */
const SHRINK_WEEKS = 2;

/** Departures of each weekday from its own week, over the last six weeks, shrunk towards none (CRS-04). */
export function weekRhythm(rows: readonly DayRow[], until: string): WeekRhythm {
  const sums = Array.from({ length: 8 }, () => ({ count: 0, energyKcal: 0, carbohydrateKcal: 0 }));
  for (let week = 0; week < WEEKS; week++) {
    const days = rows.flatMap(({ date, intake }) => {
      const age = daysBetween(date, until);
      return intake && Math.floor(age / 7) === week && age >= 0
        ? [
            {
              weekday: isoWeekday(date),
              energyKcal: intake.energyKcal,
              carbohydrateKcal: 4 * intake.carbohydrateG,
            },
          ]
        : [];
    });
    if (days.length < LEAST_DAYS) continue;
    const energyKcal = days.reduce((sum, day) => sum + day.energyKcal, 0) / days.length;
    const carbohydrateKcal = days.reduce((sum, day) => sum + day.carbohydrateKcal, 0) / days.length;
    for (const day of days) {
      const sum = sums[day.weekday];
      if (!sum) continue;
      sum.count += 1;
      sum.energyKcal += day.energyKcal - energyKcal;
      sum.carbohydrateKcal += day.carbohydrateKcal - carbohydrateKcal;
    }
  }
  return {
    energyKcal: balanced(sums.map(({ count, energyKcal }) => energyKcal / (count + SHRINK_WEEKS))),
    carbohydrateKcal: balanced(
      sums.map(({ count, carbohydrateKcal }) => carbohydrateKcal / (count + SHRINK_WEEKS)),
    ),
  };
}

/** By weekday, 1 to 7, less their mean: the rhythm moves food within the week and adds none. */
function balanced(departures: readonly number[]): (weekday: number) => number {
  const mean = departures.slice(1).reduce((sum, value) => sum + value, 0) / 7;
  return (weekday) => (departures[weekday] ?? 0) - mean;
}
