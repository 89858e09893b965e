import { cardioCeiling } from '#core/limits/cardio-ceiling.ts';
import { type LimitReason, stepAtOrBelow } from '#core/limits/limit.ts';
import type { KilocaloriesPerDay } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { type Change, sizeOf } from './change.ts';
import { barrierTo, judge, type Judgement, lastWeekCardio } from './judgement.ts';
import { FULL_PATHS, type OpenCourse, QUICK_PATHS } from './open-course.ts';

/** Food and cardio move in steps that can be weighed out and walked. */
export const STEP_KCAL: KilocaloriesPerDay = 25;
/** Steps looked through; beyond 600 kcal a day no single correction is meant seriously. */
const MOST_STEPS = 24;
/** Steps of the coarse look before the fine one. */
const COARSE = 4;
/**
 * The chance a correction aims at: back on course with a little room. Most of the doubt is about today's body and will
 * be settled by the weeks; food is not cut for doubt. Then the least at which a partial correction, held back by a
 * limit, is worth asking for.
 */
export const AIM = 0.6;
const WORTHWHILE = { probability: 0.4, gain: 0.1 } as const;

/** A way to move the course by so many kcal a day: below zero asks more of the athlete, above gives back. */
type Family = (kcal: KilocaloriesPerDay) => Change;

/** Food; cardio; both in equal parts, cardio up to what a week may grow, or down to none, and food the rest. */
function familiesOf(course: OpenCourse): readonly Family[] {
  const present = course.future.goesOn.cardioKcal;
  const ceiling = cardioCeiling(lastWeekCardio(course), course.setting.own).present;
  const growth = Math.max(0, stepAtOrBelow(ceiling - present, STEP_KCAL));
  const most = stepAtOrBelow(present, STEP_KCAL);
  return [
    (kcal) => ({ energyKcal: kcal }),
    (kcal) => ({ cardioKcal: -kcal }),
    (kcal) => ({ energyKcal: kcal, cardioKcal: kcal < 0 ? Math.min(-kcal, growth) : -Math.min(kcal, most) }),
  ];
}

export interface CorrectionSearch {
  /** What is offered, smallest first; each inside every limit and judged over all paths. */
  readonly offered: readonly Judgement[];
  /** Limits that held a way back, each once. */
  readonly heldBackBy: readonly LimitReason[];
  /** The best chance found inside the limits. */
  readonly best: Judgement | undefined;
}

/**
 * The smallest changes of food, of cardio, and of both that bring the chance to the aim (CRS-08). Looks coarsely, then
 * finely, over a share of the paths, and judges what it offers over all of them. A way that a limit holds back is
 * offered up to the limit where that helps.
 */
export function searchCorrections(course: OpenCourse, now: Judgement, direction: -1 | 1): CorrectionSearch {
  const offered: Judgement[] = [];
  const heldBackBy: LimitReason[] = [];
  let best: Judgement | undefined;
  for (const family of familiesOf(course)) {
    const found = searchFamily(course, (steps) => family(direction * steps * STEP_KCAL));
    if (found.barrier && !heldBackBy.some((reason) => reason.limit === found.barrier?.limit))
      heldBackBy.push(found.barrier);
    if (!found.judged) continue;
    if (best === undefined || found.judged.probability > best.probability) best = found.judged;
    const { probability } = found.judged;
    const helps = probability >= WORTHWHILE.probability && probability >= now.probability + WORTHWHILE.gain;
    if (helps) offered.push(found.judged);
  }
  // Where cardio has no room, both is food alone and would stand there twice.
  const distinct = offered.filter(
    (one, k) => offered.findIndex((other) => sameChange(one.change, other.change)) === k,
  );
  distinct.sort((a, b) => sizeOf(a.change) - sizeOf(b.change) || b.probability - a.probability);
  return { offered: distinct, heldBackBy, best };
}

function sameChange(a: Change, b: Change): boolean {
  return (a.energyKcal ?? 0) === (b.energyKcal ?? 0) && (a.cardioKcal ?? 0) === (b.cardioKcal ?? 0);
}

interface Found {
  readonly judged: Judgement | undefined;
  readonly barrier: LimitReason | undefined;
}

