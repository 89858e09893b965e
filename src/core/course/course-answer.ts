import * as v from 'valibot';
import { date, numberIn, text } from '#core/problems/shapes.ts';

const finite = v.pipe(v.number(), v.finite());
const spread = v.strictObject({ mean: finite, q05: finite, q95: finite });
const why = v.array(text(600));

const correction = v.strictObject({
  change: v.strictObject({ energyKcal: v.optional(finite), cardioKcal: v.optional(finite) }),
  from: date,
  probabilityAfter: numberIn(0, 1),
  lossPercentPerWeek: finite,
  why,
});

export const courseAnswer = v.strictObject({
  arrival: v.strictObject({ massKg: spread, fatKg: spread, bodyFatPercent: spread }),
  probability: numberIn(0, 1),
  verdict: v.picklist(['on course', 'behind', 'ahead', 'out of reach', 'too little evidence']),
  corrections: v.array(correction),
  cautions: v.array(v.strictObject({ limit: text(60), value: finite, source: text(60), words: text(600) })),
  why,
});

export type CourseAnswer = v.InferOutput<typeof courseAnswer>;
export type CorrectionAnswer = v.InferOutput<typeof correction>;
