import * as v from 'valibot';
import { drawState, labValue, takenSubstance } from '#core/journal/kinds/lab-value.ts';
import { numberIn, text } from '#core/problems/shapes.ts';

const values = v.pipe(
  v.array(labValue, 'a list of values'),
  v.minLength(1, 'a list of at least one value'),
  v.maxLength(400, 'a list of at most 400 values'),
);
const taking = v.pipe(v.array(takenSubstance, 'a list of substances'), v.maxLength(200));

/** An older panel. */
const earlierPanel = v.strictObject({
  drawn: drawState,
  laboratory: v.optional(text(120)),
  taking: v.optional(taking),
  values,
});

/** Request of the `panel` command; `laboratory` and `diet` sharpen the notes and may be left out. */
export const panelRequest = v.strictObject({
  athlete: v.strictObject({
    sex: v.picklist(['female', 'male'], '"female" or "male"'),
    age: numberIn(0, 120, 'an age in years'),
  }),
  drawn: drawState,
  laboratory: v.optional(text(120)),
  taking,
  values,
  earlier: v.optional(v.pipe(v.array(earlierPanel, 'a list of older panels'), v.maxLength(200))),
  /** What is known of the eating at the time: positive deficit means below maintenance. */
  diet: v.optional(
    v.strictObject({
      deficitKcalPerDay: v.optional(numberIn(-5000, 5000, 'kilocalories a day')),
      proteinGPerKg: v.optional(numberIn(0, 10, 'grams per kilogram')),
    }),
  ),
});
export type PanelRequest = v.InferOutput<typeof panelRequest>;

const bound = v.optional(v.picklist(['<', '<=', '>', '>=']));
const result = v.strictObject({
  /** Absent only where neither the report nor the table has one. */
  loinc: v.optional(v.string()),
  name: v.string(),
  value: v.number(),
  /** The value is a bound: nothing was computed from it. */
  comparator: bound,
  unit: v.string(),
  /** Absent for an analyte that the table does not know. */
  si: v.optional(v.strictObject({ value: v.number(), unit: v.string(), comparator: bound })),
  /** Absent where neither the laboratory nor the table gives one. */
  interval: v.optional(
    v.strictObject({ low: v.optional(v.number()), high: v.optional(v.number()), source: v.string() }),
  ),
  /** Absent where the value is not judged; a note says why. */
  flag: v.optional(v.picklist(['low', 'in', 'high', 'seek care now'])),
  /** Against the newest older panel that has it; absent where there is none or the variation is not known. */
  change: v.optional(v.strictObject({ percent: v.number(), rcvPercent: v.number(), real: v.boolean() })),
  notes: v.array(v.string()),
});

export const panelAnswer = v.strictObject({
  results: v.array(result),
  derived: v.array(
    v.strictObject({
      name: v.string(),
      value: v.number(),
      unit: v.string(),
      formula: v.string(),
      source: v.string(),
    }),
  ),
  cautions: v.array(v.string()),
  why: v.array(v.string()),
});
export type PanelAnswer = v.InferOutput<typeof panelAnswer>;
