import * as v from 'valibot';
import {
  clock,
  date,
  integerIn,
  numberIn,
  nutrientsPer100g,
  nutrientsUpTo,
  text,
} from '../problems/shapes.ts';

const grams = numberIn(0, 5000, 'grams');
const foodId = text(120, 'the id of a food');
const minutes = (high: number) => integerIn(0, high, 'whole minutes');

/** A meal eaten out: nutrients guessed, and how far off the guess may be either way. */
const guess = v.strictObject({
  name: v.optional(text(120, 'a name')),
  nutrients: nutrientsUpTo(10_000, 2000, 60_000),
  spreadPercent: v.optional(numberIn(0, 100, 'percent'), 25),
});

const weighed = v.strictObject({ food: foodId, grams });

const rules = v.strictObject({
  meals: v.optional(
    v.strictObject({
      min: v.optional(integerIn(1, 12, 'a count of meals'), 3),
      max: v.optional(integerIn(1, 12, 'a count of meals'), 5),
    }),
    {},
  ),
  minGapMinutes: v.optional(minutes(720), 150),
  mealToTrainingMinutes: v.optional(minutes(600), 60),
  lastMealToSleepMinutes: v.optional(minutes(600), 30),
  maxFoodsPerMeal: v.optional(integerIn(1, 20, 'a count of foods'), 5),
  fatBeforeTrainingMaxG: v.optional(numberIn(0, 500, 'grams'), 15),
});

/**
 * A food that may be planned. Beyond the contract, all off unless asked for: `portionsG` lists packed portions, each eaten whole
 * or not at all (one weight on a plate); `asked` wants it somewhere today; `banned` keeps it off today's plates;
 * `dislike` adds to (below zero: takes from) the price of putting it on a plate, in kcal of mistake.
 */
const food = v.strictObject({
  id: foodId,
  per100g: nutrientsPer100g,
  minG: numberIn(0, 5000, 'grams'),
  maxG: numberIn(0, 5000, 'grams'),
  unitG: v.optional(numberIn(0.1, 5000, 'grams')),
  availableG: v.optional(numberIn(0, 1_000_000, 'grams')),
  portionsG: v.optional(v.pipe(v.array(numberIn(1, 5000, 'grams')), v.maxLength(40, 'at most 40 portions'))),
  asked: v.optional(v.boolean(), false),
  banned: v.optional(v.boolean(), false),
  dislike: v.optional(numberIn(-5, 100, 'kcal of mistake'), 0),
});

/** One line of `stagewright day`. */
export const dayRequest = v.strictObject({
  date,
  now: v.optional(clock),
  athlete: v.strictObject({ massKg: numberIn(25, 350, 'kilograms') }),
  targets: v.strictObject({
    proteinG: numberIn(0, 1000, 'grams'),
    carbohydrateG: numberIn(0, 2500, 'grams'),
    fatG: numberIn(0, 1000, 'grams'),
    fibreG: v.optional(v.strictObject({ min: numberIn(0, 200, 'grams') })),
    sodiumMg: v.optional(v.strictObject({ max: numberIn(0, 50_000, 'milligrams') })),
  }),
  events: v.strictObject({
    wake: clock,
    sleep: clock,
    training: v.optional(v.strictObject({ start: clock, minutes: integerIn(1, 720, 'whole minutes') })),
  }),
  rules: v.optional(rules, {}),
  eaten: v.array(v.strictObject({ at: clock, items: v.array(v.union([weighed, guess])) })),
  foods: v.pipe(v.array(food), v.maxLength(400, 'at most 400 foods')),
  budgetMs: v.optional(numberIn(1, 600_000, 'milliseconds'), 250),
  /** Beyond the contract: planned meals that keep their time and their grams, whatever else changes. */
  pinned: v.optional(
    v.array(
      v.strictObject({
        at: clock,
        items: v.pipe(v.array(weighed), v.minLength(1, 'at least one food on the plate')),
      }),
    ),
    [],
  ),
  /** Beyond the contract: the planned meal nearest to `at` carries this food, in these grams where they are given. */
  fixed: v.optional(
    v.array(v.strictObject({ at: clock, food: foodId, grams: v.optional(numberIn(0.1, 5000, 'grams')) })),
    [],
  ),
});

export type DayRequest = v.InferOutput<typeof dayRequest>;
export type RequestFood = DayRequest['foods'][number];
