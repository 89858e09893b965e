import * as v from 'valibot';
import { nutrientsUpTo, numberIn } from '../problems/shapes.ts';

const nutrientsOfServing = nutrientsUpTo(20_000, 5000, 200_000);

/** One line of `stagewright label`. */
export const labelRequest = v.strictObject({
  rules: v.picklist(['us', 'eu'], '"us" or "eu"'),
  servingG: numberIn(0.1, 5000, 'grams'),
  /** As printed for one serving. */
  nutrients: nutrientsOfServing,
});

const interval = v.strictTuple([v.number(), v.number()]);

export const labelAnswer = v.strictObject({
  range: v.strictObject({
    energyKcal: interval,
    proteinG: interval,
    fatG: interval,
    carbohydrateG: interval,
    fibreG: v.optional(interval),
    sugarsG: v.optional(interval),
    saturatedFatG: v.optional(interval),
    sodiumMg: v.optional(interval),
    potassiumMg: v.optional(interval),
  }),
  energyFromMacros: interval,
  consistent: v.boolean(),
  per100g: nutrientsUpTo(1e9, 1e6, 1e9),
  why: v.array(v.string()),
});

export type LabelRequest = v.InferOutput<typeof labelRequest>;
export type LabelAnswer = v.InferOutput<typeof labelAnswer>;
