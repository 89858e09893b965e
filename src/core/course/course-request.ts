import * as v from 'valibot';
import { ownLimits } from '#core/limits/own-limits.ts';
import { date, integerIn, numberIn } from '#core/problems/shapes.ts';
import { estimateRequest } from '#core/body/estimate-request.ts';

const target = v.strictObject({
  bodyFatPercent: v.optional(v.strictObject({ max: numberIn(0.5, 80, 'percent') })),
  massKg: v.optional(
    v.strictObject({
      max: v.optional(numberIn(30, 250, 'kilograms')),
      min: v.optional(numberIn(30, 250, 'kilograms')),
    }),
  ),
});

/** One line of `stagewright course`: all of `estimate`, the show, the target. */
export const courseRequest = v.strictObject({
  ...estimateRequest.entries,
  show: v.strictObject({ date }),
  target,
  limits: v.optional(ownLimits, {}),
  seed: v.optional(integerIn(0, 2 ** 32 - 1, 'a whole number'), 1),
});

export type CourseRequest = v.InferOutput<typeof courseRequest>;
