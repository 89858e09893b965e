import { randomStream } from '#core/random/random-stream.ts';
import { addDays, isoWeekday } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { BodyDay } from './body-path.ts';
import { writeCheckIn } from './check-ins.ts';
import { healthDays } from './health-days.ts';
import { writeMealDay } from './kitchen-days.ts';
import { writeMeasures } from './measures.ts';
import type { Scribe } from './scribe.ts';
import { trainingWeekdays, writeDates, writeTargets } from './season.ts';
import { story } from './story.ts';
import { createTrainer } from './training.ts';

/** So many days before today meals are logged one by one; before, each day's intake as a total. */
const MEAL_DAYS = 14;
const LAST = story.weeks * 7;

/** Sixteen weeks of mornings, cardio and food, up to the day before the story's today. */
export function writeWeeks(scribe: Scribe, path: readonly BodyDay[], seed: number): void {
  const chance = randomStream(seed, 'demo weeks');
  const writeHealthDay = healthDays(seed);
  const trainer = createTrainer(seed);
  for (let number = 0; number < LAST; number += 1) {
    const day = addDays(story.begins, number);
    const body = path[number];
    if (!body) throw new RangeError(`the story has no body on day ${number}`);
    writeTargets(scribe, number);
    writeDates(scribe, number);
    writeCheckIn(scribe, number, path);
    // Now and then a morning goes by without the scale.
    if (chance.uniform() > 0.06) {
      scribe.write(day, '06:30', 'body-weighed', { massKg: roundTo(body.scaleKg, 1), scale: 'bathroom' });
    }
    writeCardio(scribe, day);
    writeMeasures(scribe, day, number, body);
    if (number < LAST - MEAL_DAYS) {
      trainer.train(scribe, day, number);
      scribe.write(day, '21:50', 'intake-totalled', { of: day, ...body.logged });
    } else writeMealDay(scribe, day, number - (LAST - MEAL_DAYS), () => trainer.train(scribe, day, number));
    writeHealthDay(scribe, number);
  }
}

export function writeCardio(scribe: Scribe, day: string): void {
  const weekday = isoWeekday(day);
  const trains = trainingWeekdays.some((one) => one === weekday);
  if (trains) {
    scribe.write(day, '06:50', 'cardio-done', {
      activity: 'incline walk',
      minutes: 35,
      speedKmh: 5.2,
      gradePercent: 3,
      beforeFood: true,
    });
  } else {
    scribe.write(day, '07:50', 'cardio-done', {
      activity: 'walk',
      minutes: 45,
      speedKmh: 5.4,
      beforeFood: true,
    });
  }
}
