import type { KilocaloriesPerDay } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { narrow, openLimit, stepAtOrBelow, type Limit } from './limit.ts';
import { narrowByOwn, type OwnLimits } from './own-limits.ts';
import { publishedLimits } from './published-limits.ts';

/**
 * Most cardio a day, net kcal on average over the coming week, given last week's average (LIM-16). Growth by a share,
 * or by a fixed step from a small dose, whichever is more.
 */
export function cardioCeiling(lastWeekKcalPerDay: KilocaloriesPerDay, own: OwnLimits = {}): Limit {
  const { limit, maxShare, source, freeStepKcalPerDay, stepSource } = publishedLimits.cardioGrowth;
  const byShare = lastWeekKcalPerDay * (1 + maxShare);
  const byStep = lastWeekKcalPerDay + freeStepKcalPerDay;
  const value = Math.max(byShare, byStep);
  const growth = byShare >= byStep ? `${100 * maxShare} %` : `${freeStepKcalPerDay} kcal a day`;
  const ceiling = narrow(openLimit('Cardio', 'kcal', 'ceiling'), {
    limit,
    value,
    source: byShare >= byStep ? source : stepSource,
    words: `No more than ${stepAtOrBelow(value, 1)} kcal of cardio a day next week: last week had ${roundTo(lastWeekKcalPerDay, 0)}, and a week grows by ${growth} at most.`,
  });
  return narrowByOwn(
    ceiling,
    own.cardioKcal?.max,
    (kcal) => `No more than ${kcal} kcal of cardio a day: your own limit.`,
  );
}
