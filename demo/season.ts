import type { DataOf } from '#core/journal/kinds/registry.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';
import { trainingDays } from './training-plan.ts';

/** Targets as she began with them, and as the correction of the day before left them: the last stand today. */
export const targetSteps = [
  { fromDay: 0, training: { p: 140, c: 223, f: 57 }, rest: { p: 140, c: 173, f: 61 } },
  { fromDay: 64, training: { p: 140, c: 185, f: 46 }, rest: { p: 140, c: 135, f: 50 } },
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
    target: { bodyFatPercentMax: 18.3 },
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

/** New targets on the days they were written: the first when the preparation began, the others for the day after. */
export function writeTargets(scribe: Scribe, dayNumber: number): void {
  const from = dayNumber === 0 ? 0 : dayNumber + 1;
  const step = targetSteps.find((candidate) => candidate.fromDay === from);
  if (!step) return;
  const day = addDays(story.begins, dayNumber);
  for (const dayKind of ['training', 'rest'] as const) {
    const { p, c, f } = step[dayKind];
    scribe.write(day, dayNumber === 0 ? '06:06' : '06:25', 'target-set', {
      from: addDays(story.begins, from),
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
