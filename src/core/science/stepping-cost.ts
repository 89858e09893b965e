import type { Metres } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/**
 * Gross oxygen uptake of stepping, mL per kg and minute: 3.5 + 0.2 f + 1.33 x 1.8 x H f (f steps per minute, H height of
 * the step, m). Source key: acsm-2018. 12 to 30 steps per minute, 0.04 to 0.40 m (range from memory).
 */
export function steppingCost(stepsPerMinute: number, heightM: Metres): Studied<number> {
  return withinStudied(
    [
      { quantity: 'stepsPerMinute', found: stepsPerMinute, low: 12, high: 30 },
      { quantity: 'heightM', found: heightM, low: 0.04, high: 0.4 },
    ],
    () => 3.5 + 0.2 * stepsPerMinute + 1.33 * 1.8 * heightM * stepsPerMinute,
  );
}
