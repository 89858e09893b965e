import { bodyFatFloor } from '#core/limits/body-fat-floor.ts';
import { cardioCeiling } from '#core/limits/cardio-ceiling.ts';
import { dailyEnergyFloor } from '#core/limits/daily-energy-floor.ts';
import { keeps, type Limit, type LimitReason } from '#core/limits/limit.ts';
import { lossRateCeiling } from '#core/limits/loss-rate-ceiling.ts';
import type { Kilograms, Percent } from '#core/units/quantities.ts';
import type { Change } from './change.ts';
import type { FutureDay } from './future-day.ts';
import { daysWith, type OpenCourse, runCourse } from './open-course.ts';
import { averageOver } from './past-habits.ts';
import { meanOf } from './quantiles.ts';
import type { Run } from './run-paths.ts';
import { type Meeting, meetingAt } from './target.ts';

/** What a change of the plan comes to. */
export interface Judgement extends Meeting {
  readonly change: Change;
  readonly run: Run;
  /** Tissue lost on average until the show, percent of body mass a week; below zero is a gain. */
  readonly lossPercentPerWeek: Percent;
  /** The same in the steepest single week. */
  readonly steepestPercentPerWeek: Percent;
  readonly massKg: Kilograms;
  readonly fatKg: Kilograms;
  readonly bodyFatPercent: Percent;
  /** Energy and cardio of the days to come, on average. */
  readonly energyKcal: number;
  readonly cardioKcal: number;
}

/** Lives the plan with the change in it, over the first `paths`. */
export function judge(course: OpenCourse, change: Change, paths: number): Judgement {
  return { ...judgeDays(course, daysWith(course, change), paths), change };
}

/** Lives some days, over the first `paths`. */
export function judgeDays(course: OpenCourse, days: readonly FutureDay[], paths: number): Judgement {
  const looks = weeklyLooks(days.length);
  const run = runCourse(course, days, paths, looks);
  const last = looks.length - 1;
  const tissue = looks.map((_, look) => meanOf(lookOf(run.tissueKg, look, paths)));
  const massKg = meanOf(lookOf(run.massKg, last, paths));
  const fatKg = meanOf(lookOf(run.fatKg, last, paths));
  return {
    ...meetingAt(run, last, course.setting.target),
    change: {},
    run,
    ...paceOf(tissue, looks, course.startMassKg, course.earlyShare),
    massKg,
    fatKg,
    bodyFatPercent: (100 * fatKg) / massKg,
    energyKcal: averageDay(days, (day) => day.energyKcal),
    cardioKcal: averageDay(days, (day) => day.cardioKcal),
  };
}

/** Values of one look. */
export function lookOf(values: Float64Array, look: number, paths: number): Float64Array {
  return values.subarray(look * paths, (look + 1) * paths);
}

/** The start, every seventh day, and the show. */
export function weeklyLooks(days: number): readonly number[] {
  const looks = [-1];
  for (let d = 6; d < days - 1; d += 7) looks.push(d);
  if (days > 0) looks.push(days - 1);
  return looks;
}

/** `early` is how much of a day is missing between the start and a look: the food of the look's own day. */
function paceOf(
  tissueKg: readonly number[],
  looks: readonly number[],
  massKg: Kilograms,
  early: number,
): Pick<Judgement, 'lossPercentPerWeek' | 'steepestPercentPerWeek'> {
  const last = looks.length - 1;
  const rate = (from: number, to: number) => {
    const days = (looks[to] ?? 0) - (looks[from] ?? 0) - (from === 0 ? early : 0);
    const lost = (tissueKg[from] ?? 0) - (tissueKg[to] ?? 0);
    return days > 0.5 ? (700 * lost) / (days * massKg) : 0;
  };
  const mean = last > 0 ? rate(0, last) : 0;
  let steepest = mean;
  // A last stretch of a few days says little of a week.
  for (let k = 1; k <= last; k++)
    if ((looks[k] ?? 0) - (looks[k - 1] ?? 0) >= 4) steepest = Math.max(steepest, rate(k - 1, k));
  return { lossPercentPerWeek: mean, steepestPercentPerWeek: steepest };
}

function averageDay(days: readonly FutureDay[], of: (day: FutureDay) => number): number {
  return days.length === 0 ? 0 : days.reduce((sum, day) => sum + of(day), 0) / days.length;
}

/** The limit a change that asks more of the athlete runs against, the tightest first met; undefined where none (CRS-08). */
export function barrierTo(course: OpenCourse, judged: Judgement): LimitReason | undefined {
  const { sex, own } = course.setting;
  const { energyKcal = 0, cardioKcal = 0 } = judged.change;
  const against = (limit: Limit, value: number) => (keeps(limit, value) ? undefined : limit.tightest);
  const asksMore = energyKcal < 0 || cardioKcal > 0;
  if (!asksMore) return undefined;
  const energy = against(energyFloorAt(course, judged.cardioKcal), judged.energyKcal);
  const cardio =
    cardioKcal > 0 ? against(cardioCeiling(lastWeekCardio(course), own), judged.cardioKcal) : undefined;
  return (
    energy ??
    cardio ??
    against(lossRateCeiling(own), judged.steepestPercentPerWeek) ??
    against(bodyFatFloor(sex, own), judged.bodyFatPercent)
  );
}

/** Least daily energy for this athlete at so much cardio. */
export function energyFloorAt(course: OpenCourse, exerciseKcal: number): Limit {
  return dailyEnergyFloor({
    sex: course.setting.sex,
    massKg: course.startMassKg,
    leanKg: course.startMassKg - course.startFatKg,
    exerciseKcal,
    own: course.setting.own,
  });
}

/** Cardio a day of the last week, or of the coming one where that is more. */
export function lastWeekCardio(course: OpenCourse): number {
  const past = course.setting.rows.filter((row) => row.date <= course.asOf);
  const week = averageOver(past, course.asOf, 7);
  return Math.max(
    week?.cardioKcal ?? 0,
    averageDay(course.future.days.slice(0, 7), (day) => day.cardioKcal),
  );
}
