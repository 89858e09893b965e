import { daysBetween } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import type { Adherence } from './future-day.ts';

/** What was eaten and done of late, on average over the days on which it was logged; an unconfirmed 0 is no log. */
export interface Habit {
  readonly loggedDays: number;
  readonly energyKcal: number;
  readonly proteinG: number;
  readonly carbohydrateG: number;
  readonly fatG: number;
  /** NaN where sodium was never logged. */
  readonly sodiumMg: number;
  readonly cardioKcal: number;
}

const RECENT_DAYS = 14;
const LONG_DAYS = 42;
/** Fewer logged days than this in the recent stretch: the long one is asked. */
const ENOUGH_DAYS = 5;

/**
 * The average of the last 14 days, or of the last 42 where too few of those were logged; undefined where nothing was.
 * A day with intake and no cardio counts as one without cardio, as the estimate reads it.
 */
export function recentHabit(rows: readonly DayRow[], until: string): Habit | undefined {
  const recent = averageOver(rows, until, RECENT_DAYS);
  if (recent && recent.loggedDays >= ENOUGH_DAYS) return recent;
  return averageOver(rows, until, LONG_DAYS) ?? averageOver(rows, until, Number.POSITIVE_INFINITY);
}

export function averageOver(rows: readonly DayRow[], until: string, span: number): Habit | undefined {
  const inside = rows.filter((row) => {
    const age = daysBetween(row.date, until);
    return age >= 0 && age < span;
  });
  const intakes = inside.flatMap(({ intake, confirmed }) =>
    intake && (intake.energyKcal > 0 || confirmed) ? [intake] : [],
  );
  if (intakes.length === 0) return undefined;
  const sodium = intakes.flatMap((intake) => (intake.sodiumMg === undefined ? [] : [intake.sodiumMg]));
  return {
    loggedDays: intakes.length,
    energyKcal: mean(intakes.map((intake) => intake.energyKcal)),
    proteinG: mean(intakes.map((intake) => intake.proteinG)),
    carbohydrateG: mean(intakes.map((intake) => intake.carbohydrateG)),
    fatG: mean(intakes.map((intake) => intake.fatG)),
    sodiumMg: sodium.length === 0 ? Number.NaN : mean(sodium),
    cardioKcal: mean(inside.map((row) => row.cardioKcal ?? 0)),
  };
}

/** What is believed of straying before a log shows its own: common practice, no source. */
const BELIEVED = { weekSd: 0.04, levelSd: 0.012, daySd: 0.1, weeks: 4 } as const;
const CARDIO_SD = 0.1;
/** Weeks apart at which wandering of the level is told from straying of weeks. */
const APART = 4;

/**
 * How far the level, weeks and days stray about the plan, learnt from the last twelve weeks of the log and shrunk
 * towards what is believed before. The average is 1: what goes on is the recent average itself.
 */
export function adherenceOf(rows: readonly DayRow[], until: string): Adherence {
  const weeks: number[][] = Array.from({ length: 12 }, () => []);
  for (const row of rows) {
    const age = daysBetween(row.date, until);
    if (row.intake && age >= 0) weeks[Math.floor(age / 7)]?.push(row.intake.energyKcal);
  }
  const full = weeks.map((week) => (week.length >= 4 ? week : []));
  const level = mean(full.filter((week) => week.length > 0).map(mean)) || 1;
  const near = stepsApart(full, 1, level);
  const far = stepsApart(full, APART, level);
  const within = full.flatMap((week) =>
    week.map((value) => (week.length / (week.length - 1)) * ((value - mean(week)) / level) ** 2),
  );
  // Steps k weeks apart have twice the variance of a week, and k times that of the wandering.
  const known = near.length > 0 && far.length > 0;
  const wandering = known ? Math.max(0, (mean(far) - mean(near)) / (APART - 1)) : 0;
  const week = Math.max(0, (mean(near) - wandering) / 2);
  return {
    share: 1,
    weekSd: shrunk(week, near.length, BELIEVED.weekSd, BELIEVED.weeks),
    levelSd: shrunk(wandering, known ? far.length : 0, BELIEVED.levelSd, BELIEVED.weeks),
    daySd: shrunk(mean(within), within.length, BELIEVED.daySd, 7 * BELIEVED.weeks),
    cardioShare: 1,
    cardioSd: CARDIO_SD,
  };
}

/** Squared steps between week averages so many weeks apart, as shares of the level; weeks without a log say nothing. */
function stepsApart(weeks: readonly (readonly number[])[], apart: number, level: number): readonly number[] {
  return weeks.flatMap((week, k) => {
    const other = weeks[k + apart];
    if (week.length === 0 || other === undefined || other.length === 0) return [];
    return [((mean(week) - mean(other)) / level) ** 2];
  });
}

/**
 * How the plan has been kept over the last four weeks: logged over planned on days that have both, the level shrunk
 * towards 1 as if a week had been kept exactly; spreads as in the log.
 */
export function adherenceTo(
  planned: readonly {
    readonly date: string;
    readonly energyKcal: number;
    readonly cardioKcal?: number | undefined;
  }[],
  rows: readonly DayRow[],
  until: string,
): Adherence {
  const plan = new Map(planned.map((day) => [day.date, day]));
  const shares: number[] = [];
  let [cardioDone, cardioPlanned] = [0, 0];
  for (const row of rows) {
    const day = plan.get(row.date);
    const age = daysBetween(row.date, until);
    if (!day || age < 0 || age >= 28) continue;
    if (row.intake && day.energyKcal > 0) shares.push(row.intake.energyKcal / day.energyKcal);
    cardioDone += row.cardioKcal ?? 0;
    cardioPlanned += day.cardioKcal ?? 0;
  }
  return {
    ...adherenceOf(rows, until),
    share: (sumOf(shares) + 7) / (shares.length + 7),
    cardioShare: cardioPlanned > 0 ? cardioDone / cardioPlanned : 1,
  };
}

/** A standard deviation from a variance found and a deviation believed, pooled by their weights. */
function shrunk(variance: number, count: number, believed: number, weight: number): number {
  return Math.sqrt((count * variance + weight * believed * believed) / (count + weight));
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : sumOf(values) / values.length;
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
