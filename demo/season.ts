import type { DataOf } from '#core/journal/kinds/registry.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';
import { trainingDays } from './training-plan.ts';

/** Targets as they were lowered along the way; the last stand today. */
export const targetSteps = [
  { fromDay: 0, training: { p: 135, c: 230, f: 55 }, rest: { p: 135, c: 180, f: 60 } },
  { fromDay: 42, training: { p: 138, c: 205, f: 50 }, rest: { p: 138, c: 155, f: 55 } },
  { fromDay: 84, training: { p: 140, c: 185, f: 46 }, rest: { p: 140, c: 135, f: 50 } },
] as const;

/** Monday, Tuesday, Thursday, Friday, Saturday. */
export const trainingWeekdays: readonly number[] = trainingDays.map(({ weekday }) => weekday);

/** Who prepares for what, and how the days usually run: written on the first day. */
export function writeSeason(scribe: Scribe): void {
  const day = story.begins;
  scribe.write(day, '06:00', 'athlete-described', {
    name: story.name,
    birthYear: story.birthYear,
    sex: story.sex,
    heightCm: story.heightCm,
    units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
    cautionsRead: [
      'not-medical-advice',
      'eating-disorder',
      'low-energy',
      'essential-fat',
      'last-week',
      'food-safety',
      'supplements',
      'blood',
    ],
  });
  scribe.write(day, '06:02', 'show-set', {
    show: story.show.id,
    name: story.show.name,
    date: story.show.date,
    place: story.town,
    class: { name: 'figure' },
    target: { bodyFatPercentMax: 17.9 },
  });
  scribe.write(day, '06:03', 'preparation-begun', { show: story.show.id, from: day });
  for (const { weekday, name, template } of trainingDays)
    scribe.write(day, '06:04', 'day-shaped', {
      scope: { of: 'usual', weekdays: [weekday] },
      wake: '05:45',
      sleep: '22:30',
      training: { start: '14:30', minutes: 80, title: name, template },
      cardio: [{ start: '06:10', minutes: 35, activity: 'Incline walk', beforeFood: true }],
      meals: { min: 3, max: 5 },
    });
  scribe.write(day, '06:05', 'day-shaped', {
    scope: { of: 'usual', weekdays: [3, 7] },
    wake: '06:30',
    sleep: '22:30',
    cardio: [{ start: '07:00', minutes: 45, activity: 'Walk along the harbour', beforeFood: true }],
    meals: { min: 3, max: 5 },
  });
}

/** New targets on the days they were set. */
export function writeTargets(scribe: Scribe, dayNumber: number): void {
  const step = targetSteps.find((candidate) => candidate.fromDay === dayNumber);
  if (!step) return;
  const day = addDays(story.begins, dayNumber);
  for (const [dayKind, { p, c, f }, clock] of [
    ['training', step.training, '06:06'],
    ['rest', step.rest, '06:07'],
  ] as const) {
    scribe.write(day, clock, 'target-set', {
      from: day,
      dayKind,
      basis: dayNumber === 0 ? 'entered' : 'course',
      proteinG: p,
      carbohydrateG: c,
      fatG: f,
      fibreMinG: 25,
      sodiumMaxMg: 3000,
    });
  }
}

/** So many days after the beginning the dates before the show are put down. */
const DATED_ON = 98;
const POSING = { at: '19:15', minutes: 20, everyDays: 7 } as const;

/** Posing each Thursday from the story's today on, registration, check-in and tan. */
export function writeDates(scribe: Scribe, dayNumber: number): void {
  if (dayNumber !== DATED_ON) return;
  const day = addDays(story.begins, dayNumber);
  const { id: show, date } = story.show;
  const put = (data: Omit<DataOf<'event-dated'>, 'event' | 'show'>): void => {
    const { type } = data;
    scribe.write(day, '06:10', 'event-dated', { event: `${type} ${data.date}`, show, ...data });
  };
  for (let at: string = story.today; at < date; at = addDays(at, POSING.everyDays))
    put({
      title: 'Posing practice',
      type: 'posing practice',
      date: at,
      at: POSING.at,
      minutes: POSING.minutes,
    });
  put({ title: 'Registration closes', type: 'registration', date: addDays(date, -36) });
  put({ title: 'Athlete check-in', type: 'check-in', date: addDays(date, -1), at: '16:00', minutes: 45 });
  put({ title: 'First coat of tan', type: 'tanning', date: addDays(date, -1), at: '18:30', minutes: 60 });
}
