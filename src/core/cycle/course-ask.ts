import type { EstimateRequest } from '../body/estimate-request.ts';
import type { DayRow } from '../course/day-row.ts';
import {
  adoptedCourse,
  type AdoptedCourse,
  showsFrom,
  stretchesOf,
  targetOfShow,
} from '../course/read-course.ts';
import type { SeasonShow } from '../course/season.ts';
import type { Stretch } from '../course/stretches.ts';
import type { Target } from '../course/target.ts';
import { shapeOfDay } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { ReadItem } from './day-sheet.ts';
import { bodyLog } from './body-log.ts';

export interface PlannedDay {
  readonly date: string;
  readonly energyKcal: number;
  readonly proteinG: number;
  readonly carbohydrateG: number;
  readonly fatG: number;
  /** Absent: the targets say nothing of cardio, and it goes on as before. */
  readonly cardioKcal?: number;
}

/** All that the course is opened from: plain data, so that a worker can do it. */
export interface CourseAsk {
  readonly today: string;
  readonly log: EstimateRequest;
  readonly show: DataOf<'show-set'>;
  readonly target: Target;
  /** The shows from here on, the one above among them. */
  readonly shows: readonly SeasonShow[];
  /** Targets as days, of the last four weeks and up to the last show. */
  readonly planned: readonly PlannedDay[];
  readonly stretches: readonly Stretch[];
  readonly adopted?: AdoptedCourse;
}

/** Shows further ahead than this are a season's plan, not a course. */
const FURTHEST_DAYS = 400;
/** So far back the plan is held against what was eaten. */
const KEPT_DAYS = 28;

/** Reads what the course is asked from the journal (RUN-25): the next show, its target, the plan, the log. */
export function courseAsk(ledger: Ledger, today: string, read: ReadItem): Outcome<CourseAsk> {
  const shows = showsFrom(ledger, today);
  const next = shows[0];
  if (next === undefined)
    return refused(
      'course/no-show',
      'show',
      'No show is set.',
      'Set the date of the show and what you want to bring to it; the course is laid back from there.',
    );
  const { data: show } = next;
  if (daysBetween(today, show.date) > FURTHEST_DAYS)
    return refused(
      'course/show-too-far',
      'show',
      `${show.name} is more than ${FURTHEST_DAYS} days ahead.`,
      'A course is plotted from a year before the show on; until then the Body place shows where you stand.',
    );
  const target = targetOfShow(show);
  if (target.bodyFatPercent === undefined && target.massKg === undefined)
    return refused(
      'course/no-target-yet',
      'show',
      `${show.name} has no target yet.`,
      'Say what you want to bring: a body fat at most, a body mass at most or at least.',
    );
  const log = bodyLog(ledger, today, read);
  if (!log.ok) return log;
  const within = shows.filter(({ date }) => daysBetween(today, date) <= FURTHEST_DAYS);
  const last = within.at(-1)?.date ?? show.date;
  const adopted = adoptedCourse(ledger, show.show);
  const stretches = stretchesOf(ledger).filter(({ until }) => until > today);
  return answered({
    today,
    log: log.value,
    show,
    target,
    shows: within.map((one) => ({ show: one.show, date: one.date, target: one.target })),
    planned: plannedDays(ledger, addDays(today, -KEPT_DAYS), last, stretches),
    stretches,
    ...(adopted && { adopted }),
  });
}

/**
 * The targets in force on each day, by the kind of day it usually is; days without a target are left out. Targets that came
 * with a stretch are left out too: the stretch itself says what is eaten then, and its rise is held against the days
 * without it (CRS-33).
 */
export function plannedDays(
  ledger: Ledger,
  from: string,
  until: string,
  stretches: readonly Stretch[] = [],
): readonly PlannedDay[] {
  const counts = ({ data }: Fact<'target-set'>) =>
    data.basis !== 'course' || !stretches.some((one) => one.from === data.from && one.until === data.until);
  return Array.from({ length: Math.max(0, daysBetween(from, until) + 1) }, (_, k) =>
    addDays(from, k),
  ).flatMap((date) => {
    const kind = shapeOfDay(ledger, date)?.dayKind ?? 'rest';
    const target = targetsOfDay(ledger, date, kind, counts)?.data;
    if (target === undefined) return [];
    const { proteinG, carbohydrateG, fatG, cardioKcal } = target;
    return [
      {
        date,
        energyKcal: 4 * proteinG + 4 * carbohydrateG + 9 * fatG,
        proteinG,
        carbohydrateG,
        fatG,
        ...(cardioKcal !== undefined && { cardioKcal }),
      },
    ];
  });
}

/** A planned day as a row of the plan; where it says nothing of cardio, what was done of late goes on. */
export function rowOf({ date, cardioKcal, ...intake }: PlannedDay, usualCardioKcal: number): DayRow {
  return { date, intake, cardioKcal: cardioKcal ?? usualCardioKcal };
}
