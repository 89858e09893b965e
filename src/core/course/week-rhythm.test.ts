import { describe, expect, it } from 'vitest';
import { addDays, daysBetween, isoWeekday } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import { weekRhythm } from './week-rhythm.ts';

const until = '2027-03-14';
const log = (days: number, of: (date: string) => number): DayRow[] =>
  Array.from({ length: days }, (_, i) => {
    const date = addDays(until, i - days + 1);
    return { date, intake: { energyKcal: of(date), proteinG: 180, carbohydrateG: of(date) / 10, fatG: 60 } };
  });

describe('[CRS-04] the rhythm of the week', () => {
  it('[CRS-04] a higher Saturday goes on, shrunk, and the week adds nothing', () => {
    const rhythm = weekRhythm(
      log(42, (date) => (isoWeekday(date) === 6 ? 3000 : 2000)),
      until,
    );
    const all = [1, 2, 3, 4, 5, 6, 7].map(rhythm.energyKcal);
    expect(all.reduce((sum, value) => sum + value, 0)).toBeCloseTo(0, 9);
    // 857 above its week, believed by six parts of eight.
    expect(rhythm.energyKcal(6)).toBeCloseTo((0.75 * (1000 * 6)) / 7, 6);
    expect(rhythm.carbohydrateKcal(6)).toBeCloseTo(0.4 * rhythm.energyKcal(6), 6);
    expect(rhythm.energyKcal(1)).toBeLessThan(0);
  });

  it('[CRS-04] weeks with few logged days say nothing; a slow change of level is no rhythm', () => {
    expect(
      weekRhythm(
        log(4, () => 2000),
        until,
      ).energyKcal(7),
    ).toBe(0);
    const falling = weekRhythm(
      log(42, (date) => 3000 + 100 * Math.floor((daysBetween(until, date) - 1) / 7)),
      until,
    );
    for (let weekday = 1; weekday <= 7; weekday++)
      expect(Math.abs(falling.energyKcal(weekday))).toBeLessThan(1);
  });
});
