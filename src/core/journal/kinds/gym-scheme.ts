import * as v from 'valibot';
import { integerIn, numberIn, text } from '../../problems/shapes.ts';
import { loadKg } from './gym-load.ts';

/** Kinds of set, in the trade's words. */
export const setKinds = ['warm-up', 'working', 'top', 'back-off', 'drop', 'rest-pause'] as const;
export const setKind = v.picklist(setKinds);
export type SetKind = (typeof setKinds)[number];

export const bodySides = ['left', 'right'] as const;
export const bodySide = v.picklist(bodySides);
export type BodySide = (typeof bodySides)[number];

const TEMPO_MESSAGE = 'a tempo in seconds "lower-pause-lift-pause", such as "3-1-1-0" or "4-0-X-1"';
/** Seconds of lowering, pause, lifting ("X": as fast as it goes), pause. */
export const tempo = v.pipe(
  v.string(TEMPO_MESSAGE),
  v.regex(/^\d{1,2}-\d{1,2}-(?:\d{1,2}|X)-\d{1,2}$/, TEMPO_MESSAGE),
);

export const rir = numberIn(0, 10, 'repetitions in reserve');
export const restSeconds = integerIn(0, 3600, 'seconds');

/** So many sets of a kind. `share` is a part of the top set's load (a back-off set at 0.9 of it). */
export const setScheme = v.strictObject({
  set: setKind,
  count: integerIn(1, 20, 'a number of sets'),
  reps: v.optional(
    v.pipe(
      v.strictObject({ min: integerIn(1, 100), max: integerIn(1, 100) }),
      v.check(({ min, max }) => min <= max, 'repetitions whose fewest are not above their most'),
    ),
  ),
  rir: v.optional(rir),
  loadKg: v.optional(loadKg),
  share: v.optional(numberIn(0.1, 1, 'a share of the top set')),
  tempo: v.optional(tempo),
  restSeconds: v.optional(restSeconds),
});
export type SetScheme = v.InferOutput<typeof setScheme>;

const id = text(80, 'a name of this thing');

/** One exercise in a session. `slot` stays when the exercise in it is substituted. */
export const sessionSlot = v.strictObject({
  slot: id,
  exercise: id,
  machine: v.optional(id),
  implement: v.optional(id),
  sides: v.optional(v.picklist(['together', 'one at a time'])),
  sets: v.pipe(v.array(setScheme), v.minLength(1), v.maxLength(20)),
});
export type SessionSlot = v.InferOutput<typeof sessionSlot>;

/** Slots walked together: one alone, two a superset, three and more a giant set; a round is one set of each. */
export const sessionBlock = v.strictObject({
  block: id,
  slots: v.pipe(v.array(sessionSlot), v.minLength(1), v.maxLength(8)),
});
export type SessionBlock = v.InferOutput<typeof sessionBlock>;
