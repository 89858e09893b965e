import { roundTo } from '#core/units/rounding.ts';

/** What a spread of paths comes to. */
export interface Spread {
  readonly mean: number;
  readonly q05: number;
  readonly q95: number;
}

/** Mean, 5 % and 95 % of values; quantiles by linear interpolation (type 7 of Hyndman and Fan 1996). */
export function spreadOf(values: Float64Array, decimals: number): Spread {
  const sorted = values.slice().sort();
  return {
    mean: roundTo(meanOf(values), decimals),
    q05: roundTo(quantileOf(sorted, 0.05), decimals),
    q95: roundTo(quantileOf(sorted, 0.95), decimals),
  };
}

export function meanOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return values.length === 0 ? 0 : sum / values.length;
}

/** A quantile of values already sorted. */
export function quantileOf(sorted: Float64Array, share: number): number {
  const at = (sorted.length - 1) * share;
  const below = Math.floor(at);
  const low = sorted[below] ?? 0;
  const high = sorted[Math.min(sorted.length - 1, below + 1)] ?? low;
  return low + (at - below) * (high - low);
}

export function standardDeviationOf(values: Float64Array): number {
  const mean = meanOf(values);
  let sum = 0;
  for (const value of values) sum += (value - mean) * (value - mean);
  return values.length < 2 ? 0 : Math.sqrt(sum / (values.length - 1));
}
