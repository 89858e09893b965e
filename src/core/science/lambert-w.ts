/**
 * Principal branch of the Lambert W function for x >= 0: the w with w exp(w) = x. Halley's iteration from a
 * logarithmic start; for large x give the logarithm to `lambertWOfExp`, which does not overflow.
 * Source key: corless-1996.
 */
export function lambertW(x: number): number {
  if (x < 0) throw new RangeError('lambertW is asked for x >= 0 only');
  return x === 0 ? 0 : lambertWOfExp(Math.log(x));
}

/** W(exp(y)): solves w + ln w = y by Newton's iteration, w > 0. */
export function lambertWOfExp(y: number): number {
  let w = y > 1 ? y - Math.log(y) : Math.exp(Math.min(y, 0)) / (1 + Math.exp(Math.min(y, 0)));
  for (let i = 0; i < 60; i++) {
    const step = (w + Math.log(w) - y) / (1 + 1 / w);
    const next = w - step;
    w = next > 0 ? next : w / 2;
    if (Math.abs(step) <= 1e-15 * w) break;
  }
  return w;
}
