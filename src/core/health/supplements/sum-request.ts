import * as v from 'valibot';
import { healthKinds } from '#core/journal/kinds/health.ts';
import { numberIn, text } from '#core/problems/shapes.ts';

const id = text(80, 'a name of this thing');

/** A day's intake of products, and of food and drinks as far as they are known. */
export const sumRequest = v.strictObject({
  athlete: v.strictObject({
    sex: v.picklist(['female', 'male'], '"female" or "male"'),
    age: numberIn(18, 120, 'an age in years'),
    massKg: v.optional(numberIn(25, 350, 'kilograms')),
  }),
  products: v.array(healthKinds['supplement-defined']),
  /** Units a day of each product, and the largest single dose of it. */
  intakes: v.array(
    v.strictObject({
      supplement: id,
      unitsPerDay: numberIn(0, 1000, 'units a day'),
      unitsPerDose: v.optional(numberIn(0, 1000, 'units')),
    }),
  ),
  /** Nutrients of a day's food by standard name, in the nutrient's unit; what is left out is unknown, not zero. */
  food: v.optional(v.record(text(80), numberIn(0, 1e6, 'an amount'))),
  /** Caffeine of the day's drinks; absent: unknown. */
  drinksCaffeineMg: v.optional(numberIn(0, 5000, 'milligrams')),
});
export type SumRequest = v.InferOutput<typeof sumRequest>;

const limit = v.strictObject({
  perDay: v.number(),
  /** What counts towards it. */
  counted: v.picklist(['all sources', 'added forms', 'supplements only']),
  basis: v.picklist(['upper level', 'safe level', 'reference intake', 'dose of concern']),
  total: v.number(),
  percent: v.number(),
  over: v.boolean(),
  /** Food counts towards it and is not known, so the true total is higher. */
  foodUnknown: v.boolean(),
  words: v.optional(v.string()),
  year: v.optional(v.number()),
  evidence: v.picklist(['seen', 'from memory']),
  source: v.string(),
});
export type LimitCheck = v.InferOutput<typeof limit>;

const part = v.strictObject({
  supplement: v.string(),
  name: v.string(),
  /** Absent: the label does not say how much. */
  amount: v.optional(v.number()),
  form: v.optional(v.string()),
  note: v.optional(v.string()),
});

export const sumAnswer = v.strictObject({
  nutrients: v.array(
    v.strictObject({
      nutrient: v.string(),
      name: v.string(),
      unit: v.picklist(['g', 'mg', 'ug']),
      parts: v.array(part),
      supplements: v.number(),
      food: v.optional(v.number()),
      /** In more than one product. */
      duplicate: v.boolean(),
      us: v.array(limit),
      eu: v.array(limit),
      caution: v.optional(v.string()),
      notes: v.array(v.string()),
    }),
  ),
  substances: v.array(
    v.strictObject({
      substance: v.string(),
      name: v.string(),
      mg: v.optional(v.number()),
      parts: v.array(part),
      duplicate: v.boolean(),
      cautions: v.array(v.strictObject({ words: v.string(), source: v.string() })),
      inSport: v.optional(v.string()),
    }),
  ),
  /** On labels, not in the tables: shown, not summed. */
  notKnown: v.array(v.strictObject({ supplement: v.string(), name: v.string(), printed: v.string() })),
  caffeine: v.strictObject({
    perDayMg: v.number(),
    limitPerDayMg: v.number(),
    largestDoseMg: v.number(),
    limitPerDoseMg: v.number(),
    drinksUnknown: v.boolean(),
    over: v.boolean(),
    source: v.string(),
  }),
  cautions: v.array(v.strictObject({ words: v.string(), source: v.string() })),
  why: v.array(v.string()),
});
export type SumAnswer = v.InferOutput<typeof sumAnswer>;
