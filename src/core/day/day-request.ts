import * as v from 'valibot';
import {
  clock,
  date,
  integerIn,
  type Nutrients,
  numberIn,
  nutrientsPer100g,
  nutrientsUpTo,
  text,
} from '../problems/shapes.ts';

const grams = numberIn(0, 5000, 'grams');
const foodId = text(120, 'the id of a food');
const minutes = (high: number) => integerIn(0, high, 'whole minutes');

const weighed = v.strictObject({ food: foodId, grams });

/** How far off a guess is where its spread is not given (common practice, no source). */
const SPREAD_PERCENT = 25;

export type WeighedItem = v.InferOutput<typeof weighed>;
/** Something eaten out: nutrients guessed, and how far off the guess may be either way. */
export interface GuessedItem {
  readonly name?: string | undefined;
  readonly nutrients: Nutrients;
  readonly spreadPercent: number;
}

/** A food and its grams, or (beyond the contract) the nutrients of a guess. One object, so that a typo is named and not the union. */
const eatenItem = v.pipe(
  v.strictObject({
    food: v.optional(foodId),
    grams: v.optional(grams),
    name: v.optional(text(120, 'a name')),
    nutrients: v.optional(nutrientsUpTo(10_000, 2000, 60_000)),
    spreadPercent: v.optional(numberIn(0, 100, 'percent')),
  }),
  v.rawTransform(({ dataset, addIssue, NEVER }): WeighedItem | GuessedItem => {
    const item = dataset.value;
    const { food, grams: weight, name, nutrients, spreadPercent } = item;
    const missing = (key: 'food' | 'grams', message: string): typeof NEVER => {
      const path = [{ type: 'object', origin: 'value', input: item, key, value: undefined }] as const;
      addIssue({ message, received: 'undefined', path: [...path] });
      return NEVER;
    };
    if (nutrients && food === undefined && weight === undefined) {
      return { name, nutrients, spreadPercent: spreadPercent ?? SPREAD_PERCENT };
    }
    if (nutrients || name !== undefined || spreadPercent !== undefined) {
      addIssue({ message: 'either a food and its grams, or the nutrients of a guess' });
      return NEVER;
    }
    if (food === undefined) return missing('food', 'the id of a food, or the nutrients of a guess');
    if (weight === undefined) return missing('grams', 'grams from 0 to 5000');
    return { food, grams: weight };
  }),
);

const rules = v.strictObject({
  /** Absent: 3 to 5; where only one is given, the other gives way to it. */
  meals: v.optional(
    v.strictObject({
      min: v.optional(integerIn(1, 12, 'a count of meals')),
      max: v.optional(integerIn(1, 12, 'a count of meals')),
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
  eaten: v.array(v.strictObject({ at: clock, items: v.array(eatenItem) })),
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
