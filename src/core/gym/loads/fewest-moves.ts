import type { ExactMass } from './exact-mass.ts';
import type { PlateKind, PlateSums } from './plate-sums.ts';

/** Plates on one side before each set, inside first, as indices into the kinds. */
export type Stacks = readonly (readonly number[])[];

export interface Handling {
  readonly stacks: Stacks;
  /** Plates of one side put on or taken off, from empty to the last set. */
  readonly moves: number;
}

/** `proven` false: the search used up its steps before it could prove that nothing better exists. */
export interface Search {
  readonly better: Handling | undefined;
  readonly proven: boolean;
}

/** Plates that stay on from set `from` to set `to`, and what happens outside them meanwhile. */
interface Layer {
  readonly from: number;
  readonly to: number;
  readonly plates: readonly number[];
  readonly outside: readonly Layer[];
  readonly cost: number;
}

/**
 * Handling of one side with fewer than `under` moves for the given sums (never falling), or proof that there is none.
 *
 * A plate can only come off when nothing is outside it, so the times during which plates are on are nested like
 * brackets. The fewest moves are therefore an interval programme: over some sets choose the plates that stay on
 * throughout, then cut the sets in two and do the same with each part outside them. A plate costs two moves, one when
 * it is still on at the last set. Bounds come from the fewest plates that make a sum with the whole pile; `maxSteps`
 * is a count, not a clock, so that the same request gives the same answer everywhere.
 */
export function searchFewerMoves(
  sums: readonly ExactMass[],
  kinds: readonly PlateKind[],
  pile: PlateSums,
  under: number,
  maxSteps: number,
): Search {
  const search = new LayerSearch(sums, kinds, pile, maxSteps);
  const layer = search.best(0, sums.length - 1, under - 1);
  const better = layer && { moves: layer.cost, stacks: stacksOf(layer, sums.length) };
  return { better, proven: !search.gaveUp };
}

/** No sequence of sets can be handled with fewer moves than this: the last set's plates must all go on. */
export function leastConceivableMoves(sums: readonly ExactMass[], pile: PlateSums): number {
  return pile.fewest(sums.at(-1) ?? 0) ?? 0;
}

class LayerSearch {
  readonly #sums: readonly ExactMass[];
  readonly #kinds: readonly PlateKind[];
  readonly #pile: PlateSums;
  readonly #left: number[];
  readonly #known = new Map<string, { readonly over: number; readonly layer: Layer | undefined }>();
  #base = 0;
  #steps: number;

  constructor(sums: readonly ExactMass[], kinds: readonly PlateKind[], pile: PlateSums, maxSteps: number) {
    this.#sums = sums;
    this.#kinds = kinds;
    this.#pile = pile;
    this.#left = kinds.map((kind) => kind.count);
    this.#steps = maxSteps;
  }

  get gaveUp(): boolean {
    return this.#steps < 0;
  }

  /** The cheapest layers over sets i to j outside what is on already, where they cost at most `budget`. */
  best(i: number, j: number, budget: number): Layer | undefined {
    if (this.#rest(j) === 0) return { from: i, to: j, plates: [], outside: [], cost: 0 };
    if (this.#atLeast(j) > budget) return undefined;
    const key = `${i},${j},${this.#left.join()}`;
    const known = this.#known.get(key);
    if (known?.layer) return known.layer.cost <= budget ? known.layer : undefined;
    if (known && known.over >= budget) return undefined;
    const layer = this.#rest(i) === this.#rest(j) ? this.#steady(i, j, budget) : this.#changing(i, j, budget);
    if (!this.gaveUp) this.#known.set(key, { over: budget, layer });
    return layer;
  }

  #rest(set: number): ExactMass {
    return (this.#sums[set] ?? 0) - this.#base;
  }

  #costOfPlate(j: number): number {
    return j === this.#sums.length - 1 ? 1 : 2;
  }

  /** Lower bound over any sets that end with j: its plates must go on, and off again unless it is the last. */
  #atLeast(j: number): number {
    return this.#costOfPlate(j) * (this.#pile.fewest(this.#rest(j)) ?? Number.POSITIVE_INFINITY);
  }

