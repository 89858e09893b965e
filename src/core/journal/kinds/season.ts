import * as v from 'valibot';
import { clock, date, integerIn, numberIn, text } from '../../problems/shapes.ts';

const show = text(80, 'a name of this show');
const score = integerIn(1, 5, 'a score');

/** What is written around the show itself: the rehearsal, the day, and the way back. */
export const seasonKinds = {
  /** How the rehearsed load went, and what is carried over to the show. */
  'rehearsal-judged': v.strictObject({
    show,
    from: date,
    until: date,
    /** Carbohydrate of a loading day as it was planned, g per kg of body mass. */
    loadGPerKg: numberIn(0, 20, 'grams for each kilogram'),
    loadDays: integerIn(0, 7, 'days'),
    look: v.optional(score),
    gut: v.optional(score),
    again: v.picklist(['as it was', 'with less', 'not at all']),
    lessons: v.optional(text(2000)),
  }),
  /** The times of the show day, at the place of the show; the newest of a show counts. */
  'show-day-timed': v.strictObject({
    show,
    wake: clock,
    stage: clock,
    checkIn: v.optional(clock),
    finals: v.optional(clock),
    travelMinutes: integerIn(0, 1440, 'minutes'),
  }),
  /** The class is called at another time than was said; `now` is when that became known. */
  'stage-moved': v.strictObject({ show, stage: clock, now: clock }),
  /** A line of the show day is done. */
  'show-task-done': v.strictObject({ show, task: text(80) }),
  /** A thing for the show bag, in or out of it; a thing of one's own is named by writing it once. */
  'thing-packed': v.strictObject({ show, thing: text(80), packed: v.boolean() }),
  /** The way back after a show as it was adopted: what is eaten from when on, and where the scale may stand. */
  'way-back-adopted': v.strictObject({
    show,
    pace: v.picklist(['at once', 'in steps']),
    weeks: v.pipe(
      v.array(
        v.strictObject({
          from: date,
          energyKcal: numberIn(0, 10_000, 'kilocalories'),
          lowKg: numberIn(25, 350, 'kilograms'),
          highKg: numberIn(25, 350, 'kilograms'),
        }),
      ),
      v.minLength(1, 'at least one week'),
      v.maxLength(60, 'at most 60 weeks'),
    ),
    why: v.array(text(600)),
  }),
};
