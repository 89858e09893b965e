import * as v from 'valibot';
import { HEAVIEST_LOAD_KG } from '#core/journal/kinds/gym-load.ts';
import { integerIn, numberIn } from '#core/problems/shapes.ts';

/** `plates` counts all plates there are, for both sides together; a mass may stand in several rows. */
export const rampRequest = v.strictObject({
  topSet: v.strictObject({
    loadKg: numberIn(0.5, HEAVIEST_LOAD_KG, 'kilograms'),
    reps: integerIn(1, 100, 'repetitions'),
  }),
  implement: v.strictObject({
    emptyKg: numberIn(0, HEAVIEST_LOAD_KG, 'kilograms'),
    sides: v.picklist([1, 2], 'the sides that plates go on: 1 or 2'),
  }),
  plates: v.pipe(
    v.array(
      v.strictObject({
        kg: numberIn(0.01, 250, 'kilograms of one plate'),
        count: integerIn(0, 1000, 'a number of plates'),
      }),
      'a list of plates',
    ),
    v.maxLength(60, 'a list of at most 60 kinds of plate'),
  ),
  warmUps: v.optional(integerIn(0, 10, 'a number of warm-up sets'), 4),
});
export type RampRequest = v.InferOutput<typeof rampRequest>;

export const rampAnswer = v.strictObject({
  /** Warm-up sets, then the top set. `perSide` lists the plates of one side, inside first. */
  sets: v.array(v.strictObject({ loadKg: v.number(), reps: v.number(), perSide: v.array(v.number()) })),
  /** The top set's load minus the wanted one. */
  errorKg: v.number(),
  /** All plates put on or taken off, both sides counted, from the empty implement to the top set. */
  plateMoves: v.number(),
  why: v.array(v.string()),
});
export type RampAnswer = v.InferOutput<typeof rampAnswer>;
