import { roundTo } from '#core/units/rounding.ts';

/** The largest step of 1, 2 or 5 times a power of ten that leaves at least `wanted` intervals, or nearly so. */
export function niceStep(extent: number, wanted: number): number {
  const rough = extent / Math.max(1, wanted);
  const power = 10 ** Math.floor(Math.log10(rough));
  const lead = rough / power;
  return (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10) * power;
}

/** Round values within the domain, about `wanted` of them. */
export function niceTicks(domain: readonly [number, number], wanted: number): readonly number[] {
  const [from, to] = domain;
  if (!(to > from)) return [from];
  const step = niceStep(to - from, wanted);
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_unused, index) =>
    roundTo((first + index) * step, decimals),
  );
}

/** Decimals that tell the ticks apart. */
export function tickDecimals(ticks: readonly number[]): number {
  const [first = 0, second = first + 1] = ticks;
  return Math.max(0, -Math.floor(Math.log10(Math.abs(second - first)) + 1e-9));
}

/**
 * Mondays (ISO 8601 week starts) within a range of day numbers, every first, second, fourth or eighth week so that
 * at most `most` stand. Day number 0 is a Thursday, so Mondays are 4 modulo 7.
 */
export function weekTicks(domain: readonly [number, number], most: number): readonly number[] {
  const first = Math.ceil((domain[0] - 4) / 7) * 7 + 4;
  const weeks = Math.floor((domain[1] - first) / 7) + 1;
  const every = [1, 2, 4, 8, 13, 26, 52].find((step) => Math.ceil(weeks / step) <= most) ?? 104;
  return Array.from(
    { length: Math.max(0, Math.ceil(weeks / every)) },
    (_unused, index) => first + index * every * 7,
  );
}
