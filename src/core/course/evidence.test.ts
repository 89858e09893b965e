import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import { evidenceOf } from './evidence.ts';

const log = (days: number, asOf = '2027-03-28'): DayRow[] =>
  Array.from({ length: days }, (_, i) => ({
    date: addDays(asOf, i - days + 1),
    weightKg: 80,
    intake: { energyKcal: 2200, proteinG: 180, carbohydrateG: 200, fatG: 60 },
  }));

describe('[CRS-05] evidence', () => {
  it('[CRS-05] four weeks of log lack nothing', () => {
    expect(evidenceOf(log(28), '2027-03-28')).toEqual({
      weighIns: 28,
      spanDays: 28,
      loggedIntakes: 28,
      bodyFatReadings: 0,
      lacking: [],
    });
  });

  it('[CRS-05] two days lack everything, said one by one', () => {
    expect(evidenceOf(log(2), '2027-03-28').lacking).toEqual([
      'The log covers 2 days; a course is judged from 14 on.',
      '2 weigh-ins in the last four weeks; 8 are needed.',
      'Intake is logged on 2 days of the last four weeks; 10 are needed.',
    ]);
    expect(evidenceOf([], '2027-03-28').lacking[0]).toBe(
      'The log covers 0 days; a course is judged from 14 on.',
    );
  });

  it('[CRS-05] a scale not stepped on for long is said; rows after the day are not evidence', () => {
    const rows = log(42).map((row, i) => (i >= 30 ? { date: row.date, intake: row.intake } : row));
    expect(evidenceOf(rows, '2027-03-28').lacking).toEqual(['The last weigh-in is 12 days old.']);
    expect(evidenceOf(log(28, '2027-04-20'), '2027-03-28').weighIns).toBe(5);
  });
});
