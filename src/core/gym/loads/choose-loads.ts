import type { ExactMass } from './exact-mass.ts';
import { movesBetween, movesOf, type Handling, type Stacks } from './fewest-moves.ts';
import type { PlateKind, PlateSums } from './plate-sums.ts';

/** What one side should carry before each warm-up, were every weight at hand, and what the top set carries. */
export interface WantedSums {
  readonly warmUps: readonly ExactMass[];
  readonly top: ExactMass;
  /** The top set's whole load on one side's scale: deviations are judged as a share of it. */
  readonly scale: ExactMass;
}

/** A warm-up this far off its ideal, as a share of the top set, is worth one plate moved on each side. */
const TOLERABLE_SHARE = 0.05;
/** Plates that a warm-up may borrow outside those that stay for the top set. */
const MOST_BORROWED = 2;
const MOST_CANDIDATES = 60;
const MOST_TOPS = 6;
const MOST_TOP_STEPS = 500;
/** A warm-up as heavy as the top set is none; two of the same load are one more than needed. */
const AS_HEAVY_AS_TOP = 50;
const SAME_AGAIN = 1.5;

interface Candidate {
  readonly stack: readonly number[];
  readonly sum: ExactMass;
  readonly off: number;
}

interface Path {
  readonly stacks: Stacks;
  readonly cost: number;
  readonly sum: ExactMass;
}

/**
 * Warm-up loads near their ideals that go on and off easily: the top set's plates go on in order, heaviest first, and
 * a warm-up may borrow up to two plates outside them. Among those the cheapest path is found exactly (dynamic
 * programming over the sets), weighing plates moved against distance from the ideal. Which loads are asked is a
 * matter of taste, decided here; the fewest moves for them are proven elsewhere.
 */
export function chooseLoads(wanted: WantedSums, kinds: readonly PlateKind[], pile: PlateSums): Handling {
  let best: Path | undefined;
  for (const top of topStacks(wanted.top, kinds, pile)) {
    const path = cheapestPath(wanted, kinds, top);
    if (!best || path.cost < best.cost) best = path;
  }
  const stacks = best?.stacks ?? [];
  return { stacks, moves: movesOf(stacks) };
}

/**
 * Loads whose handling needs no search to be the fewest: every warm-up carries some of the top set's own plates, in
 * order, so nothing ever comes off.
 */
export function chooseNestedLoads(
  wanted: WantedSums,
  kinds: readonly PlateKind[],
  pile: PlateSums,
): Handling {
  const [top = []] = topStacks(wanted.top, kinds, pile);
  const prefixes = [...top.keys()].map((plates) => candidate(top.slice(0, plates), kinds));
  let least = 0;
  const stacks: (readonly number[])[] = [];
  for (const ideal of wanted.warmUps) {
    const [nearest] = prefixes
      .filter(({ sum }) => sum >= least)
      .sort((a, b) => Math.abs(a.sum - ideal) - Math.abs(b.sum - ideal));
    least = nearest?.sum ?? least;
    stacks.push(nearest?.stack ?? top);
  }
  return { stacks: [...stacks, top], moves: top.length };
}

function candidate(stack: readonly number[], kinds: readonly PlateKind[]): Candidate {
  return { stack, sum: stack.reduce((sum, kind) => sum + (kinds[kind]?.mass ?? 0), 0), off: 0 };
}

