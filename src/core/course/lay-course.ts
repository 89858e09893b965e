import { cardioCeiling } from '#core/limits/cardio-ceiling.ts';
import { keeps, type LimitReason, stepAtOrAbove, stepAtOrBelow } from '#core/limits/limit.ts';
import { lossRateCeiling } from '#core/limits/loss-rate-ceiling.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { KilocaloriesPerDay, Kilograms, Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { STEP_KCAL } from './corrections.ts';
import type { FutureDay } from './future-day.ts';
import { energyFloorAt, judgeDays, type Judgement, lastWeekCardio, lookOf } from './judgement.ts';
import { FULL_PATHS, type OpenCourse, QUICK_PATHS } from './open-course.ts';
import { meanOf, type Spread, spreadOf } from './quantiles.ts';
import { type Stretch, withStretches } from './stretches.ts';
import { percentWords, targetWords } from './words.ts';

export interface CourseWish {
  /** Diet breaks and the like, which the course must make room for. */
  readonly stretches: readonly Stretch[];
  /** Cardio a day; absent: as it goes on now, and more only where food alone does not reach. */
  readonly cardioKcal?: KilocaloriesPerDay;
}

/** One week's end on the planned line. */
export interface LinePoint {
  readonly date: string;
  readonly massKg: Kilograms;
  readonly fatKg: Kilograms;
  readonly bodyFatPercent: Percent;
}

/** A course from today to the show, and what it costs. */
export interface LaidCourse {
  readonly feasible: boolean;
  readonly energyKcal: KilocaloriesPerDay;
  readonly cardioKcal: KilocaloriesPerDay;
  readonly probability: number;
  readonly lossPercentPerWeek: Percent;
  readonly steepestPercentPerWeek: Percent;
  /** Fat-free tissue the course costs; below zero is a gain. */
  readonly leanLostKg: Spread;
  readonly energyAvailability: number;
  readonly line: readonly LinePoint[];
  /** Where it is not feasible: the first show date, a week apart, that it would be feasible for. */
  readonly soonest: string | undefined;
  /** The limit that stands in the way. */
  readonly heldBackBy: LimitReason | undefined;
  readonly why: readonly string[];
}

const MOST_WEEKS_LATER = 26;
/** The chance a course is laid for: more room than a correction takes, for the weeks will bring their own. */
const LAID_FOR = 0.7;

/**
 * Works backwards from the show (CRS-12): the highest intake that brings the target within reach with a good chance,
 * with the stretches in it and inside every limit; cardio grows only where food alone does not reach. Where nothing
 * does, the lowest course inside the limits stands, with the date it would be enough for.
 */
export function layCourse(course: OpenCourse, wish: CourseWish): LaidCourse {
  const present = wish.cardioKcal ?? roundTo(course.future.goesOn.cardioKcal, 0);
  const most = stepAtOrBelow(cardioCeiling(lastWeekCardio(course), course.setting.own).present, STEP_KCAL);
  const first = search(course, wish, present);
  // At the fastest pace allowed more cardio only buys food; it does not land sooner.
  if (first.reached || first.paced || wish.cardioKcal !== undefined || most <= present)
    return conclude(course, wish, first);
  for (let cardio = present + 2 * STEP_KCAL; ; cardio += 2 * STEP_KCAL) {
    const found = search(course, wish, Math.min(cardio, most));
    if (found.reached || cardio >= most) return conclude(course, wish, found);
  }
}

interface Level {
  readonly energyKcal: KilocaloriesPerDay;
  readonly cardioKcal: KilocaloriesPerDay;
  readonly reached: boolean;
  /** The pace, not the intake, is what holds it back. */
  readonly paced: boolean;
  readonly heldBackBy: LimitReason | undefined;
}

/** The highest step of intake that reaches the aim, or the lowest that the limits allow. */
function search(course: OpenCourse, wish: CourseWish, cardioKcal: KilocaloriesPerDay): Level {
  const floor = energyFloorAt(course, cardioKcal);
  const pace = lossRateCeiling(course.setting.own);
  const lowest = stepAtOrAbove(floor.present, STEP_KCAL);
  const highest = Math.max(lowest, stepAtOrAbove(course.balanceKcal + cardioKcal + 500, STEP_KCAL));
  const at = (energyKcal: number) =>
    judgeDays(course, daysAt(course, wish, energyKcal, cardioKcal, course.future.days.length), QUICK_PATHS);
  const allowed = (energyKcal: number) => keeps(pace, at(energyKcal).steepestPercentPerWeek);
  const slowest = allowed(lowest) ? lowest : leastStep(lowest, highest, allowed);
  const paced = slowest > lowest;
  const heldBackBy = paced ? pace.tightest : floor.tightest;
  if (at(slowest).probability < LAID_FOR)
    return { energyKcal: slowest, cardioKcal, reached: false, paced, heldBackBy };
  const tooMuch = leastStep(slowest, highest, (energyKcal) => at(energyKcal).probability < LAID_FOR);
  const energyKcal = at(highest).probability >= LAID_FOR ? highest : Math.max(slowest, tooMuch - STEP_KCAL);
  return { energyKcal, cardioKcal, reached: true, paced, heldBackBy: undefined };
}

