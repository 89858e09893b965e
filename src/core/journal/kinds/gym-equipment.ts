import * as v from 'valibot';
import { integerIn, numberIn, text } from '../../problems/shapes.ts';
import { loadKg } from './gym-load.ts';

const id = text(80, 'a name of this thing');
const radiusM = numberIn(0, 3, 'metres');
const angleDeg = numberIn(-360, 360, 'degrees');
const unit = v.picklist(['kg', 'lb']);
/** As stamped on the piece, in its own unit, so that a 45 lb plate stays exactly that. */
const stamped = numberIn(0.05, 600, 'the mass stamped on it');

/** What carries the load. */
export const carriers = [
  'barbell',
  'dumbbell pair',
  'one dumbbell',
  'kettlebell',
  'plate-loaded machine',
  'stack machine',
  'body weight',
  'band',
] as const;
export type Carrier = (typeof carriers)[number];

/**
 * How a machine turns plates into resistance. Radii with a tape from the pivot, angles from the horizontal with a
 * phone's level, lever at the start of the movement (positive: above). `unknown` pegs are kept apart by loading.
 */
const geometry = v.variant('of', [
  v.strictObject({
    of: v.literal('lever'),
    range: v.strictObject({ fromDeg: angleDeg, toDeg: angleDeg }),
    lever: v.strictObject({ massKg: loadKg, radiusM, angleDeg }),
    pegs: v.pipe(
      v.array(v.strictObject({ name: text(40), radiusM, angleDeg })),
      v.minLength(1),
      v.maxLength(12),
    ),
    padM: numberIn(0.01, 3, 'metres'),
    sides: v.picklist([1, 2]),
  }),
  /** A sled on rails; the angle of the rails from the horizontal. */
  v.strictObject({
    of: v.literal('sled'),
    sledKg: loadKg,
    railsDeg: numberIn(1, 90, 'degrees'),
    sides: v.picklist([1, 2]),
  }),
  v.strictObject({
    of: v.literal('stack'),
    firstKg: loadKg,
    stepKg: numberIn(0.1, 100, 'kilograms'),
    lastKg: loadKg,
    /** A second hole or a sliding weight that adds half a step. */
    halfPinKg: v.optional(numberIn(0.05, 50, 'kilograms')),
    addOnsKg: v.optional(v.pipe(v.array(numberIn(0.05, 50, 'kilograms')), v.maxLength(12))),
  }),
  v.strictObject({
    of: v.literal('unknown'),
    pegs: v.pipe(v.array(text(40)), v.minLength(1), v.maxLength(12)),
  }),
]);
export type MachineGeometry = v.InferOutput<typeof geometry>;

export const equipmentKinds = {
  /** A machine described once; the newest description of the same `machine` counts. */
  'machine-described': v.strictObject({
    machine: id,
    name: text(80),
    place: v.optional(text(80)),
    /** Key of a photograph kept beside the journal. */
    photo: v.optional(text(80)),
    geometry,
    retired: v.optional(v.boolean()),
  }),
  /** A bar or another thing that plates go on. */
  'implement-described': v.strictObject({
    implement: id,
    name: text(80),
    place: v.optional(text(80)),
    empty: v.strictObject({ mass: numberIn(0, 600, 'the mass of it empty'), unit }),
    sides: v.picklist([1, 2]),
    retired: v.optional(v.boolean()),
  }),
  /** The loose weights of a place, all counted; the newest count of a place counts. */
  'weights-counted': v.strictObject({
    place: v.optional(text(80)),
    plates: v.pipe(
      v.array(v.strictObject({ mass: stamped, unit, count: integerIn(0, 200, 'a number of plates') })),
      v.maxLength(40),
    ),
    dumbbellPairs: v.optional(v.pipe(v.array(v.strictObject({ mass: stamped, unit })), v.maxLength(120))),
  }),
};
