import * as v from 'valibot';
import { clock, date, integerIn, numberIn, text } from '../../problems/shapes.ts';

const score = integerIn(1, 5, 'a score');

export const courseKinds = {
  'show-set': v.strictObject({
    show: text(80),
    name: text(120),
    date,
    zone: v.optional(text(60)),
    place: v.optional(text(120)),
    class: v.optional(
      v.strictObject({
        name: text(80),
        massMaxKg: v.optional(numberIn(30, 250)),
        massMinKg: v.optional(numberIn(30, 250)),
        heightMaxCm: v.optional(numberIn(100, 250, 'centimetres')),
      }),
    ),
    target: v.strictObject({
      bodyFatPercentMax: v.optional(numberIn(2, 50, 'percent')),
      massMaxKg: v.optional(numberIn(30, 250, 'kilograms')),
      massMinKg: v.optional(numberIn(30, 250, 'kilograms')),
    }),
    withdrawn: v.optional(v.boolean()),
  }),
  /** When the preparation began: the start that course and strength are held against. */
  'preparation-begun': v.strictObject({ show: text(80), from: date }),
  /**
   * The course to a show as it was laid and adopted: what eating and cardio it asks for, and the line it expects, against
   * which the weeks are held. A decision, kept as it was made; the newest of a show counts.
   */
  'course-adopted': v.strictObject({
    show: text(80),
    from: date,
    energyKcal: numberIn(0, 10_000, 'kilocalories'),
    cardioKcal: numberIn(0, 5000, 'kilocalories'),
    trainingDays: integerIn(0, 7, 'days a week'),
    higherCarbohydrateDays: integerIn(0, 7, 'days a week'),
    line: v.pipe(
      v.array(
        v.strictObject({
          date,
          massKg: numberIn(25, 350, 'kilograms'),
          fatKg: numberIn(0, 200, 'kilograms'),
          bodyFatPercent: numberIn(0, 80, 'percent'),
        }),
      ),
      v.minLength(1, 'at least one point'),
    ),
    probability: numberIn(0, 1),
    why: v.array(text(600)),
  }),
  /** A stretch of days planned otherwise: a diet break near maintenance or higher-carbohydrate days. */
  'stretch-planned': v.strictObject({
    stretch: text(80),
    type: v.picklist(['diet break', 'higher-carbohydrate days', 'travel']),
    from: date,
    until: date,
    energyKcal: v.optional(numberIn(0, 10_000, 'kilocalories')),
    carbohydrateG: v.optional(numberIn(0, 2000, 'grams')),
    weekdays: v.optional(v.array(integerIn(1, 7))),
    cancelled: v.optional(v.boolean()),
  }),
  'correction-accepted': v.strictObject({
    from: date,
    energyKcal: v.optional(numberIn(-3000, 3000, 'kilocalories')),
    cardioKcal: v.optional(numberIn(-3000, 3000, 'kilocalories')),
    macro: v.optional(v.picklist(['carbohydrate', 'fat', 'both'])),
    days: v.optional(v.picklist(['every', 'training', 'rest'])),
    probabilityBefore: numberIn(0, 1),
    probabilityAfter: numberIn(0, 1),
    why: v.array(text(600)),
  }),
  /** The week looked at and decided upon. */
  'check-in-closed': v.strictObject({
    week: date,
    answers: v.strictObject({
      sleep: v.optional(score),
      hunger: v.optional(score),
      mood: v.optional(score),
      joints: v.optional(score),
      training: v.optional(score),
    }),
    decision: v.picklist(['hold', 'correct', 'more evidence']),
    evidence: v.array(text(600)),
    note: v.optional(text(2000)),
  }),
  'event-dated': v.strictObject({
    event: text(80),
    title: text(120),
    type: v.picklist([
      'posing practice',
      'tanning',
      'registration',
      'check-in',
      'travel',
      'rehearsal',
      'other',
    ]),
    date,
    at: v.optional(clock),
    minutes: v.optional(integerIn(1, 1440)),
    show: v.optional(text(80)),
    done: v.optional(v.boolean()),
  }),
};
