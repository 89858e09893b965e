import { type Studied, withinStudied } from './studied-range.ts';

/** Speed in metres per minute and grade as a fraction (0.1 is 10 %). */
export interface Going {
  readonly metresPerMinute: number;
  readonly grade: number;
}

/**
 * Gross oxygen uptake of walking, mL per kg and minute: 3.5 + 0.1 S + 1.8 S G. Source key: acsm-2018.
 * 50 to 100 m/min (faster only if truly walking); grades up to 0.25 (common practice, no source).
 */
export function walkingCost({ metresPerMinute: s, grade }: Going): Studied<number> {
  return withinStudied(
    [
      { quantity: 'metresPerMinute', found: s, low: 50, high: 100 },
      { quantity: 'grade', found: grade, low: 0, high: 0.25 },
    ],
    () => 3.5 + 0.1 * s + 1.8 * s * grade,
  );
}
