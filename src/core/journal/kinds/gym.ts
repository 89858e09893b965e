import * as v from 'valibot';
import { integerIn, numberIn, text } from '../../problems/shapes.ts';
import { carriers, equipmentKinds } from './gym-equipment.ts';
import { loadKg } from './gym-load.ts';
import { bodySide, tempo } from './gym-scheme.ts';
import { sessionKinds } from './gym-session.ts';

const id = text(80, 'a name of this thing');

/** Facts of the gym room. */
export const gymKinds = {
  ...equipmentKinds,
  ...sessionKinds,
  /**
   * An exercise of one's own, or one of the bundled list made one's own; the newest of the same `exercise` counts.
   * Muscles are anatomical names as text: a name this version does not know is kept and shown, not lost.
   */
  'exercise-described': v.strictObject({
    exercise: id,
    name: text(80),
    /** Row of the bundled list it starts from; what is left out here is taken from there. */
    basedOn: v.optional(text(80)),
    muscles: v.optional(
      v.pipe(
        v.array(v.strictObject({ muscle: text(60), part: v.picklist(['prime', 'assisting']) })),
        v.minLength(1),
        v.maxLength(16),
      ),
    ),
    carrier: v.optional(v.picklist(carriers)),
    machine: v.optional(id),
    implement: v.optional(id),
    /** Counts in the strength index. */
    main: v.optional(v.boolean()),
    sides: v.optional(v.picklist(['together', 'one at a time'])),
    /** Part of the body that is lifted with the load: 1 hanging from a bar, 0 seated in a machine. */
    bodyShare: v.optional(numberIn(0, 1, 'a share of body weight')),
    /** A joint to protect: loads above the ceiling and sets below the floor are not asked for. */
    caution: v.optional(
      v.strictObject({
        joint: text(60),
        side: v.optional(bodySide),
        ceilingKg: v.optional(loadKg),
        repsFloor: v.optional(integerIn(1, 50, 'repetitions')),
        tempo: v.optional(tempo),
        words: v.optional(text(300)),
      }),
    ),
    retired: v.optional(v.boolean()),
  }),
  /** Cardio as done. What the machine shows as kilocalories is not asked for: it is no source. */
  'cardio-done': v.strictObject({
    activity: text(80),
    minutes: numberIn(1, 1440, 'minutes'),
    speedKmh: v.optional(numberIn(0, 60, 'kilometres per hour')),
    gradePercent: v.optional(numberIn(-30, 60, 'percent')),
    stepsPerMinute: v.optional(numberIn(0, 250, 'steps per minute')),
    stepHeightM: v.optional(numberIn(0.02, 0.6, 'metres')),
    watts: v.optional(numberIn(0, 800, 'watts')),
    level: v.optional(numberIn(0, 40, 'the level the machine shows')),
    heartRate: v.optional(integerIn(30, 250, 'beats per minute')),
    beforeFood: v.boolean(),
  }),
  /** Pain or a joint's complaint, 0 gone to 10 worst. */
  'pain-noted': v.strictObject({
    joint: text(60),
    side: v.optional(bodySide),
    score: integerIn(0, 10, 'a score'),
    exercise: v.optional(id),
    session: v.optional(id),
    /** Numbness, swelling, locking, giving way, pain at night: signs that are never waited out. */
    signs: v.optional(
      v.array(v.picklist(['numbness', 'swelling', 'locking', 'giving way', 'night pain', 'sudden pop'])),
    ),
    words: v.optional(text(400)),
  }),
};
