import * as v from 'valibot';
import { clock, date, integerIn, numberIn, text } from '../../problems/shapes.ts';
import { drawState, labValue, takenSubstance } from './lab-value.ts';

const id = text(80, 'a name of this thing');
const score = integerIn(1, 5, 'a score');
const units = numberIn(0.1, 100, 'units');
const minutes = integerIn(0, 600, 'minutes');
const gramsAtLeast = v.optional(numberIn(0, 500, 'grams'));

/** One line of a product's label. `of` is a nutrient's or substance's standard name; without an amount: undisclosed. */
const labelLine = v.pipe(
  v.strictObject({
    of: text(80, 'the standard name of a nutrient or substance'),
    /** Chemical form where it matters: "retinol", "beta-carotene", "nicotinic acid", "folic acid". */
    form: v.optional(text(60)),
    amount: v.optional(numberIn(0, 1e6, 'an amount')),
    unit: v.optional(v.picklist(['g', 'mg', 'ug', '[IU]'])),
  }),
  v.check(
    (line) => (line.amount === undefined) === (line.unit === undefined),
    'an amount together with its unit',
  ),
);
export type LabelLine = v.InferOutput<typeof labelLine>;

/** What a dose is tied to, so that a re-planned day moves it too. */
const tie = v.variant('to', [
  v.strictObject({ to: v.literal('first meal') }),
  v.strictObject({ to: v.literal('last meal') }),
  v.strictObject({ to: v.literal('high-carbohydrate meal'), atLeastG: gramsAtLeast }),
  v.strictObject({ to: v.literal('fat-holding meal'), atLeastG: gramsAtLeast }),
  v.strictObject({ to: v.literal('before training'), minutes }),
  v.strictObject({ to: v.literal('after training') }),
  v.strictObject({ to: v.literal('before sleep'), minutes }),
  v.strictObject({ to: v.literal('waking, empty stomach') }),
  v.strictObject({ to: v.literal('clock'), at: clock }),
]);
export type Tie = v.InferOutput<typeof tie>;

const cadence = v.variant('of', [
  v.strictObject({ of: v.literal('every day') }),
  /** Counted from the regimen's first day. */
  v.strictObject({ of: v.literal('every n-th day'), days: integerIn(2, 60, 'days') }),
  v.strictObject({ of: v.literal('weekdays'), weekdays: v.pipe(v.array(integerIn(1, 7)), v.minLength(1)) }),
  v.strictObject({ of: v.literal('training days') }),
  v.strictObject({ of: v.literal('rest days') }),
]);
export type Cadence = v.InferOutput<typeof cadence>;

/** Facts of the health room: supplements, blood, how one feels. */
export const healthKinds = {
  /** A product as its label says. Amounts are those of `perUnits` units. */
  'supplement-defined': v.strictObject({
    supplement: id,
    name: text(120),
    unit: v.picklist([
      'capsule',
      'tablet',
      'softgel',
      'scoop',
      'drop',
      'millilitre',
      'gram',
      'sachet',
      'spray',
    ]),
    perUnits: numberIn(0.1, 1000, 'units that the printed amounts are for, more than 0,'),
    contents: v.pipe(v.array(labelLine), v.minLength(1, 'a list of at least one line'), v.maxLength(80)),
    packUnits: v.optional(integerIn(1, 100_000)),
    /** The batch number looked up with whoever tested it for prohibited substances. */
    batchTested: v.optional(v.boolean()),
    retired: v.optional(v.boolean()),
  }),
  'regimen-set': v.strictObject({
    regimen: id,
    supplement: id,
    units,
    tie,
    cadence,
    from: date,
    until: v.optional(date),
    pauses: v.optional(
      v.array(v.strictObject({ from: date, until: v.optional(date), reason: v.optional(text(200)) })),
    ),
  }),
  'supplement-taken': v.strictObject({
    supplement: id,
    units,
    regimen: v.optional(id),
    /** The meal it was taken with. */
    slot: v.optional(id),
  }),
  'supplement-skipped': v.strictObject({ supplement: id, regimen: id, reason: text(200) }),
  /** Units in the cupboard now: it replaces the computed rest. */
  'supplement-counted': v.strictObject({ supplement: id, units: numberIn(0, 100_000, 'units') }),
  'supplement-bought': v.strictObject({ supplement: id, units: numberIn(0.1, 100_000, 'units') }),
  /**
   * A prescribed medicine at its prescriber's times. It is never planned here; what is planned keeps clear of it.
   */
  'medicine-declared': v.strictObject({
    medicine: id,
    name: text(120),
    at: v.pipe(v.array(clock), v.maxLength(12)),
    from: date,
    until: v.optional(date),
  }),
  'draw-planned': v.strictObject({
    draw: id,
    date,
    at: clock,
    laboratory: v.optional(text(120)),
    /** What is to be measured, by name. */
    analytes: v.array(text(120)),
    fasting: v.boolean(),
    cancelled: v.optional(v.boolean()),
  }),
  /** A panel in the laboratory's own units and intervals. */
  'blood-drawn': v.strictObject({
    panel: id,
    laboratory: v.optional(text(120)),
    drawn: drawState,
    taking: v.array(takenSubstance),
    values: v.pipe(v.array(labValue), v.minLength(1), v.maxLength(400)),
    origin: v.picklist(['typed', 'fhir']),
    /** The laboratory's own number of the report, so that the same file read twice is noticed. */
    report: v.optional(text(200)),
  }),
  /** Scores 1 to 5 read "more is more" of what they name. Every field may be left out. */
  'feeling-noted': v.pipe(
    v.strictObject({
      restingHeartRateBpm: v.optional(integerIn(20, 220, 'beats a minute')),
      sleepHours: v.optional(numberIn(0, 24, 'hours')),
      sleepQuality: v.optional(score),
      libido: v.optional(score),
      mood: v.optional(score),
      cold: v.optional(score),
      hunger: v.optional(score),
      jointPain: v.optional(score),
      note: v.optional(text(1000)),
    }),
    v.check((noted) => Object.keys(noted).length > 0, 'at least one thing noted'),
  ),
};
