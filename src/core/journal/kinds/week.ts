import * as v from 'valibot';
import { date, integerIn, numberIn, text } from '../../problems/shapes.ts';

const id = text(80, 'a name of this thing');
const positiveGrams = numberIn(0.1, 100_000, 'grams');
const portions = integerIn(1, 200, 'portions');

export const weekKinds = {
  /** How a week is to be planned; the newest stands. Absent fields: the tool's own habit. */
  'week-wished': v.strictObject({
    days: v.optional(integerIn(1, 14)),
    portionsPerDay: v.optional(v.strictObject({ min: integerIn(0, 12), max: integerIn(1, 12) })),
    sameDishPerDay: v.optional(integerIn(1, 12)),
    wantedDishes: v.optional(integerIn(1, 14)),
    toleratedPortions: v.optional(integerIn(1, 60)),
    /** Days of the week one may cook on, 1 Monday to 7 Sunday. */
    cookWeekdays: v.optional(v.array(integerIn(1, 7))),
    pansPerCookDay: v.optional(integerIn(1, 6)),
    freezer: v.optional(v.boolean()),
    /** Recipes that may be cooked; absent: all. */
    recipes: v.optional(v.array(id)),
  }),
  /** A week as planned and adopted; the newest stands. */
  'week-adopted': v.strictObject({
    week: id,
    days: v.pipe(
      v.array(
        v.strictObject({
          date,
          target: v.strictObject({
            proteinG: numberIn(0, 1000),
            carbohydrateG: numberIn(0, 2000),
            fatG: numberIn(0, 600),
            fibreG: numberIn(0, 200),
          }),
          dishes: v.array(
            v.variant('from', [
              v.strictObject({
                from: v.literal('pan'),
                recipe: id,
                cookedOn: date,
                portions,
                frozen: v.boolean(),
              }),
              v.strictObject({ from: v.literal('ready'), batch: id, portions }),
            ]),
          ),
          foods: v.array(v.strictObject({ food: id, grams: positiveGrams })),
        }),
      ),
      v.minLength(1),
      v.maxLength(14),
    ),
    pans: v.array(v.strictObject({ date, recipe: id, portions })),
    cost: numberIn(0, 1e9),
    gap: numberIn(0, 1),
    why: v.array(text(400)),
  }),
  /** A week solved again was left aside: what had changed by then is known, and the plan stands with it. */
  'week-kept': v.strictObject({ week: id, because: v.array(text(400)) }),
  /** How a food is sold: the pack is what the shopping list rounds up to. */
  'pack-known': v.strictObject({
    food: id,
    packG: positiveGrams,
    priceCents: v.optional(integerIn(0, 10_000_000)),
    aisle: v.optional(text(60)),
  }),
};
