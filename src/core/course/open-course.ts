import type { WaterShares } from '#core/body/moving-water.ts';
import type { OwnLimits } from '#core/limits/own-limits.ts';
import type { Sex } from '#core/limits/published-limits.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { KilocaloriesPerDay, Kilograms } from '#core/units/quantities.ts';
import { type Change, withChange } from './change.ts';
import type { DayRow } from './day-row.ts';
import { drawStarts, type Starts } from './draw-starts.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import type { Adherence, FutureDay } from './future-day.ts';
import { futureDays, type FutureDays } from './future-days.ts';
import { normalPool } from './normal-pool.ts';
import { adherenceOf, type Habit, recentHabit } from './past-habits.ts';
import { meanOf } from './quantiles.ts';
import { type Run, runPaths } from './run-paths.ts';
import { balanceOf, earlyShareOf, type Standing } from './standing.ts';
import { type Stretch, withStretches } from './stretches.ts';
import type { Target } from './target.ts';

/** Paths behind every answer that is shown as a figure. */
export const FULL_PATHS = 2000;
/** Paths of a search step or of a what-if that must follow a finger: any even count of first paths stands for all. */
export const QUICK_PATHS = 400;

export interface CourseSetting {
  readonly sex: Sex;
  readonly rows: readonly DayRow[];
  /** The day it is asked on; absent: the last day known. Rows after the last one go on as before. */
  readonly today?: string;
  readonly show: string;
  readonly target: Target;
  readonly own: OwnLimits;
  readonly seed: number;
  /** Rows after the last day known are eaten as they stand unless they are given as intentions, with how those are kept. */
  readonly kept?: Adherence;
  /** What the estimate could not believe of the log, as sentences. */
  readonly doubts?: readonly string[];
  /** Diet breaks, higher-carbohydrate days, travel; they stand over habit and intention, not over what is known. */
  readonly stretches?: readonly Stretch[];
}

/** A course laid out once, so that every question to it (what if, which correction) meets the same chance. */
export interface OpenCourse {
  readonly setting: CourseSetting;
  /** The last day known: where the paths start. */
  readonly asOf: string;
  readonly today: string;
  /** First day on which a change can act. */
  readonly from: string;
  readonly weeksOut: number;
  readonly starts: Starts;
  readonly pool: Float64Array;
  /** The days to come, stretches in them. */
  readonly future: FutureDays;
  /** The same without the stretches: what the scale is foretold against. */
  readonly plainDays: readonly FutureDay[];
  readonly adherence: Adherence;
  /** The log's recent average; undefined where intake was never logged. */
  readonly habit: Habit | undefined;
  readonly evidence: Evidence;
  /** Share of a change of food that is carbohydrate; the rest is fat. */
  readonly carbohydrateShare: number;
  /** Logged kcal a day that keep the balance without cardio. */
  readonly balanceKcal: KilocaloriesPerDay;
  /** Share of belief that reads the body before the day's food: its last look is a day's food short. */
  readonly earlyShare: number;
  readonly startMassKg: Kilograms;
  readonly startFatKg: Kilograms;
}

export function openCourse(setting: CourseSetting, standing: Standing, water: WaterShares): OpenCourse {
  const { rows, show, seed, kept } = setting;
  const { asOf } = standing;
  const today = setting.today !== undefined && setting.today > asOf ? setting.today : asOf;
  const past = rows.filter((row) => row.date <= asOf);
  const starts = drawStarts(standing, FULL_PATHS, seed);
  const pool = normalPool(seed, 'course/days');
  const balanceKcal = balanceOf(standing);
  const plain = futureDays(rows, asOf, show, balanceKcal, water, kept ? 'planned' : 'known');
  const stretched = withStretches(plain.days, setting.stretches ?? [], balanceKcal);
  const future = { ...plain, days: stretched };
  const course = { starts, pool, adherence: kept ?? adherenceOf(past, asOf) };
  const now = runPaths({ ...course, days: future.days, paths: FULL_PATHS, looks: [-1] });
  const { carbohydrateG, fatG } = future.goesOn;
  const share = (4 * carbohydrateG) / (4 * carbohydrateG + 9 * fatG);
  return {
    ...course,
    setting,
    asOf,
    today,
    from: addDays(today, 1),
    weeksOut: daysBetween(today, show) / 7,
    future,
    plainDays: plain.days,
    habit: recentHabit(past, asOf),
    evidence: evidenceOf(past, today),
    carbohydrateShare: Number.isFinite(share) ? share : 0.6,
    balanceKcal,
    earlyShare: earlyShareOf(standing),
    startMassKg: meanOf(now.massKg),
    startFatKg: meanOf(now.fatKg),
  };
}

/** Days of the course with a change in them. */
export function daysWith(course: OpenCourse, change: Change, from = course.from): readonly FutureDay[] {
  return withChange(course.future.days, change, from, course.carbohydrateShare);
}

/** Runs the first `paths` of the course over some days; looks are indices of future days, -1 the start. */
export function runCourse(
  course: OpenCourse,
  days: readonly FutureDay[],
  paths: number,
  looks: readonly number[],
): Run {
  const { starts, pool, adherence } = course;
  return runPaths({ starts, pool, adherence, days, paths, looks });
}
