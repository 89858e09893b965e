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
  /** One choice of the fewest plates for exactly this sum, as indices into the kinds, in their order. */
  make(sum: ExactMass): readonly number[] | undefined;
}

/** More different sums than this in one half are not laid out: a set of plates that nobody owns. */
export const MOST_SUMS = 200_000;

/**
 * Sums up to `upTo` of one side's plates. The kinds are dealt to two halves, each half's sums are laid out, and a sum
 * of the whole is a pair (meeting in the middle), so that kg and lb plates in one pile stay quick: kilogram sums
 * mostly coincide with one another, and so do pound sums, but not with each other. Undefined where there are too many.
 */
export function plateSums(kinds: readonly PlateKind[], upTo: ExactMass): PlateSums | undefined {
  const nothing: Half = new Map([[0, { plates: 0, kind: 0, taken: 0, before: undefined }]]);
  let [first, second] = [nothing, nothing];
  for (const [index, kind] of kinds.entries()) {
    const firstGrown = withKind(first, kind, index, upTo);
    const secondGrown = withKind(second, kind, index, upTo);
    if (firstGrown.size - first.size <= secondGrown.size - second.size) first = firstGrown;
    else second = secondGrown;
    if (Math.max(first.size, second.size) > MOST_SUMS) return undefined;
  }
  return first.size <= second.size ? sumsOf(first, second) : sumsOf(second, first);
}

/** A sum in a half: the fewest plates that make it, and the plates of the last kind taken onto the sum before. */
interface Part {
  readonly plates: number;
  readonly kind: number;
  readonly taken: number;
  readonly before: Part | undefined;
}
type Half = ReadonlyMap<ExactMass, Part>;

function withKind(half: Half, { mass, count }: PlateKind, kind: number, upTo: ExactMass): Half {
  const grown = new Map(half);
  for (const [sum, before] of half) {
    for (let taken = 1; taken <= count && sum + taken * mass <= upTo; taken++) {
      const plates = before.plates + taken;
      const known = grown.get(sum + taken * mass);
      if (!known || plates < known.plates) grown.set(sum + taken * mass, { plates, kind, taken, before });
    }
    if (grown.size > MOST_SUMS) return grown;
  }
  return grown;
}

interface Pair {
  readonly plates: number;
  readonly parts: readonly [Part, Part];
}

function sumsOf(small: Half, large: Half): PlateSums {
  const smallSums = [...small.keys()].sort((a, b) => a - b);
  const largeSums = [...large.keys()].sort((a, b) => b - a);
  const known = new Map<ExactMass, Pair | undefined>();
  function pairFor(sum: ExactMass): Pair | undefined {
    if (known.has(sum)) return known.get(sum);
    let best: Pair | undefined;
    for (const [part, one] of small) {
      const other = large.get(sum - part);
      const plates = one.plates + (other?.plates ?? 0);
      if (other && (!best || plates < best.plates)) best = { plates, parts: [one, other] };
    }
    known.set(sum, best);
    return best;
  }
  return {
    nearest: (wanted) => nearestPair(smallSums, largeSums, wanted),
    fewest: (sum) => pairFor(sum)?.plates,
    make: (sum) =>
      pairFor(sum)
        ?.parts.flatMap(kindsIn)
        .sort((a, b) => a - b),
  };
}

function kindsIn(part: Part): number[] {
  const found: number[] = [];
  for (let at: Part | undefined = part; at; at = at.before) {
    for (let n = 0; n < at.taken; n++) found.push(at.kind);
  }
  return found;
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
