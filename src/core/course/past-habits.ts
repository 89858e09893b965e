import { daysBetween } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import type { Adherence } from './future-day.ts';

/** What was eaten and done of late, on average over the days on which it was logged. */
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
  const intakes = inside.flatMap((row) => (row.intake ? [row.intake] : []));
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
const BELIEVED = { weekSd: 0.04, daySd: 0.1, cardioSd: 0.1, weeks: 4 } as const;

/**
 * How far weeks and days stray about the plan, learnt from the last eight weeks of the log and shrunk towards what is
 * believed before. The level is 1: what goes on is the recent average itself.
 */
export function adherenceOf(rows: readonly DayRow[], until: string): Adherence {
  const weeks: number[][] = Array.from({ length: 8 }, () => []);
  for (const row of rows) {
    const age = daysBetween(row.date, until);
    if (row.intake && age >= 0 && age < 56) weeks[Math.floor(age / 7)]?.push(row.intake.energyKcal);
  }
  const full = weeks.filter((week) => week.length >= 4);
  const means = full.map(mean);
  const level = mean(means);
  if (means.length < 2 || level <= 0) {
    return {
      share: 1,
      weekSd: BELIEVED.weekSd,
      daySd: BELIEVED.daySd,
      cardioShare: 1,
      cardioSd: BELIEVED.cardioSd,
    };
  }
  // Differences of neighbouring weeks leave out the slow steps of the diet itself.
  const steps = means.slice(1).map((value, i) => (value - (means[i] ?? value)) ** 2 / 2);
  const within = full.flatMap((week) =>
    week.map((value) => (value - mean(week)) ** 2 * (week.length / (week.length - 1))),
  );
  return {
    share: 1,
    weekSd: shrunk(Math.sqrt(mean(steps)) / level, steps.length, BELIEVED.weekSd, BELIEVED.weeks),
    daySd: shrunk(Math.sqrt(mean(within)) / level, within.length, BELIEVED.daySd, 7 * BELIEVED.weeks),
    cardioShare: 1,
    cardioSd: BELIEVED.cardioSd,
  };
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

/** Standard deviations pooled by their variances. */
function shrunk(found: number, count: number, believed: number, weight: number): number {
  return Math.sqrt((count * found ** 2 + weight * believed ** 2) / (count + weight));
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : sumOf(values) / values.length;
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
