import type { DataOf } from '#core/journal/kinds/registry.ts';
import { isoWeekday } from '#core/units/civil-date.ts';
import type { Scribe } from './scribe.ts';
import { trainingWeekdays } from './season.ts';

type Cardio = DataOf<'cardio-done'>;

/** The walk of a day, before food: on the incline where she trains, along the harbour where she does not. */
export function cardioOf(day: string): Cardio {
  return trains(day)
    ? { activity: 'incline walk', minutes: 35, speedKmh: 5.2, gradePercent: 3, beforeFood: true }
    : { activity: 'walk', minutes: 45, speedKmh: 5.4, beforeFood: true };
}

export function writeCardio(scribe: Scribe, day: string): void {
  scribe.write(day, trains(day) ? '06:50' : '07:50', 'cardio-done', cardioOf(day));
}

/** Whether she trains that day. */
export function trains(day: string): boolean {
  const weekday = isoWeekday(day);
  return trainingWeekdays.some((one) => one === weekday);
}
