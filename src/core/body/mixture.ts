import { roundTo } from '#core/units/rounding.ts';
import type { Believed, Foretold } from './estimate-request.ts';

/** What one member believes of a quantity, and the member's share of belief. */
export interface Part {
  readonly weight: number;
  readonly mean: number;
  readonly variance: number;
}

/** Normal quantile of 0.95. */
const Q95 = 1.6448536269514722;

/** Mean and standard deviation of a mixture: the spread within the members and that between them. */
export function believedOf(parts: readonly Part[], decimals: number): Believed {
  const { mean, sd } = momentsOf(parts);
  return { mean: roundTo(mean, decimals), sd: roundTo(sd, decimals) };
}

/** Mean with the 5 and 95 % quantiles of a normal of the mixture's own moments. */
export function foretoldOf(parts: readonly Part[], decimals: number): Foretold {
  const { mean, sd } = momentsOf(parts);
  return {
    mean: roundTo(mean, decimals),
    q05: roundTo(mean - Q95 * sd, decimals),
    q95: roundTo(mean + Q95 * sd, decimals),
  };
}

function momentsOf(parts: readonly Part[]): { mean: number; sd: number } {
  let mean = 0;
  for (const part of parts) mean += part.weight * part.mean;
  let variance = 0;
  for (const part of parts) variance += part.weight * (part.variance + (part.mean - mean) ** 2);
  return { mean, sd: Math.sqrt(variance) };
}

/** Weights that add to 1 from logarithms of any size. */
export function normalized(logWeights: readonly number[]): number[] {
  const most = Math.max(...logWeights);
  const raw = logWeights.map((value) => Math.exp(value - most));
  const sum = raw.reduce((total, value) => total + value, 0);
  return raw.map((value) => value / sum);
}
