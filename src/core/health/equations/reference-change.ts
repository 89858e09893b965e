import type { Percent } from '#core/units/quantities.ts';

/**
 * Reference change value: how far two results of one person must lie apart before the difference is more than the
 * person's own wandering and the laboratory's counting.
 *
 * RCV = sqrt(2) * Z * sqrt(CVA^2 + CVI^2), percent; Z 1.96 (two-sided, 95 %). Source: fraser-1989.
 * For skewed analytes sigma = sqrt(ln(1 + CV^2)) and the limits are exp(+-Z sqrt(2) sigma) - 1: a rise may be larger
 * than a fall before it counts.
 */
const Z_TWO_SIDED_95 = 1.96;

export interface ReferenceChange {
  readonly rcvPercent: Percent;
  readonly logUpPercent: Percent;
  readonly logDownPercent: Percent;
}

export function referenceChange(analyticalPercent: Percent, withinPersonPercent: Percent): ReferenceChange {
  const cv = Math.hypot(analyticalPercent, withinPersonPercent);
  const sigma = Math.sqrt(Math.log(1 + (cv / 100) ** 2));
  const spread = Math.SQRT2 * Z_TWO_SIDED_95;
  return {
    rcvPercent: spread * cv,
    logUpPercent: (Math.exp(spread * sigma) - 1) * 100,
    logDownPercent: (Math.exp(-spread * sigma) - 1) * 100,
  };
}
