import { randomStream } from '#core/random/random-stream.ts';
import { addDays } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { BodyDay } from './body-path.ts';
import { trains, writeCardio } from './cardio.ts';
import { writeCheckIn } from './check-ins.ts';
import { healthDays } from './health-days.ts';
import { mealDaysFrom, writeMealDay } from './kitchen-days.ts';
import { writeMeasures } from './measures.ts';
import { writeRehearsals } from './rehearsal.ts';
import type { Scribe } from './scribe.ts';
import { writeDates, writeTargets } from './season.ts';
import { story } from './story.ts';
import { createTrainer } from './training.ts';

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
    // Now and then a morning goes by without the scale.
    if (chance.uniform() > 0.06)
      scribe.write(day, weighedAt(number, day), 'body-weighed', {
        massKg: roundTo(body.scaleKg, 1),
        scale: 'bathroom',
      });
    writeDates(scribe, number);
    writeCheckIn(scribe, number, path);
    writeTargets(scribe, number);
    writeCardio(scribe, day);
    writeMeasures(scribe, day, number, body);
    if (number < mealDaysFrom) {
      trainer.train(scribe, day, number);
      scribe.write(day, '21:50', 'intake-totalled', { of: day, ...body.logged });
    } else writeMealDay(scribe, day, number - mealDaysFrom, () => trainer.train(scribe, day, number));
    writeRehearsals(scribe, number);
    writeHealthDay(scribe, number);
  }
}

/** First thing in the morning; on the very first day once she has told who she is. */
function weighedAt(number: number, day: string): string {
  return number === 0 ? '06:42' : trains(day) ? '05:52' : '06:35';
}
