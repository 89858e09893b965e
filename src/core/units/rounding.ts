/** Round to so many decimals, halves away from zero, never -0. */
export function roundTo(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const scaled = Math.abs(value) * scale;
  const rounded = (Math.sign(value) * Math.round(scaled + scaled * Number.EPSILON)) / scale;
  return rounded === 0 ? 0 : rounded;
}

export function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
