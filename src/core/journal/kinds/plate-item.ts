import * as v from 'valibot';
import { integerIn, nutrientsUpTo, numberIn, text } from '../../problems/shapes.ts';

const id = text(80, 'a name of this thing');
const grams = numberIn(0, 100_000, 'grams');

/** Nutrients of a whole serving or dish. */
const nutrientsOfServing = nutrientsUpTo(20_000, 5_000, 200_000);

/** Something on a plate. Exactly what it was is said by `source`. */
export const plateItem = v.variant('source', [
  v.strictObject({ source: v.literal('food'), food: id, grams }),
  /** From a cooked batch: a packed portion (or part of it) or spooned straight from the pan. */
  v.strictObject({ source: v.literal('batch'), batch: id, portion: v.optional(integerIn(1, 200)), grams }),
  v.strictObject({ source: v.literal('recipe'), recipe: id, grams }),
  /** By the slice: the recipe need not have been weighed cooked; half slices are fine. */
  v.strictObject({
    source: v.literal('slices'),
    recipe: id,
    slices: numberIn(0.05, 500, 'slices'),
    /** What they weighed, where they were weighed. */
    grams: v.optional(grams),
  }),
  /** Eaten out: nutrients guessed for the whole, with how far off the guess may be. */
  v.strictObject({
    source: v.literal('guess'),
    name: text(120),
    nutrients: nutrientsOfServing,
    spreadPercent: numberIn(0, 100, 'percent'),
    grams: v.optional(grams),
  }),
]);
export type PlateItem = v.InferOutput<typeof plateItem>;
