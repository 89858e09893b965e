/** A point on the paper, in pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

const px = (value: number): string => String(Number(value.toFixed(2)) + 0);
const at = (spot: Spot): string => `${px(spot.x)} ${px(spot.y)}`;

/** Straight strokes from point to point. */
export function linePath(spots: readonly Spot[]): string {
  return spots.map((spot, index) => `${index === 0 ? 'M' : 'L'}${at(spot)}`).join('');
}

/** The area between two edges over the same x. */
export function bandPath(low: readonly Spot[], high: readonly Spot[]): string {
  if (low.length === 0 || high.length === 0) return '';
  return `${linePath([...high, ...low.toReversed()])}Z`;
}

/**
 * A smooth curve that never rises or falls where the points do not (monotone cubic interpolation; F. N. Fritsch and
 * R. E. Carlson, "Monotone Piecewise Cubic Interpolation", SIAM J. Numer. Anal. 17, 1980, 238-246). x must ascend.
 */
export function monotonePath(spots: readonly Spot[]): string {
  const [first] = spots;
  if (spots.length < 3 || !first) return linePath(spots);
  const slopes = tangents(spots);
  let path = `M${at(first)}`;
  for (let i = 1; i < spots.length; i++) {
    const [from, to] = [spots[i - 1], spots[i]];
    if (!from || !to) continue;
    const third = (to.x - from.x) / 3;
    const leave = { x: from.x + third, y: from.y + third * (slopes[i - 1] ?? 0) };
    const arrive = { x: to.x - third, y: to.y - third * (slopes[i] ?? 0) };
    path += `C${at(leave)} ${at(arrive)} ${at(to)}`;
  }
  return path;
}

/** Slopes at the points: the mean of both sides, flat at a turn, and held within three times the lesser side. */
function tangents(spots: readonly Spot[]): readonly number[] {
  const sides = spots.slice(1).map((spot, index) => {
    const from = spots[index] ?? spot;
    return spot.x === from.x ? 0 : (spot.y - from.y) / (spot.x - from.x);
  });
  return spots.map((_spot, index) => {
    const before = sides[index - 1] ?? sides[index] ?? 0;
    const after = sides[index] ?? before;
    if (before * after <= 0) return 0;
    const most = 3 * Math.min(Math.abs(before), Math.abs(after));
    return Math.sign(before) * Math.min(Math.abs((before + after) / 2), most);
  });
}

/** Index of the value nearest to `wanted` in ascending values, or -1 where there is none. The lower on a tie. */
export function nearestIndex(ascending: readonly number[], wanted: number): number {
  let best = -1;
  let distance = Number.POSITIVE_INFINITY;
  ascending.forEach((value, index) => {
    const away = Math.abs(value - wanted);
    if (away < distance) [best, distance] = [index, away];
  });
  return best;
}
