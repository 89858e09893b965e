import * as v from 'valibot';
import { clock, date, integerIn, numberIn, text } from '../../problems/shapes.ts';
import { plateItem } from './plate-item.ts';

const id = text(80, 'a name of this thing');
const positiveGrams = numberIn(0.1, 100_000, 'grams');

export const dayKinds = {
  /** Targets of one day, or from a day on for every day of its kind. Entered by hand or set by the course. */
  'target-set': v.strictObject({
    from: date,
    /** Absent: stands until the next one. */
    until: v.optional(date),
    dayKind: v.picklist(['every', 'training', 'rest', 'higher-carbohydrate']),
    basis: v.picklist(['entered', 'course']),
    proteinG: numberIn(0, 1000, 'grams'),
    carbohydrateG: numberIn(0, 2000, 'grams'),
    fatG: numberIn(0, 600, 'grams'),
    fibreMinG: v.optional(numberIn(0, 200, 'grams')),
    /** While loading before a show: little, for the gut. */
    fibreMaxG: v.optional(numberIn(0, 200, 'grams')),
    sodiumMaxMg: v.optional(numberIn(0, 30_000, 'milligrams')),
    cardioKcal: v.optional(numberIn(0, 5000, 'kilocalories')),
    /** What is to be drunk: near habit, never cut. */
    waterMl: v.optional(integerIn(0, 20_000, 'millilitres')),
  }),
  /** Wake, sleep, training, cardio: of this day ("day") or as usual on some weekdays (1 Monday to 7 Sunday). */
  'day-shaped': v.strictObject({
    scope: v.variant('of', [
      v.strictObject({ of: v.literal('day') }),
      v.strictObject({ of: v.literal('usual'), weekdays: v.array(integerIn(1, 7)) }),
    ]),
    wake: clock,
    sleep: clock,
    training: v.optional(
      v.strictObject({
        start: clock,
        minutes: integerIn(1, 600),
        title: v.optional(text(80)),
        template: v.optional(id),
      }),
    ),
    cardio: v.optional(
      v.array(
        v.strictObject({
          start: clock,
          minutes: integerIn(1, 600),
          activity: text(80),
          beforeFood: v.boolean(),
        }),
      ),
    ),
    meals: v.optional(v.strictObject({ min: integerIn(1, 12), max: integerIn(1, 12) })),
    minGapMinutes: v.optional(integerIn(0, 720)),
    mealToTrainingMinutes: v.optional(integerIn(0, 600)),
    lastMealToSleepMinutes: v.optional(integerIn(0, 600)),
    maxFoodsPerMeal: v.optional(integerIn(1, 20)),
    fatBeforeTrainingMaxG: v.optional(numberIn(0, 200)),
    dayKind: v.optional(v.picklist(['training', 'rest', 'higher-carbohydrate'])),
  }),
  /** Wishes for this day's plan: foods asked for, banned, or fixed in a meal; absent fields change nothing. */
  'plan-wished': v.strictObject({
    asked: v.optional(v.array(id)),
    banned: v.optional(v.array(id)),
    fixed: v.optional(v.array(v.strictObject({ at: clock, food: id, grams: positiveGrams }))),
  }),
  /** The run sheet's meals as planned and adopted; the newest of the day counts. */
  'plan-adopted': v.strictObject({
    now: v.optional(clock),
    cause: v.picklist([
      'morning',
      'running late',
      'food ran out',
      'training moved',
      'eaten differently',
      'meal skipped',
      'wish',
      'asked',
      'show day',
      'stage moved',
    ]),
    meals: v.array(
      v.strictObject({
        slot: id,
        at: clock,
        role: v.picklist(['before-training', 'after-training', 'away']),
        target: v.strictObject({
          proteinG: numberIn(0, 2000),
          carbohydrateG: numberIn(0, 4000),
          fatG: numberIn(0, 1000),
        }),
        items: v.array(plateItem),
        pinned: v.boolean(),
      }),
    ),
    cost: numberIn(0, 1e9),
    gap: numberIn(0, 1e9),
  }),
  /** A meal as it was really eaten. `slot` names the planned meal it stands for. */
  'meal-eaten': v.strictObject({
    slot: v.optional(id),
    items: v.pipe(v.array(plateItem), v.minLength(1)),
    place: v.optional(text(80)),
  }),
  'meal-skipped': v.strictObject({ slot: id, reason: v.optional(text(200)) }),
  'water-drunk': v.strictObject({
    drink: text(80),
    millilitres: integerIn(1, 10_000),
    caffeineMg: v.optional(numberIn(0, 2000, 'milligrams')),
  }),
};
