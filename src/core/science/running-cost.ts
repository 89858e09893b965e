import { type Studied, withinStudied } from './studied-range.ts';
import type { Going } from './walking-cost.ts';

/**
 * Gross oxygen uptake of running, mL per kg and minute: 3.5 + 0.2 S + 0.9 S G. Source key: acsm-2018.
 * Above 134 m/min, or 80 when truly jogging (range from memory).
 */
export function runningCost({ metresPerMinute: s, grade }: Going): Studied<number> {
  return withinStudied(
    [
      { quantity: 'metresPerMinute', found: s, low: 80, high: 360 },
      { quantity: 'grade', found: grade, low: 0, high: 0.25 },
    ],
    () => 3.5 + 0.2 * s + 0.9 * s * grade,
  );
}
