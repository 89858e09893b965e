import type { ExactMass } from './exact-mass.ts';

/** Plates of one mass; `count` is how many one side can have. */
export interface PlateKind {
  readonly mass: ExactMass;
  readonly count: number;
}

/** Every sum that one side can carry, and how few plates make it. */
export interface PlateSums {
  /** The reachable sum nearest to the wanted one; of two equally near the lower. */
  nearest(wanted: ExactMass): ExactMass;
  /** Fewest plates for exactly this sum, or undefined where no plates make it. */
  fewest(sum: ExactMass): number | undefined;
}

/** More different sums than this in one half are not laid out: a set of plates that nobody owns. */
export const MOST_SUMS = 400_000;

/**
 * Sums up to `upTo` of one side's plates. The kinds are dealt to two halves, each half's sums are laid out, and a sum
 * of the whole is a pair (meeting in the middle), so that kg and lb plates in one pile stay quick: kilogram sums
 * mostly coincide with one another, and so do pound sums, but not with each other. Undefined where there are too many.
 */
export function plateSums(kinds: readonly PlateKind[], upTo: ExactMass): PlateSums | undefined {
  let halves: readonly [Half, Half] = [new Map([[0, 0]]), new Map([[0, 0]])];
  for (const kind of kinds) {
    const [first, second] = halves;
    const firstGrown = withKind(first, kind, upTo);
    const secondGrown = withKind(second, kind, upTo);
    halves =
      firstGrown.size - first.size <= secondGrown.size - second.size
        ? [firstGrown, second]
        : [first, secondGrown];
    if (Math.max(halves[0].size, halves[1].size) > MOST_SUMS) return undefined;
  }
  const [small, large] = halves[0].size <= halves[1].size ? halves : [halves[1], halves[0]];
  return sumsOf(small, large);
}

/** Sum to the fewest plates that make it. */
type Half = ReadonlyMap<ExactMass, number>;

function withKind(half: Half, { mass, count }: PlateKind, upTo: ExactMass): Half {
  const grown = new Map(half);
  for (const [sum, plates] of half) {
    for (let n = 1; n <= count && sum + n * mass <= upTo; n++) {
      const known = grown.get(sum + n * mass);
      if (known === undefined || plates + n < known) grown.set(sum + n * mass, plates + n);
    }
  }
  return grown;
}

function sumsOf(small: Half, large: Half): PlateSums {
  const smallSums = [...small.keys()].sort((a, b) => a - b);
  const largeSums = [...large.keys()].sort((a, b) => b - a);
  const known = new Map<ExactMass, number | undefined>();
  function fewest(sum: ExactMass): number | undefined {
    if (known.has(sum)) return known.get(sum);
    let best: number | undefined;
    for (const [part, plates] of small) {
      const rest = large.get(sum - part);
      if (rest !== undefined && (best === undefined || plates + rest < best)) best = plates + rest;
    }
    known.set(sum, best);
    return best;
  }
  return { fewest, nearest: (wanted) => nearestPair(smallSums, largeSums, wanted) };
}

/** Two fingers, one going up and one going down, pass every pair that could be nearest. */
function nearestPair(ascending: readonly number[], descending: readonly number[], wanted: number): number {
  let best = 0;
  let at = 0;
  for (const low of ascending) {
    for (let high = descending[at]; high !== undefined; high = descending[at]) {
      best = nearer(best, low + high, wanted);
      if (low + high <= wanted) break;
      at += 1;
    }
  }
  return best;
}

function nearer(a: number, b: number, wanted: number): number {
  const [distanceA, distanceB] = [Math.abs(a - wanted), Math.abs(b - wanted)];
  return distanceB < distanceA || (distanceB === distanceA && b < a) ? b : a;
}
