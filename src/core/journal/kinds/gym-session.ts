import * as v from 'valibot';
import { integerIn, text } from '../../problems/shapes.ts';
import { setLoad } from './gym-load.ts';
import { bodySide, restSeconds, rir, sessionBlock, sessionSlot, setKind, tempo } from './gym-scheme.ts';

const id = text(80, 'a name of this thing');
const setNumber = integerIn(1, 60, 'a set number');

export const sessionKinds = {
  /** A template of a training day; the newest of the same `template` counts. */
  'session-planned': v.strictObject({
    template: id,
    name: text(80),
    blocks: v.pipe(v.array(sessionBlock), v.minLength(1), v.maxLength(30)),
    retired: v.optional(v.boolean()),
  }),
  'session-begun': v.strictObject({
    session: id,
    template: v.optional(id),
    title: v.optional(text(80)),
    place: v.optional(text(80)),
  }),
  'session-ended': v.strictObject({ session: id, note: v.optional(text(600)) }),
  /** Blocks in the order they are walked from now on; blocks left out follow in their old order. */
  'session-reordered': v.strictObject({ session: id, blocks: v.pipe(v.array(id), v.maxLength(60)) }),
  'exercise-substituted': v.strictObject({
    session: id,
    slot: id,
    exercise: id,
    machine: v.optional(id),
    implement: v.optional(id),
    reason: v.optional(text(200)),
  }),
  /** An exercise the template does not have, as a block of its own after `after` (a block) or last. */
  'exercise-added': v.strictObject({ session: id, slot: sessionSlot, after: v.optional(id) }),
  'exercise-dropped': v.strictObject({ session: id, slot: id, reason: v.optional(text(200)) }),
  'set-skipped': v.strictObject({
    session: id,
    slot: id,
    set: setKind,
    number: setNumber,
    side: v.optional(bodySide),
    reason: v.optional(text(200)),
  }),
  /** A set as it was done. `number` counts within slot and set kind, from 1. Nought repetitions: tried and missed. */
  'set-done': v.strictObject({
    session: id,
    slot: v.optional(id),
    exercise: id,
    set: setKind,
    number: v.optional(setNumber),
    load: setLoad,
    reps: integerIn(0, 200, 'whole repetitions'),
    rir: v.optional(rir),
    side: v.optional(bodySide),
    tempo: v.optional(tempo),
    /** Rest before this set. */
    restSeconds: v.optional(restSeconds),
    note: v.optional(text(400)),
  }),
};
