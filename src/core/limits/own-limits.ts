import * as v from 'valibot';
import { numberIn } from '../problems/shapes.ts';
import type { Limit, LimitReason } from './limit.ts';
import { narrow } from './limit.ts';

/**
 * Limits the athlete, a coach or a clinician sets. They are inputs to a limit, not the limit: they narrow what the
 * published figures allow and never widen it (LIM-02).
 */
export const ownLimits = v.strictObject({
  lossPercentPerWeek: v.optional(v.strictObject({ max: numberIn(0.05, 5, 'percent of body mass a week') })),
  energyKcal: v.optional(v.strictObject({ min: numberIn(0, 10_000, 'kilocalories a day') })),
  cardioKcal: v.optional(v.strictObject({ max: numberIn(0, 5000, 'kilocalories a day') })),
  energyAvailability: v.optional(
    v.strictObject({ min: numberIn(0, 60, 'kilocalories per kilogram of fat-free mass a day') }),
  ),
  bodyFatPercent: v.optional(v.strictObject({ min: numberIn(2, 50, 'percent') })),
  proteinG: v.optional(v.strictObject({ min: numberIn(0, 600, 'grams a day') })),
  fatG: v.optional(v.strictObject({ min: numberIn(0, 300, 'grams a day') })),
});

export type OwnLimits = v.InferOutput<typeof ownLimits>;

/** Lets an own limit speak where there is one; `sentence` is given the value and says it whole. */
export function narrowByOwn(
  limit: Limit,
  value: number | undefined,
  sentence: (value: number) => string,
): Limit {
  if (value === undefined) return limit;
  return narrow(limit, {
    limit: 'own',
    value,
    source: 'common-practice',
    words: sentence(value),
  } satisfies LimitReason);
}
