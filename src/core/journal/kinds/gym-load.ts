import * as v from 'valibot';
import { numberIn, text } from '../../problems/shapes.ts';

const id = text(80, 'a name of this thing');

/**
 * The heaviest load a set may be logged with. Nothing moved over a full range in training comes near it; more than
 * this is a slip of the thumb or a sum in pounds.
 */
export const HEAVIEST_LOAD_KG = 800;
export const loadKg = numberIn(0, HEAVIEST_LOAD_KG, 'kilograms');

/**
 * What was on the implement, as it was loaded. `kg` is the whole of it, implement counted (a bar with its plates, the
 * sled's plates and the sled); `each` one dumbbell of a pair; `pegs` the plates on each loading point of a machine,
 * the machine itself not counted; `stack` the pin and what was laid on top of it.
 */
export const setLoad = v.variant('of', [
  v.strictObject({ of: v.literal('kg'), kg: loadKg }),
  v.strictObject({ of: v.literal('each'), kgEach: loadKg }),
  v.strictObject({
    of: v.literal('pegs'),
    machine: id,
    pegs: v.pipe(v.array(v.strictObject({ peg: text(40), kg: loadKg })), v.minLength(1), v.maxLength(12)),
  }),
  v.strictObject({
    of: v.literal('stack'),
    machine: v.optional(id),
    pinKg: loadKg,
    addOnKg: v.optional(loadKg),
  }),
  /** Body weight with a belt's load or with a machine's help taken off; neither means the body alone. */
  v.strictObject({ of: v.literal('body'), beltKg: v.optional(loadKg), assistKg: v.optional(loadKg) }),
  /** A band is noted, never turned into kilograms: its pull changes over the range and with its age. */
  v.strictObject({ of: v.literal('band'), band: text(60), kg: v.optional(loadKg) }),
]);
export type SetLoad = v.InferOutput<typeof setLoad>;
