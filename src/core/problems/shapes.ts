import * as v from 'valibot';
import { parseClock } from '../units/clock.ts';
import { parseDate } from '../units/civil-date.ts';

/** Building blocks of request and journal schemas. Each message is a noun phrase: "Make it <message>". */

/** A finite number within closed bounds. */
export function numberIn(low: number, high: number, what = 'a number') {
  return v.pipe(
    v.number(`${what} from ${low} to ${high}`),
    v.minValue(low, `${what} from ${low} to ${high}`),
    v.maxValue(high, `${what} from ${low} to ${high}`),
    v.finite(`${what} from ${low} to ${high}`),
  );
}

/** A whole number within closed bounds. */
export function integerIn(low: number, high: number, what = 'a whole number') {
  return v.pipe(numberIn(low, high, what), v.integer(`${what} from ${low} to ${high}`));
}

export function text(maxLength: number, what = 'a text') {
  return v.pipe(
    v.string(`${what} of 1 to ${maxLength} characters`),
    v.minLength(1, `${what} of 1 to ${maxLength} characters`),
    v.maxLength(maxLength, `${what} of 1 to ${maxLength} characters`),
  );
}

const CLOCK_MESSAGE =
  'a clock time "HH:MM" of the prep day, "24:30" being half past midnight, at most "36:00"';

export const clock = v.pipe(
  v.string(CLOCK_MESSAGE),
  v.check((value) => parseClock(value) !== undefined, CLOCK_MESSAGE),
);

export const date = v.pipe(
  v.string('a date "YYYY-MM-DD"'),
  v.check((value) => parseDate(value) !== undefined, 'a date "YYYY-MM-DD" that is in the calendar'),
);

/** Nutrients of some amount of food; an absent optional value is unknown, never zero. */
export function nutrientsUpTo(energyKcal: number, gram: number, milligram: number) {
  const grams = numberIn(0, gram, 'grams');
  const milligrams = numberIn(0, milligram, 'milligrams');
  return v.strictObject({
    energyKcal: numberIn(0, energyKcal, 'kilocalories'),
    proteinG: grams,
    fatG: grams,
    carbohydrateG: grams,
    fibreG: v.optional(grams),
    sugarsG: v.optional(grams),
    saturatedFatG: v.optional(grams),
    sodiumMg: v.optional(milligrams),
    potassiumMg: v.optional(milligrams),
  });
}

/** Per 100 g: pure fat is 902 kcal by the largest factor in use, salt 38 758 mg of sodium. */
export const nutrientsPer100g = nutrientsUpTo(950, 100, 60_000);

export type Nutrients = v.InferOutput<typeof nutrientsPer100g>;
