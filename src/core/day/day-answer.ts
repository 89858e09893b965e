import * as v from 'valibot';
import { nutrientsUpTo } from '../problems/shapes.ts';

const totals = nutrientsUpTo(1e6, 1e5, 1e7);
const macros = v.strictObject({ proteinG: v.number(), carbohydrateG: v.number(), fatG: v.number() });

/** One answer of `stagewright day`. */
export const dayAnswer = v.strictObject({
  status: v.picklist(['optimal', 'within-gap', 'infeasible']),
  /** Proven: (cost - lower bound) / cost. */
  gap: v.number(),
  /** kcal of mistake of the grams answered. */
  cost: v.number(),
  meals: v.array(
    v.strictObject({
      at: v.string(),
      role: v.picklist(['before-training', 'after-training', 'away']),
      target: macros,
      items: v.array(v.strictObject({ food: v.string(), grams: v.number() })),
      totals,
    }),
  ),
  /** Eaten and planned. */
  totals,
  /** Totals minus target. */
  deviation: macros,
  solveMs: v.number(),
  why: v.array(v.string()),
});

export type DayAnswer = v.InferOutput<typeof dayAnswer>;
export type AnsweredMeal = DayAnswer['meals'][number];
