import * as v from 'valibot';
import { clock, date, numberIn, text } from '../../problems/shapes.ts';

const amount = numberIn(0, 1e9, 'a number of the unit');

/** What a laboratory writes when the amount lies beyond what its method can count: "<0.1", ">=90". */
const beyond = v.pipe(
  v.string('a number, or a bound such as "<0.1"'),
  v.regex(/^(<|<=|>|>=) ?\d{1,9}(\.\d{1,9})?$/, 'a number, or a bound such as "<0.1"'),
);

/** The laboratory's own interval, in the unit of the value it stands beside. */
const ownInterval = v.pipe(
  v.strictObject({ low: v.optional(amount), high: v.optional(amount) }),
  v.check(
    (interval) => interval.low !== undefined || interval.high !== undefined,
    'an interval with a low or a high end',
  ),
  v.check(
    (interval) => interval.low === undefined || interval.high === undefined || interval.low <= interval.high,
    'an interval whose low end is not above its high end',
  ),
);

/**
 * One measured value as the laboratory printed it: its own code or name, unit (UCUM) and interval. Nothing is
 * converted on the way in.
 */
export const labValue = v.pipe(
  v.strictObject({
    loinc: v.optional(
      v.pipe(
        v.string('a LOINC code such as "2160-0"'),
        v.regex(/^\d{1,7}-\d$/, 'a LOINC code such as "2160-0"'),
      ),
    ),
    name: v.optional(text(120, 'a name of what was measured')),
    value: v.union([amount, beyond], 'a number, or a bound such as "<0.1"'),
    unit: text(40, 'a unit'),
    comparator: v.optional(v.picklist(['<', '<=', '>', '>='])),
    interval: v.optional(ownInterval),
    /** Said after being asked: the value really has this unit. */
    unitConfirmed: v.optional(v.boolean()),
  }),
  v.check(
    (value) => value.loinc !== undefined || value.name !== undefined,
    'a value with a "loinc" or a "name"',
  ),
  v.check(
    (value) => value.comparator === undefined || typeof value.value === 'number',
    'a value whose bound is said once, by "comparator" or in the text',
  ),
);
export type LabValue = v.InferOutput<typeof labValue>;

/** When and in what state blood was drawn; absent means not known. */
export const drawState = v.strictObject({
  date,
  time: v.optional(clock),
  fastedHours: v.optional(numberIn(0, 240, 'hours')),
  hoursSinceHardTraining: v.optional(numberIn(0, 20_000, 'hours')),
  /** The laboratory said that red cells had burst in the tube. */
  haemolysed: v.optional(v.boolean()),
});
export type DrawState = v.InferOutput<typeof drawState>;

/** What was being taken: a substance by name, with the day's amount and the hours since the last dose where known. */
export const takenSubstance = v.union(
  [
    text(80, 'the name of a substance'),
    v.strictObject({
      substance: text(80, 'the name of a substance'),
      mgPerDay: v.optional(numberIn(0, 1e6, 'milligrams a day')),
      hoursSinceLast: v.optional(numberIn(0, 20_000, 'hours')),
    }),
  ],
  'the name of a substance',
);
export type TakenSubstance = v.InferOutput<typeof takenSubstance>;