/** Ways to make the top set with the fewest plates, heaviest inside: one for certain, a handful where easily found. */
function topStacks(
  top: ExactMass,
  kinds: readonly PlateKind[],
  pile: PlateSums,
): readonly (readonly number[])[] {
  const found = new Map<string, readonly number[]>();
  let steps = MOST_TOP_STEPS;
  const extend = (stack: readonly number[], kindFrom: number, left: number, rest: ExactMass): void => {
    steps -= 1;
    if (rest === 0 && left === 0) found.set(stack.join(), stack);
    if (steps < 0 || rest <= 0 || found.size >= MOST_TOPS || (pile.fewest(rest) ?? left + 1) > left) return;
    for (const [kind, { mass, count }] of kinds.entries()) {
      if (kind < kindFrom || mass > rest || countOf(stack, kind) >= count) continue;
      extend([...stack, kind], kind, left - 1, rest - mass);
    }
  };
  const certain = pile.make(top) ?? [];
  found.set(certain.join(), certain);
  extend([], 0, certain.length, top);
  return [...found.values()];
}

function countOf(stack: readonly number[], kind: number): number {
  return stack.filter((each) => each === kind).length;
}

function cheapestPath(wanted: WantedSums, kinds: readonly PlateKind[], top: readonly number[]): Path {
  const all = stacksAlong(top, kinds, wanted.top);
  const columns = wanted.warmUps.map((ideal) => nearestCandidates(all, ideal, wanted));
  let paths: readonly Path[] = [{ stacks: [], cost: 0, sum: 0 }];
  for (const column of [...columns, [candidate(top, kinds)]]) {
    paths = column.flatMap((next) => extendBest(paths, next));
  }
  return paths[0] ?? { stacks: [top], cost: Number.POSITIVE_INFINITY, sum: wanted.top };
}

/** The path that reaches a candidate most cheaply without loads falling, or none. */
function extendBest(paths: readonly Path[], { stack, sum, off }: Candidate): readonly Path[] {
  let best: Path | undefined;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const path of paths) {
    if (path.sum > sum) continue;
    const again = path.stacks.length > 0 && path.sum === sum ? SAME_AGAIN : 0;
    const cost = path.cost + off + again + movesBetween(path.stacks.at(-1) ?? [], stack);
    if (cost < bestCost) [best, bestCost] = [path, cost];
  }
  return best ? [{ stacks: [...best.stacks, stack], cost: bestCost, sum }] : [];
}

/** Every prefix of the top set's stack, alone and with borrowed plates outside it, none heavier than the top. */
function stacksAlong(
  top: readonly number[],
  kinds: readonly PlateKind[],
  heaviest: ExactMass,
): readonly Candidate[] {
  const found = new Map<string, Candidate>();
  for (let plates = 0; plates <= top.length; plates++) {
    const borrow = (stack: readonly number[], kindFrom: number): void => {
      const next = candidate(stack, kinds);
      if (next.sum > heaviest) return;
      found.set(stack.join(), next);
      if (stack.length >= plates + MOST_BORROWED) return;
      for (const [kind, { count }] of kinds.entries()) {
        if (kind >= kindFrom && countOf(stack, kind) < count) borrow([...stack, kind], kind);
      }
    };
    borrow(top.slice(0, plates), 0);
  }
  return [...found.values()];
}

/** The candidates nearest to an ideal; the empty implement and the top set's own plates stay in any case. */
function nearestCandidates(
  all: readonly Candidate[],
  ideal: ExactMass,
  wanted: WantedSums,
): readonly Candidate[] {
  const judged = all.map(({ stack, sum }) => {
    const off = farness(Math.abs(sum - ideal) / wanted.scale / TOLERABLE_SHARE);
    return { stack, sum, off: off + (sum >= wanted.top ? AS_HEAVY_AS_TOP : 0) };
  });
  const nearest = judged.toSorted((a, b) => a.off + a.stack.length / 4 - (b.off + b.stack.length / 4));
  const kept = new Set(nearest.slice(0, MOST_CANDIDATES));
  for (const each of judged) if (each.stack.length === 0 || each.sum === wanted.top) kept.add(each);
  return [...kept];
}

/** Grows with the square near the ideal and evenly beyond: far off, a little nearer is not worth a plate. */
function farness(tolerances: number): number {
  return tolerances <= 1.5 ? tolerances * tolerances : 3 * tolerances - 2.25;
}
