import * as v from 'valibot';
import { date, integerIn, numberIn, text } from '#core/problems/shapes.ts';

const intake = v.strictObject({
  energyKcal: numberIn(0, 20_000, 'kilocalories'),
  proteinG: numberIn(0, 2_000, 'grams'),
  carbohydrateG: numberIn(0, 4_000, 'grams'),
  fatG: numberIn(0, 1_500, 'grams'),
  sodiumMg: v.optional(numberIn(0, 80_000, 'milligrams')),
});

const bodyFat = v.strictObject({
  percent: numberIn(1, 70, 'percent'),
  method: text(60, 'a method such as "skinfold", "dxa", "tape" or "impedance"'),
});

/** One day of the log or of the plan. Absent is not known, never zero. */
export const estimateDay = v.strictObject({
  date,
  weightKg: v.optional(numberIn(25, 350, 'kilograms')),
  intake: v.optional(intake),
  /** The person says that this is all that was eaten, however little: a fast is then a fast. */
  confirmed: v.optional(v.boolean()),
  /** Net energy of logged cardio. */
  cardioKcal: v.optional(numberIn(0, 10_000, 'kilocalories')),
  bodyFat: v.optional(bodyFat),
  /** Day of the menstrual cycle, 1 being the onset of menses; days between two are counted on. */
  cycleDay: v.optional(integerIn(1, 90, 'a day of the cycle')),
  /** Away from home: another scale, other food. */
  travelling: v.optional(v.boolean()),
});

export const estimateAthlete = v.strictObject({
  sex: v.picklist(['male', 'female'], '"male" or "female"'),
  heightCm: numberIn(120, 230, 'centimetres'),
  age: numberIn(18, 100, 'years: this tool plans for adults only'),
  /** First day of a creatine supplement that was not taken before. */
  creatineFrom: v.optional(date),
  /** When in the day the scale is read; where it is not said, the readings themselves tell. */
  weighed: v.optional(v.picklist(['before-food', 'after-food'], '"before-food" or "after-food"')),
});

/** Strength kept since the start as a share (1 all of it), with its error: evidence on how much of the loss is lean. */
export const leanEvidence = v.strictObject({
  strengthKept: numberIn(0.3, 2, 'a share of the strength at the start'),
  sd: numberIn(0.005, 1, 'a share'),
});

/** One line of `stagewright estimate`. */
export const estimateRequest = v.strictObject({
  id: v.optional(text(200)),
  athlete: estimateAthlete,
  days: v.pipe(
    v.array(estimateDay, 'a list of days'),
    v.minLength(1, 'at least one day'),
    v.maxLength(4_000, 'at most 4000 days'),
  ),
  asOf: v.optional(date),
  leanEvidence: v.optional(leanEvidence),
});

export type EstimateRequest = v.InferOutput<typeof estimateRequest>;
export type EstimateDay = v.InferOutput<typeof estimateDay>;
export type EstimateAthlete = v.InferOutput<typeof estimateAthlete>;
export type LeanEvidence = v.InferOutput<typeof leanEvidence>;

const finite = v.pipe(v.number(), v.finite());
const believed = v.strictObject({ mean: finite, sd: v.pipe(finite, v.minValue(0)) });
const foretold = v.strictObject({ mean: finite, q05: finite, q95: finite });

export const estimateAnswer = v.strictObject({
  id: v.optional(text(200)),
  days: v.array(
    v.strictObject({
      date,
      massKg: believed,
      fatKg: believed,
      leanKg: believed,
      maintenanceKcal: believed,
    }),
  ),
  forecast: v.array(v.strictObject({ date, massKg: foretold, fatKg: foretold })),
  why: v.array(text(600)),
});

export type EstimateAnswer = v.InferOutput<typeof estimateAnswer>;
export type Believed = v.InferOutput<typeof believed>;
export type Foretold = v.InferOutput<typeof foretold>;
