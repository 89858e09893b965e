import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { BodyDay } from './body-path.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';

/** The check-in that ended in a correction, with what the course said of it that morning; a test asks the course again. */
export const correction = { day: 63, energyKcal: -250, before: 0.251, after: 0.621 } as const;

/** What the line to the show begins with and ends with, as it was laid on the second day. */
const LINE = { fromKg: 66.4, toKg: 60.9, fromPercent: 22.4, toPercent: 18.2 } as const;
const NOTES: Readonly<Record<number, string>> = {
  49: 'Dark when I leave, dark when I come back. Shared dishes at the weekend, guessed as well as I could.',
  63: 'Three weeks without a move. I walk less than I did, and I guess at shared dishes. From now on they are weighed.',
  70: 'First week at less rice. Fine.',
  98: 'Up by more than a kilogram from the load, as foretold. Full, and a little soft.',
  105: 'Scale does not move although nothing changed. Two days of carrying hulls up the slip, sore all over.',
};

/** A check-in each week from the second on; the course on the second day, a correction now and then. */
export function writeCheckIn(scribe: Scribe, number: number, path: readonly BodyDay[]): void {
  const day = addDays(story.begins, number);
  if (number === 1) writeCourse(scribe, day);
  if (number === 0 || number % 7 !== 0) return;
  const corrected = number === correction.day;
  const note = NOTES[number];
  const moved = averageOf(path, number - 7) - averageOf(path, number - 14);
  scribe.write(day, '06:20', 'check-in-closed', {
    week: addDays(day, -1),
    answers: {
      sleep: number > 90 ? 3 : 4,
      hunger: number > 84 ? 3 : 4,
      mood: 4,
      joints: number === 105 ? 3 : 4,
      training: 4,
    },
    decision: corrected ? 'correct' : 'hold',
    evidence: [
      ...(number > 7 ? [`The average of the scale moved by ${roundTo(moved, 1)} kg in the week.`] : []),
      corrected
        ? 'The plan was followed and misses the target beyond noise.'
        : 'The course stands; nothing needs to change.',
    ],
    ...(note !== undefined && { note }),
  });
  if (!corrected) return;
  scribe.write(day, '06:24', 'correction-accepted', {
    from: addDays(day, 1),
    energyKcal: correction.energyKcal,
    macro: 'both',
    days: 'every',
    probabilityBefore: correction.before,
    probabilityAfter: correction.after,
    why: [
      'The plan was followed and misses the target beyond noise; of food alone this is the smallest change that brings the chance to 60 %.',
    ],
  });
}

function writeCourse(scribe: Scribe, day: string): void {
  const days = daysBetween(day, story.show.date);
  const weeks = [...Array.from({ length: Math.floor(days / 7) + 1 }, (_, week) => 7 * week), days];
  const between = (from: number, to: number, at: number) => from + ((to - from) * at) / days;
  scribe.write(day, '06:30', 'course-adopted', {
    show: story.show.id,
    from: day,
    energyKcal: 1900,
    cardioKcal: 140,
    trainingDays: 5,
    higherCarbohydrateDays: 0,
    line: weeks.map((at) => {
      const massKg = roundTo(between(LINE.fromKg, LINE.toKg, at), 2);
      const bodyFatPercent = roundTo(between(LINE.fromPercent, LINE.toPercent, at), 2);
      return {
        date: addDays(day, at),
        massKg,
        fatKg: roundTo((massKg * bodyFatPercent) / 100, 2),
        bodyFatPercent,
      };
    }),
    probability: 0.7,
    why: ['1900 kcal and 140 kcal of cardio a day reach at most 18.3 % body fat with 70 %.'],
  });
}

/** The average of the scale over the week that begins on a day. */
function averageOf(path: readonly BodyDay[], from: number): number {
  const week = path.slice(Math.max(0, from), from + 7);
  return week.reduce((sum, one) => sum + one.scaleKg, 0) / week.length;
}
