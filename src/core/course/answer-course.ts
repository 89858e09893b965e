import { type Caution, cautionsFor } from '#core/limits/caution.ts';
import type { OwnLimits } from '#core/limits/own-limits.ts';
import { publishedLimits } from '#core/limits/published-limits.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { CourseAnswer, CorrectionAnswer } from './course-answer.ts';
import { type Decision, decide } from './decide.ts';
import { judge, type Judgement, lookOf } from './judgement.ts';
import { FULL_PATHS, type OpenCourse } from './open-course.ts';
import { quantileOf, spreadOf } from './quantiles.ts';
import { bodyFatFloor } from '#core/limits/body-fat-floor.ts';
import { changeWords, percentWords, spanWords, targetWords } from './words.ts';

/** Where the plan lands, how likely that meets the target, and what to do about it (CRS-01). */
export function answerCourse(course: OpenCourse): CourseAnswer {
  const now = judge(course, {}, FULL_PATHS);
  const decision = decide(course, now, bodyFatWidth(now));
  return {
    arrival: arrivalOf(now),
    probability: roundTo(now.probability, 4),
    verdict: decision.verdict,
    corrections: decision.corrections.map((judged) => correctionOf(course, now, judged)),
    cautions: cautionsOf(course, now),
    why: whyOf(course, now, decision),
  };
}

export function arrivalOf({ run }: Judgement): CourseAnswer['arrival'] {
  const look = run.looks.length - 1;
  const mass = lookOf(run.massKg, look, run.paths);
  const fat = lookOf(run.fatKg, look, run.paths);
  return {
    massKg: spreadOf(mass, 3),
    fatKg: spreadOf(fat, 3),
    bodyFatPercent: spreadOf(percentOf(mass, fat), 3),
  };
}

/** Width of the 90 % interval of body fat today, points of percent. */
function bodyFatWidth({ run }: Judgement): number {
  const percent = percentOf(lookOf(run.massKg, 0, run.paths), lookOf(run.fatKg, 0, run.paths)).sort();
  return quantileOf(percent, 0.95) - quantileOf(percent, 0.05);
}

function percentOf(mass: Float64Array, fat: Float64Array): Float64Array {
  return mass.map((value, path) => (100 * (fat[path] ?? 0)) / value);
}

function correctionOf(course: OpenCourse, now: Judgement, judged: Judgement): CorrectionAnswer {
  const energyKcal = roundTo(judged.energyKcal, 0);
  const cardioKcal = roundTo(judged.cardioKcal, 0);
  return {
    change: judged.change,
    from: course.from,
    probabilityAfter: roundTo(judged.probability, 4),
    lossPercentPerWeek: roundTo(judged.lossPercentPerWeek, 3),
    why: [
      `${sentenceCase(changeWords(judged.change))} moves the chance from ${percentWords(now.probability)} to ${percentWords(judged.probability)}.`,
      `Then ${energyKcal} kcal and ${cardioKcal} kcal of cardio a day on average, and ${roundTo(judged.lossPercentPerWeek, 2)} % of body mass a week, ${roundTo(judged.steepestPercentPerWeek, 2)} % in the steepest.`,
    ],
  };
}

/** Limits that the present habits or the present course run against. */
function cautionsOf(course: OpenCourse, now: Judgement): Caution[] {
  const { sex, own, target } = course.setting;
  const goes = course.future.goesOn;
  const known = course.habit !== undefined || course.future.planned > 0;
  const wanted = target.bodyFatPercent?.max;
  const cautions = cautionsFor(
    {
      sex,
      massKg: course.startMassKg,
      fatKg: course.startFatKg,
      ...(known
        ? {
            energyKcal: course.future.days.length > 0 ? now.energyKcal : goes.energyKcal,
            exerciseKcal: course.future.days.length > 0 ? now.cardioKcal : goes.cardioKcal,
            proteinG: goes.proteinG,
            fatG: goes.fatG,
            lossPercentPerWeek: now.steepestPercentPerWeek,
            deficitKcal: deficitOf(now, course),
          }
        : {}),
      ...(wanted === undefined ? {} : { targetBodyFatPercent: wanted }),
    },
    own,
  );
  return [...cautions, ...landingCaution(course, now)];
}

