/** Maps a range of values onto a range of pixels. */
export interface LinearScale {
  (value: number): number;
  readonly domain: readonly [number, number];
  readonly range: readonly [number, number];
}

/** A straight scale. A domain without extent maps to the middle of the range. */
export function linearScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): LinearScale {
  const [from, to] = domain;
  const [start, end] = range;
  const slope = to === from ? 0 : (end - start) / (to - from);
  const origin = to === from ? (start + end) / 2 : start;
  return Object.assign((value: number) => origin + (value - from) * slope, { domain, range });
}

/** The domain that spans all values, widened by a share on both sides. Without values: 0 to 1. */
export function spanOf(values: readonly number[], widen: number): readonly [number, number] {
  if (values.length === 0) return [0, 1];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const margin = (high - low || Math.abs(high) || 1) * widen;
  return [low - margin, high + margin];
}
