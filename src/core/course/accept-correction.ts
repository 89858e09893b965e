import { singleDayFloor } from '#core/limits/daily-energy-floor.ts';
import { fatFloor } from '#core/limits/macro-floors.ts';
import { stepAtOrAbove } from '#core/limits/limit.ts';
import type { OwnLimits } from '#core/limits/own-limits.ts';
import type { Sex } from '#core/limits/published-limits.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { Grams, KilocaloriesPerDay, Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Change } from './change.ts';

type TargetSet = DataOf<'target-set'>;
type CorrectionAccepted = DataOf<'correction-accepted'>;

export interface Acceptance {
  readonly change: Change;
  readonly from: string;
  readonly probabilityBefore: number;
  readonly probabilityAfter: number;
  readonly why: readonly string[];
  /** Which macro gives or takes; absent: carbohydrate, and fat once carbohydrate would fall under 50 g. */
  readonly macro?: 'carbohydrate' | 'fat' | 'both';
  /** Which days change; the week's average change stays the same. Absent: every day. */
  readonly days?: 'every' | 'training' | 'rest';
  /** The targets that stand now, one for each kind of day, and how many days a week each has. */
  readonly standing: readonly { readonly target: TargetSet; readonly daysAWeek: number }[];
  readonly sex: Sex;
  readonly massKg: Kilograms;
  readonly leanKg: Kilograms;
  readonly own?: OwnLimits;
}

export interface Accepted {
  readonly correction: CorrectionAccepted;
  /** New targets from the day on, for every kind of day that changes. */
  readonly targets: readonly TargetSet[];
}

/** Carbohydrate below which the next gram comes from fat. Common practice, no source. */
const LEAST_CARBOHYDRATE_G: Grams = 50;

/**
 * Turns an accepted correction into the coming days' targets (CRS-16): protein stays, each day keeps its floors, and
 * where only training or only rest days change, they change by more so that the week's average is the correction.
 */
export function acceptCorrection(acceptance: Acceptance): Outcome<Accepted> {
  const { change, from, days = 'every', standing } = acceptance;
  const week = standing.reduce((sum, { daysAWeek }) => sum + daysAWeek, 0);
  const changing = standing.filter(({ target }) => days === 'every' || target.dayKind === days);
  const changingDays = changing.reduce((sum, { daysAWeek }) => sum + daysAWeek, 0);
  if (changingDays === 0)
    return refused(
      'course/no-such-days',
      'days',
      `No ${days} day has a target of its own, so the correction has no day to act on.`,
      'Let it act on every day, or set targets by kind of day first.',
    );
  const perDay = ((change.energyKcal ?? 0) * week) / changingDays;
  const targets: TargetSet[] = [];
  for (const { target } of standing) {
    const changes = changing.some((one) => one.target === target);
    if (!changes && change.cardioKcal === undefined) continue;
    const moved = movedBy(acceptance, target, changes ? perDay : 0);
    if (!moved.ok) return moved;
    targets.push(moved.value);
  }
  return answered({
    correction: {
      from,
      ...change,
      macro: acceptance.macro ?? 'carbohydrate',
      days,
      probabilityBefore: roundTo(acceptance.probabilityBefore, 3),
      probabilityAfter: roundTo(acceptance.probabilityAfter, 3),
      why: [...acceptance.why],
    },
    targets,
  });
}

function movedBy(
  acceptance: Acceptance,
  target: TargetSet,
  energyKcal: KilocaloriesPerDay,
): Outcome<TargetSet> {
  const { sex, massKg, leanKg, own = {}, macro = 'carbohydrate', change, from } = acceptance;
  const before = 4 * target.proteinG + 4 * target.carbohydrateG + 9 * target.fatG;
  const after = before + energyKcal;
  const floor = singleDayFloor({ sex, massKg, leanKg, own });
  if (energyKcal < 0 && after < floor.present)
    return refused(
      'course/day-below-floor',
      target.dayKind,
      `${target.dayKind === 'every' ? 'A' : `A ${target.dayKind}`} day would come to ${roundTo(after, 0)} kcal. ${floor.tightest?.words ?? ''}`,
      'Spread the correction over more days, or take part of it as cardio.',
    );
  const leastFatG = Math.min(target.fatG, stepAtOrAbove(fatFloor(massKg, own, after).present, 1));
  const byFat = { carbohydrate: 0, fat: 1, both: 0.4 }[macro] * energyKcal;
  const fatWanted = target.fatG + byFat / 9;
  const carbohydrateWanted = target.carbohydrateG + (energyKcal - byFat) / 4;
  // What one macro cannot give, the other does.
  const fatG = Math.max(
    leastFatG,
    Math.round(fatWanted - Math.max(0, (4 * (leastCarbohydrate(target) - carbohydrateWanted)) / 9)),
  );
  const carbohydrateG = Math.round((after - 4 * target.proteinG - 9 * fatG) / 4);
  if (carbohydrateG < 0)
    return refused(
      'course/no-room-for-carbohydrate',
      target.dayKind,
      `${roundTo(after, 0)} kcal do not hold ${target.proteinG} g of protein and ${fatG} g of fat.`,
      'Spread the correction over more days, or take part of it as cardio.',
    );
  const { until: _until, ...rest } = target;
  return answered({
    ...rest,
    from,
    basis: 'course',
    carbohydrateG,
    fatG,
    ...cardioAfter(target, change.cardioKcal),
  });
}

function leastCarbohydrate(target: TargetSet): Grams {
  return Math.min(target.carbohydrateG, LEAST_CARBOHYDRATE_G);
}

function cardioAfter(target: TargetSet, change: number | undefined): { cardioKcal?: number } {
  if (change === undefined) return {};
  return { cardioKcal: Math.max(0, Math.round((target.cardioKcal ?? 0) + change)) };
}