function landingCaution(course: OpenCourse, now: Judgement): Caution[] {
  const floor = bodyFatFloor(course.setting.sex, course.setting.own);
  const reason = floor.tightest;
  if (reason === undefined || now.bodyFatPercent >= floor.present) return [];
  return [
    {
      limit: reason.limit,
      value: reason.value,
      source: reason.source,
      words: `The present course lands at ${roundTo(now.bodyFatPercent, 1)} % body fat. ${reason.words}`,
    },
  ];
}

/** Energy drawn from the stores each day of the first week, at 9441 kcal per kg of fat and 1816 of lean (hall-2011). */
function deficitOf({ run }: Judgement, course: OpenCourse): number {
  const week = run.looks[1];
  if (week === undefined) return 0;
  const mean = (values: Float64Array, look: number) =>
    lookOf(values, look, run.paths).reduce((sum, value) => sum + value, 0) / run.paths;
  const fat = mean(run.fatKg, 0) - mean(run.fatKg, 1);
  const lean = mean(run.tissueKg, 0) - mean(run.tissueKg, 1) - fat;
  return (9441 * fat + 1816 * lean) / Math.max(1, week + 1 - course.earlyShare);
}

function whyOf(course: OpenCourse, now: Judgement, decision: Decision): string[] {
  const { show, target, own, seed } = course.setting;
  const { massKg, bodyFatPercent } = arrivalOf(now);
  const days = daysBetween(course.today, show);
  const landing = `On ${show}, ${spanWords(days)} after ${course.today}, the course lands at ${roundTo(massKg.mean, 1)} kg (5 to 95 %: ${roundTo(massKg.q05, 1)} kg to ${roundTo(massKg.q95, 1)} kg) with ${roundTo(bodyFatPercent.mean, 1)} % body fat (${roundTo(bodyFatPercent.q05, 1)} to ${roundTo(bodyFatPercent.q95, 1)}).`;
  return [
    landing,
    `The chance of ${targetWords(target)} is ${percentWords(now.probability)}, counted over ${FULL_PATHS} paths with seed ${seed}.`,
    ...decision.why,
    ...(days > 0 ? [goesOnWords(course), paceWords(now)] : []),
    ...looserWords(own),
    ...(course.setting.doubts ?? []),
  ];
}

function goesOnWords(course: OpenCourse): string {
  const { goesOn, planned, days } = course.future;
  if (planned === days.length) return plannedWords(course);
  const level = `${roundTo(goesOn.energyKcal, 0)} kcal and ${roundTo(goesOn.cardioKcal, 0)} kcal of cardio a day`;
  const open = days.length - planned;
  const rest = `${open === 1 ? 'The one day that is not planned goes' : `The ${open} days that are not planned go`} on at ${level}`;
  if (goesOn.loggedDays === 0)
    return `${rest}: nothing was logged, so the body is taken to eat what it spends.`;
  const share = roundTo(100 * course.adherence.weekSd, 0);
  return `${rest}, the average of ${goesOn.loggedDays} days, with weeks that stray by ${share} % about it.`;
}

function plannedWords({ setting, adherence }: OpenCourse): string {
  if (!setting.kept) return 'Every day to the show is planned, and taken as it stands.';
  const share = roundTo(100 * adherence.share, 0);
  return `Every day to the show is planned, and taken to be kept as of late: at ${share} % of the plan, with weeks that stray by ${roundTo(100 * adherence.weekSd, 0)} % about it.`;
}

function paceWords(now: Judgement): string {
  const way = now.lossPercentPerWeek >= 0 ? 'loses' : 'gains';
  return `It ${way} ${roundTo(Math.abs(now.lossPercentPerWeek), 2)} % of body mass in tissue a week on average.`;
}

/** An own limit that is looser than the published one changes nothing, and that is said (LIM-02). */
function looserWords(own: OwnLimits): string[] {
  const own_ = own.lossPercentPerWeek?.max;
  const max = publishedLimits.lossRate.maxPercentPerWeek;
  if (own_ === undefined || own_ <= max) return [];
  return [
    `Your own limit of ${own_} % a week is looser than the ${max} % that stands here, and changes nothing.`,
  ];
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
