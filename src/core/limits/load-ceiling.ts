import type { Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { narrow, openLimit, stepAtOrBelow, type Limit } from './limit.ts';
import { publishedLimits } from './published-limits.ts';

/** Most carbohydrate of a loading day, grams (LIM-21). */
export function loadCeiling(massKg: Kilograms): Limit {
  const { limit, maxGPerKg, source } = publishedLimits.load;
  const value = maxGPerKg * massKg;
  return narrow(openLimit('Carbohydrate', 'g', 'ceiling'), {
    limit,
    value,
    source,
    words: `No more than ${stepAtOrBelow(value, 5)} g of carbohydrate on a loading day: ${maxGPerKg} g for each of ${roundTo(massKg, 1)} kg, the dose of the trials, at which half had an upset gut.`,
  });
}
