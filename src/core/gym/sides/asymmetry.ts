/** How the two sides were tested: each alone, or both at once (two force plates, two dials). */
export type SideTest = 'one side at a time' | 'both at once';

/**
 * Percent by which the weaker side falls short, by the index that goes with the test (source key: bishop-2018): the
 * difference over the stronger side where each was tested alone, over the sum of both where they worked together. The
 * sign is that of right less left: above nought the right side is stronger. Both figures above nought.
 */
export function asymmetryPercent(left: number, right: number, test: SideTest): number {
  const whole = test === 'one side at a time' ? Math.max(left, right) : left + right;
  return (100 * (right - left)) / whole;
}

/** Symmetry index over the mean of both sides, percent (source key: robinson-1987). */
export function symmetryIndex(left: number, right: number): number {
  return (100 * (right - left)) / (0.5 * (right + left));
}

/** Symmetry angle, percent of a right angle (source key: zifchock-2008). */
export function symmetryAngle(weak: number, strong: number): number {
  return (100 * (45 - (Math.atan(weak / strong) * 180) / Math.PI)) / 90;
}
