import { energyFloorAt, lookOf } from './judgement.ts';
import { stepAtOrAbove } from '#core/limits/limit.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import type { Kilocalories } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { STEP_KCAL } from './corrections.ts';
import type { FutureDay } from './future-day.ts';
import { FULL_PATHS, type OpenCourse, QUICK_PATHS, runCourse } from './open-course.ts';
import { meanOf, type Spread, spreadOf } from './quantiles.ts';
import { meetingAt, type Target } from './target.ts';
import { percentWords, targetWords } from './words.ts';

export interface SeasonShow {
  readonly show: string;
  readonly date: string;
  readonly target: Target;
}

export interface SeasonLanding {
  readonly show: string;
  readonly date: string;
  readonly massKg: Spread;
  readonly bodyFatPercent: Spread;
  /** Chance of the show's own target if the present plan goes on to it. */
  readonly probability: number;
}

/** What lies between one show and the next. */
export interface BetweenShows {
  readonly from: string;
  readonly to: string;
  readonly weeks: number;
  /** Intake that holds the first show's tissue until the next, on average, on the 25 kcal grid. */
  readonly holdKcal: Kilocalories;
  readonly probabilityHolding: number;
  readonly probabilityGoingOn: number;
  readonly why: readonly string[];
}

export interface Season {
  readonly landings: readonly SeasonLanding[];
  readonly between: readonly BetweenShows[];
}

/**
 * Several shows in one season (CRS-15). The course must be opened to the last of them. After each show the question is
 * whether to go on losing or to hold what was reached; both are lived through and set side by side.
 */
export function season(course: OpenCourse, shows: readonly SeasonShow[]): Season {
  const ahead = shows
    .filter(({ date }) => date > course.asOf && date <= course.setting.show)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const { days } = course.future;
  const looks = ahead.map(({ date }) => indexOf(course, date));
  const run = runCourse(course, days, FULL_PATHS, looks);
  const landings = ahead.map(({ show, date, target }, look) => {
    const mass = lookOf(run.massKg, look, FULL_PATHS);
    const fat = lookOf(run.fatKg, look, FULL_PATHS);
    return {
      show,
      date,
      massKg: spreadOf(mass, 2),
      bodyFatPercent: spreadOf(
        mass.map((value, path) => (100 * (fat[path] ?? 0)) / value),
        2,
      ),
      probability: roundTo(meetingAt(run, look, target).probability, 3),
    };
  });
  const between = ahead.slice(1).flatMap((next, k) => {
    const before = ahead[k];
    const going = landings[k + 1];
    return before && going && next.date > before.date
      ? [holding(course, before, next, going.probability)]
      : [];
  });
  return { landings, between };
}

function holding(
  course: OpenCourse,
  before: SeasonShow,
  next: SeasonShow,
  probabilityGoingOn: number,
): BetweenShows {
  const from = indexOf(course, before.date);
  const to = indexOf(course, next.date);
  const drift = (kcal: number) => {
    const run = runCourse(course, heldDays(course, from, to, kcal), QUICK_PATHS, [from, to]);
    return meanOf(lookOf(run.tissueKg, 1, QUICK_PATHS)) - meanOf(lookOf(run.tissueKg, 0, QUICK_PATHS));
  };
  const cardio = course.future.days[to]?.cardioKcal ?? 0;
  let low = stepAtOrAbove(energyFloorAt(course, cardio).present, STEP_KCAL);
  let high = low + 120 * STEP_KCAL;
  while (high - low > STEP_KCAL) {
    const middle = low + STEP_KCAL * Math.round((high - low) / (2 * STEP_KCAL));
    if (drift(middle) >= 0) high = middle;
    else low = middle;
  }
  const held = runCourse(course, heldDays(course, from, to, high), FULL_PATHS, [to]);
  const probabilityHolding = roundTo(meetingAt(held, 0, next.target).probability, 3);
  const weeks = roundTo((to - from) / 7, 1);
  return {
    from: before.date,
    to: next.date,
    weeks,
    holdKcal: high,
    probabilityHolding,
    probabilityGoingOn,
    why: [
      `${weeks} weeks lie between ${before.date} and ${next.date}; about ${high} kcal a day would hold what the first show reached.`,
      `Chance of ${targetWords(next.target)} on ${next.date}: ${percentWords(probabilityHolding)} holding, ${percentWords(probabilityGoingOn)} going on as planned.`,
      'After a long deficit every week near balance is a week of recovery; hold unless the second target asks for more.',
    ],
  };
}

/** The plan up to the first show, then one level of intake to the next; what it adds or takes is carbohydrate and fat. */
function heldDays(course: OpenCourse, from: number, to: number, kcal: Kilocalories): readonly FutureDay[] {
  return course.future.days.slice(0, to + 1).map((day, d) =>
    d <= from
      ? day
      : {
          ...day,
          energyKcal: kcal,
          carbohydrateKcal: Math.max(
            0,
            day.carbohydrateKcal + course.carbohydrateShare * (kcal - day.energyKcal),
          ),
          basis: 'planned' as const,
        },
  );
}

function indexOf(course: OpenCourse, date: string): number {
  return daysBetween(course.asOf, date) - 1;
}