  #take(kind: number, sign: 1 | -1): void {
    this.#left[kind] = (this.#left[kind] ?? 0) - sign;
    this.#base += sign * (this.#kinds[kind]?.mass ?? 0);
  }

  /** All sets alike: the fewest plates that make the rest. */
  #steady(i: number, j: number, budget: number): Layer | undefined {
    const each = this.#costOfPlate(j);
    const most = Math.floor(budget / each);
    for (let plates = this.#pile.fewest(this.#rest(j)) ?? most + 1; plates <= most; plates++) {
      const found = this.#exactly(j, 0, plates);
      if (found) return { from: i, to: j, plates: found, outside: [], cost: plates * each };
    }
    return undefined;
  }

  #exactly(j: number, kindFrom: number, plates: number): number[] | undefined {
    const rest = this.#rest(j);
    if (rest === 0) return plates === 0 ? [] : undefined;
    const needed = this.#pile.fewest(rest);
    if (needed === undefined || needed > plates || this.#spent()) return undefined;
    for (let kind = kindFrom; kind < this.#kinds.length; kind++) {
      if (!this.#fits(kind, rest)) continue;
      this.#take(kind, 1);
      const more = this.#exactly(j, kind, plates - 1);
      this.#take(kind, -1);
      if (more) return [kind, ...more];
    }
    return undefined;
  }

  #fits(kind: number, rest: ExactMass): boolean {
    return (this.#left[kind] ?? 0) > 0 && (this.#kinds[kind]?.mass ?? Number.POSITIVE_INFINITY) <= rest;
  }

  #spent(): boolean {
    this.#steps -= 1;
    return this.gaveUp;
  }

  /** Sets differ: choose the plates that stay on over all of them, then cut. */
  #changing(i: number, j: number, budget: number): Layer | undefined {
    const each = this.#costOfPlate(j);
    let best: Layer | undefined;
    const within = (plates: number) => (best ? best.cost - 1 : budget) - each * plates;
    const grow = (kindFrom: number, plates: readonly number[]): void => {
      if (this.#spent()) return;
      const parts = this.#cut(i, j, within(plates.length));
      if (parts)
        best = { from: i, to: j, plates, outside: parts.outside, cost: parts.cost + each * plates.length };
      for (let kind = kindFrom; kind < this.#kinds.length; kind++) {
        if (!this.#fits(kind, this.#rest(i))) continue;
        this.#take(kind, 1);
        if (this.#atLeast(j) <= within(plates.length + 1)) grow(kind, [...plates, kind]);
        this.#take(kind, -1);
      }
    };
    grow(0, []);
    return best;
  }

  #cut(i: number, j: number, budget: number): { outside: readonly Layer[]; cost: number } | undefined {
    let best: { outside: readonly Layer[]; cost: number } | undefined;
    for (let last = i; last < j; last++) {
      const most = best ? best.cost - 1 : budget;
      const rightAtLeast = this.#atLeast(j);
      const left = this.best(i, last, most - rightAtLeast);
      const right = left && this.best(last + 1, j, most - left.cost);
      if (left && right) best = { outside: [left, right], cost: left.cost + right.cost };
    }
    return best;
  }
}

function stacksOf(layer: Layer, sets: number): Stacks {
  const stacks: number[][] = Array.from({ length: sets }, () => []);
  const lay = (each: Layer): void => {
    for (let set = each.from; set <= each.to; set++) stacks[set]?.push(...each.plates);
    for (const outside of each.outside) lay(outside);
  };
  lay(layer);
  return stacks;
}

/** Plates put on or taken off one side over a sequence of stacks, from empty on. */
export function movesOf(stacks: Stacks): number {
  let moves = 0;
  let before: readonly number[] = [];
  for (const stack of stacks) {
    moves += movesBetween(before, stack);
    before = stack;
  }
  return moves;
}

/** What lies outside the plates that both have in common, from the inside out, comes off and goes on. */
export function movesBetween(before: readonly number[], after: readonly number[]): number {
  let common = 0;
  while (common < before.length && common < after.length && before[common] === after[common]) common += 1;
  return before.length + after.length - 2 * common;
}
