import { LEG_MUSCLES } from '#core/tables/muscles.ts';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes, Minutes } from '#core/units/quantities.ts';
import type { ExerciseBook } from '../book/exercise-book.ts';

/** Cardio planned or done on a day, beside what else the day holds. */
export interface CardioDay {
  readonly cardio: readonly {
    readonly start: ClockMinutes;
    readonly minutes: Minutes;
    readonly activity: string;
  }[];
  readonly training:
    | { readonly start: ClockMinutes; readonly minutes: Minutes; readonly legs: boolean }
    | undefined;
  readonly sleep: ClockMinutes;
}

/** Long cardio closer to a legs session than this takes from it (source key: wilson-2012; the hours from memory). */
const APART_HOURS = 6;
const LONG_MINUTES = 30;
/** Hard exercise that ends closer to sleep than this puts it off (source key: stutz-2019). */
const BEFORE_SLEEP_MINUTES = 60;

/** What cardio gets in the way of on this day (GYM-81): a legs session close by, and sleep. */
export function cardioConflicts({ cardio, training, sleep }: CardioDay): readonly string[] {
  return cardio.flatMap(({ start, minutes, activity }) => {
    const end = start + minutes;
    const words: string[] = [];
    if (training?.legs === true && minutes >= LONG_MINUTES) {
      const before = training.start - end;
      const after = start - (training.start + training.minutes);
      if (before >= 0 && before < 60 * APART_HOURS)
        words.push(
          `${activity} at ${formatClock(start)} ends ${hours(before)} before a legs session: put it after, or on another day, if the legs are to be fresh.`,
        );
      else if (before < 0 && after < 0)
        words.push(`${activity} at ${formatClock(start)} overlaps the legs session.`);
    }
    if (sleep - end < BEFORE_SLEEP_MINUTES && end <= sleep + 60)
      words.push(
        `${activity} ends ${Math.max(0, sleep - end)} min before sleep: an hour and more between them is better.`,
      );
    return words;
  });
}

function hours(minutes: Minutes): string {
  const whole = Math.floor(minutes / 60);
  return whole === 0 ? `${minutes} min` : `${whole} h ${minutes % 60} min`;
}

/** Whether a session is a legs day: half of its exercises and more are moved by muscles of the legs first. */
export function isLegsDay(exercises: readonly string[], book: ExerciseBook): boolean {
  const legs: readonly string[] = LEG_MUSCLES;
  const moved = exercises.filter((key) => book.exercise(key).prime.some((muscle) => legs.includes(muscle)));
  return moved.length > 0 && 2 * moved.length >= exercises.length;
}
