import * as v from 'valibot';
import { date, integerIn, nutrientsPer100g, nutrientsUpTo, numberIn, text } from '../../problems/shapes.ts';

const id = text(80, 'a name of this thing');
const grams = numberIn(0, 100_000, 'grams');
const positiveGrams = numberIn(0.1, 100_000, 'grams');
const place = v.picklist(['fridge', 'freezer', 'cupboard', 'room']);
const portion = integerIn(1, 200, 'the number of a portion');
const state = v.picklist(['raw', 'cooked', 'dry', 'frozen', 'as-is']);

/** A household unit: one egg of 50 g, one slice of 30 g. */
const unit = v.strictObject({ name: text(40), grams: positiveGrams });

/** Nutrients of a whole serving as printed. */
const nutrientsOfServing = nutrientsUpTo(20_000, 5_000, 200_000);

export const kitchenKinds = {
  /** An own food, from its label or another source. */
  'food-defined': v.strictObject({
    food: id,
    name: text(120),
    state,
    per100g: nutrientsPer100g,
    unit: v.optional(unit),
    /** The label as printed, kept so that its rounding can be carried. */
    label: v.optional(
      v.strictObject({
        rules: v.picklist(['us', 'eu']),
        servingG: positiveGrams,
        nutrients: nutrientsOfServing,
      }),
    ),
    basis: v.picklist(['label', 'recipe', 'laboratory', 'own estimate']),
    aisle: v.optional(text(60)),
    /** What it is to the clock of food safety, a class of tables/storage-clock.ts; absent: the strictest of its state. */
    storage: v.optional(text(40)),
  }),
  /** How this athlete uses a food: favourite, least and most on a plate, whole units only. */
  'food-preferred': v.strictObject({
    food: id,
    favourite: v.boolean(),
    minG: v.optional(positiveGrams),
    maxG: v.optional(positiveGrams),
    unit: v.optional(unit),
    /** Offered to the day's plan even when stock is not counted (salt, oil, vegetables at hand). */
    planFreely: v.optional(v.boolean()),
  }),
  'container-weighed': v.strictObject({ container: id, name: text(80), emptyG: grams }),
  'recipe-defined': v.strictObject({
    recipe: id,
    name: text(120),
    ingredients: v.pipe(
      v.array(v.strictObject({ food: id, rawG: positiveGrams, form: v.optional(text(60)) })),
      v.minLength(1),
    ),
    steps: v.array(text(600)),
    yields: v.strictObject({ cookedG: v.optional(positiveGrams), slices: v.optional(integerIn(1, 500)) }),
  }),
  /** Raw in, cooked out. The raw foods leave the stock. */
  'batch-cooked': v.strictObject({
    batch: id,
    name: text(120),
    ingredients: v.pipe(
      v.array(v.strictObject({ food: id, rawG: positiveGrams, form: v.optional(text(60)) })),
      v.minLength(1),
    ),
    container: v.optional(id),
    containerG: grams,
    cookedGrossG: positiveGrams,
    drainedFatG: v.optional(grams),
    /** Raw weights taken from stock unless the athlete says they were bought for this pan. */
    fromStock: v.boolean(),
    recipe: v.optional(id),
  }),
  /** Portions packed from a batch, numbered from 1 on through all packings; the rest stays in the pan. */
  'batch-portioned': v.strictObject({
    batch: id,
    portionsG: v.pipe(v.array(positiveGrams), v.minLength(1), v.maxLength(200)),
    place,
  }),
  /** What is left of a batch (or of one portion) put on the scale again: it replaces the computed rest. */
  'batch-reweighed': v.strictObject({ batch: id, portion: v.optional(portion), leftG: grams }),
  /** Frozen, thawed, put back, left out, thrown away. */
  'portion-moved': v.strictObject({
    batch: id,
    /** Absent: what is in the pan. */
    portion: v.optional(portion),
    to: v.picklist(['fridge', 'freezer', 'room', 'bin']),
    /** Minutes at room temperature that this move ends, where known; they add up. */
    minutesOut: v.optional(integerIn(0, 10_000)),
    /** It was above 32 C (90 F) there: half the minutes are allowed. */
    hot: v.optional(v.boolean()),
  }),
  'stock-bought': v.strictObject({
    food: id,
    grams: positiveGrams,
    place,
    useBy: v.optional(date),
    priceCents: v.optional(integerIn(0, 10_000_000)),
    /** Ticked off the shopping list of this week. */
    week: v.optional(id),
  }),
  /** What is there now, by weight: an absolute figure that corrects the computed one; 0 is "ran out". */
  'stock-counted': v.strictObject({ food: id, grams, place, useBy: v.optional(date) }),
  /** Food in stock put elsewhere: frozen, thawed, left out; absent grams: all of it. */
  'stock-moved': v.strictObject({
    food: id,
    grams: v.optional(positiveGrams),
    from: place,
    to: place,
    minutesOut: v.optional(integerIn(0, 10_000)),
    hot: v.optional(v.boolean()),
  }),
  /** How long cooked rice is kept: "strict" a day, "general" like other leftovers. Strict until chosen otherwise. */
  'rice-rule-chosen': v.strictObject({ rule: v.picklist(['strict', 'general']) }),
  'stock-binned': v.strictObject({ food: id, grams: positiveGrams, reason: v.optional(text(200)) }),
};