function searchFamily(course: OpenCourse, change: (steps: number) => Change): Found {
  const tried = new Map<number, Judgement>();
  const at = (steps: number): Judgement => {
    const known = tried.get(steps);
    if (known) return known;
    const judged = judge(course, change(steps), QUICK_PATHS);
    tried.set(steps, judged);
    return judged;
  };
  const stops = (steps: number) => barrierTo(course, at(steps)) ?? emptied(course, change(steps));
  let low = 0;
  let high = 0;
  let barrier: LimitReason | undefined;
  for (let steps = COARSE; steps <= MOST_STEPS && barrier === undefined; steps += COARSE) {
    low = high;
    high = steps;
    barrier = stops(steps);
    if (barrier === undefined && at(steps).probability >= AIM) break;
  }
  // Finely between the last two coarse looks: the first step that reaches the aim, or the last that no limit stops.
  let chosen = low;
  for (let steps = low + 1; steps <= high; steps++) {
    const stop = stops(steps);
    if (stop !== undefined) {
      barrier = stop;
      break;
    }
    chosen = steps;
    barrier = undefined;
    if (at(steps).probability >= AIM) break;
  }
  return { judged: chosen === 0 ? undefined : confirmed(course, change, chosen), barrier };
}

/** Judged over all paths; a step or two further where the share of the paths had flattered it. */
function confirmed(course: OpenCourse, change: (steps: number) => Change, steps: number): Judgement {
  const judged = judge(course, change(steps), FULL_PATHS);
  if (judged.probability >= AIM || judged.probability < AIM - 0.05) return judged;
  const further = judge(course, change(steps + 1), FULL_PATHS);
  return barrierTo(course, further) === undefined && further.probability > judged.probability
    ? further
    : judged;
}

/** The chance that must be left after giving something back. */
const KEPT = 0.8;
/** Most that is given back at once, 300 kcal a day: the weeks will show whether there is more. */
const MOST_EASING_STEPS = 12;

/**
 * What can be given back, food, cardio or both, so that the target is still met in four cases of five and the landing
 * stays at or above the body-fat floor; the smallest first (CRS-09). Under two steps it is not worth a word.
 */
export function searchEasing(course: OpenCourse): readonly Judgement[] {
  const eased = familiesOf(course).flatMap((family) => {
    let steps = 0;
    for (let next = COARSE / 2; next <= MOST_EASING_STEPS; next += COARSE / 2) {
      const change = family(next * STEP_KCAL);
      if (emptied(course, change) || judge(course, change, QUICK_PATHS).probability < KEPT) break;
      steps = next;
    }
    const judged = steps === 0 ? undefined : judge(course, family(steps * STEP_KCAL), FULL_PATHS);
    return judged ? [judged] : [];
  });
  return eased
    .filter((one, k) => eased.findIndex((other) => sameChange(one.change, other.change)) === k)
    .sort((a, b) => sizeOf(a.change) - sizeOf(b.change));
}

/** What the target would take if no limit stood in the way, in food alone: said, never planned (CRS-09). */
export function whatItWouldTake(course: OpenCourse): readonly string[] {
  if (course.future.days.length === 0) return ['No day is left to change anything.'];
  const most = 60;
  const at = (steps: number) => judge(course, { energyKcal: -steps * STEP_KCAL }, QUICK_PATHS);
  if (at(most).probability < AIM)
    return [`Not even ${most * STEP_KCAL} kcal less food a day would reach it in time.`];
  let low = 0;
  let high = most;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(middle).probability >= AIM) high = middle;
    else low = middle;
  }
  const judged = at(high);
  return [
    `It would take about ${high * STEP_KCAL} kcal less food a day, ${roundTo(judged.energyKcal, 0)} kcal in all, and a loss of up to ${roundTo(judged.steepestPercentPerWeek, 2)} % of body mass a week: that is not planned here.`,
  ];
}

/** Cardio cannot be taken back below none. */
function emptied(course: OpenCourse, { cardioKcal = 0 }: Change): LimitReason | undefined {
  const most = course.future.goesOn.cardioKcal;
  if (cardioKcal >= 0 || -cardioKcal <= most) return undefined;
  return {
    limit: 'cardio',
    value: 0,
    source: 'common-practice',
    words: 'There is no more cardio to take back.',
  };
}