/** Least multiple of the step from which on a statement holds; `high` where it holds nowhere below. */
function leastStep(low: number, high: number, holds: (value: number) => boolean): number {
  let [below, above] = [low, high];
  while (above - below > STEP_KCAL) {
    const middle = stepAtOrAbove((below + above) / 2, STEP_KCAL);
    const at = middle >= above ? above - STEP_KCAL : middle;
    if (holds(at)) above = at;
    else below = at;
  }
  return above;
}

/** So many days at one level of intake and cardio, stretches in them. */
function daysAt(
  course: OpenCourse,
  wish: CourseWish,
  energyKcal: KilocaloriesPerDay,
  cardioKcal: KilocaloriesPerDay,
  count: number,
): readonly FutureDay[] {
  const { goesOn } = course.future;
  const change = energyKcal - goesOn.energyKcal;
  const carbohydrateKcal = Math.max(0, 4 * goesOn.carbohydrateG + course.carbohydrateShare * change);
  const days = Array.from({ length: count }, (_, d) => {
    const known = course.future.days[d];
    return {
      date: addDays(course.asOf, d + 1),
      energyKcal,
      carbohydrateKcal,
      sodiumMg: goesOn.sodiumMg,
      cardioKcal,
      basis: 'planned' as const,
      cycleShare: known?.cycleShare ?? 0,
      creatineShare: known?.creatineShare ?? 0,
    };
  });
  return withStretches(days, wish.stretches, course.balanceKcal);
}

function conclude(course: OpenCourse, wish: CourseWish, level: Level): LaidCourse {
  const { energyKcal, cardioKcal, reached, heldBackBy } = level;
  const count = course.future.days.length;
  const judged = judgeDays(course, daysAt(course, wish, energyKcal, cardioKcal, count), FULL_PATHS);
  const soonest = reached ? undefined : soonestShow(course, wish, level);
  const start = lookOf(judged.run.tissueKg, 0, FULL_PATHS);
  const lean = (look: number, path: number) =>
    (judged.run.tissueKg[look * FULL_PATHS + path] ?? 0) - (judged.run.fatKg[look * FULL_PATHS + path] ?? 0);
  const last = judged.run.looks.length - 1;
  const leanLostKg = spreadOf(
    start.map((_, path) => lean(0, path) - lean(last, path)),
    2,
  );
  const leanMass = course.startMassKg - course.startFatKg;
  const energyAvailability = roundTo((energyKcal - cardioKcal) / leanMass, 1);
  const laid = {
    feasible: reached,
    energyKcal,
    cardioKcal,
    probability: roundTo(judged.probability, 3),
    lossPercentPerWeek: roundTo(judged.lossPercentPerWeek, 2),
    steepestPercentPerWeek: roundTo(judged.steepestPercentPerWeek, 2),
    leanLostKg,
    energyAvailability,
    line: lineOf(course, judged),
    soonest,
    heldBackBy,
  };
  return { ...laid, why: wordsOf(course, laid) };
}

/** The first show a whole number of weeks later that the lowest allowed course is enough for. */
function soonestShow(course: OpenCourse, wish: CourseWish, level: Level): string | undefined {
  const count = course.future.days.length;
  for (let week = 1; week <= MOST_WEEKS_LATER; week++) {
    const days = daysAt(course, wish, level.energyKcal, level.cardioKcal, count + 7 * week);
    if (judgeDays(course, days, QUICK_PATHS).probability >= LAID_FOR)
      return addDays(course.setting.show, 7 * week);
  }
  return undefined;
}

function lineOf(course: OpenCourse, { run }: Judgement): readonly LinePoint[] {
  return run.looks.map((index, look) => {
    const massKg = meanOf(lookOf(run.massKg, look, run.paths));
    const fatKg = meanOf(lookOf(run.fatKg, look, run.paths));
    return {
      date: addDays(course.asOf, index + 1),
      massKg: roundTo(massKg, 2),
      fatKg: roundTo(fatKg, 2),
      bodyFatPercent: roundTo((100 * fatKg) / massKg, 2),
    };
  });
}

function wordsOf(course: OpenCourse, laid: Omit<LaidCourse, 'why'>): readonly string[] {
  const target = targetWords(course.setting.target);
  const level = `${laid.energyKcal} kcal and ${laid.cardioKcal} kcal of cardio a day`;
  const pace = `It loses ${laid.lossPercentPerWeek} % of body mass a week, ${laid.steepestPercentPerWeek} % in the steepest, and costs about ${laid.leanLostKg.mean} kg of lean tissue (5 to 95 %: ${laid.leanLostKg.q05} kg to ${laid.leanLostKg.q95} kg).`;
  const availability = `Energy availability is about ${laid.energyAvailability} kcal per kg of fat-free mass, without what lifting costs.`;
  if (laid.feasible)
    return [
      `${level} reach ${target} on ${course.setting.show} with ${percentWords(laid.probability)}.`,
      pace,
      availability,
    ];
  return [
    `Inside the limits ${target} is not in reach by ${course.setting.show}: ${level} give ${percentWords(laid.probability)}.`,
    ...(laid.heldBackBy ? [laid.heldBackBy.words] : []),
    laid.soonest === undefined
      ? `Not even ${MOST_WEEKS_LATER} weeks more would be enough: a milder target is needed.`
      : `The same course would be enough for a show on ${laid.soonest}.`,
    pace,
    availability,
  ];
}
