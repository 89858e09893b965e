import type { DayRow } from '#core/course/day-row.ts';
import { NO_MOVING_WATER } from '#core/course/future-days.ts';
import { type CourseSetting, type OpenCourse, openCourse } from '#core/course/open-course.ts';
import { addDays } from '#core/units/civil-date.ts';
import { type KnownBody, knownStanding } from './known-standing.ts';

export const AS_OF = '2027-03-01';

/** Six weeks of log that end on `AS_OF`, at one level of intake with a little daily swing. */
export function steadyLog(energyKcal: number, cardioKcal: number, days = 42): DayRow[] {
  return Array.from({ length: days }, (_, i) => ({
    date: addDays(AS_OF, i - days + 1),
    weightKg: 85 + (days - 1 - i) * 0.07,
    intake: {
      energyKcal: energyKcal + (((i * 37) % 11) - 5) * 20,
      proteinG: 185,
      carbohydrateG: Math.round((energyKcal - 185 * 4 - 65 * 9) / 4),
      fatG: 65,
      sodiumMg: 3500,
    },
    cardioKcal,
  }));
}

const man: KnownBody = { asOf: AS_OF, fatKg: 13, leanTissueKg: 70, baselineKcal: 2900, restingKcal: 1850 };

/** A man of 85 kg at 15 % fat, ten weeks out, eating 2350 kcal with 200 kcal of cardio unless said otherwise. */
export function knownCourse(setting: Partial<CourseSetting> = {}, body: Partial<KnownBody> = {}): OpenCourse {
  return openCourse(
    {
      sex: 'male',
      rows: steadyLog(2350, 200),
      show: '2027-05-10',
      target: { bodyFatPercent: { max: 11 } },
      own: {},
      seed: 1,
      ...setting,
    },
    knownStanding({ ...man, ...body }),
    NO_MOVING_WATER,
  );
}
