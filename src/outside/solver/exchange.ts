import type { PiecewiseProgram } from './piecewise-program.ts';
import type { WholePlate } from './whole-plates.ts';

/** One whole plate per meal, and what the day then costs. */
export interface WholeDay {
  readonly plates: readonly WholePlate[];
  readonly cost: number;
}

/** So many of each meal's plates take part when two meals change at once. */
const IN_PAIRS = 60;

/**
 * Chooses one plate per meal from lists of them (cheapest at some prices first): one meal at a time, then two at a time, is given the
 * plates that make the day cheapest, until no change helps. `start`: a place in each list.
 */
export class Exchange {
  work = 0;
  readonly #joint: PiecewiseProgram;
  readonly #sums: Float64Array;
  #lists: readonly (readonly WholePlate[])[] = [];
  #at: number[] = [];
  #plates = 0;
  #rest: readonly number[] = [];
  #best: readonly number[] = [];
  #nodesLeft = 0;
  #cost = 0;

  constructor(joint: PiecewiseProgram) {
    this.#joint = joint;
    this.#sums = new Float64Array(joint.rows);
  }

  run(lists: readonly (readonly WholePlate[])[], start: readonly number[]): WholeDay {
    this.#lists = lists;
    this.#at = [...start];
    this.#sums.fill(0);
    this.#plates = 0;
    for (const m of lists.keys()) this.#put(m, 1);
    this.#cost = this.#dayCost();
    for (;;) {
      while (this.#improveOne());
      if (!this.#improveTwo()) break;
    }
    return { plates: lists.map((list, m) => plateAt(list, this.#at[m])), cost: this.#cost };
  }

  /**
   * Goes on from the last `run`, when its lists are cheapest first at the prices of a linear programme whose `constant` and plates'
   * values add up to no more than any day costs: looks at every choice of plates that this leaves, within `mostNodes`.
   */
  deepen(constant: number, mostNodes: number): WholeDay {
    const rest = [0];
    for (const list of this.#lists.toReversed()) rest.unshift((rest[0] ?? 0) + (list[0]?.value ?? 0));
    this.#rest = rest;
    this.#nodesLeft = mostNodes;
    this.#sums.fill(0);
    this.#plates = 0;
    this.#best = [...this.#at];
    this.#descend(0, constant);
    this.work += (mostNodes - this.#nodesLeft) * 4 * this.#sums.length;
    return { plates: this.#lists.map((list, m) => plateAt(list, this.#best[m])), cost: this.#cost };
  }

  #descend(m: number, bound: number): void {
    const list = this.#lists[m];
    if (list === undefined) {
      const cost = this.#dayCost();
      if (cost < this.#cost - 1e-9) {
        this.#cost = cost;
        this.#best = [...this.#at];
      }
      return;
    }
    for (let i = 0; i < list.length && this.#nodesLeft > 0; i++) {
      const then = bound + plateAt(list, i).value;
      if (then + (this.#rest[m + 1] ?? 0) >= this.#cost) return;
      this.#nodesLeft -= 1;
      this.#at[m] = i;
      this.#put(m, 1);
      this.#descend(m + 1, then);
      this.#at[m] = i;
      this.#put(m, -1);
    }
  }

  #put(m: number, sign: 1 | -1): void {
    const plate = plateAt(this.#lists[m] ?? [], this.#at[m]);
    for (let k = 0; k < this.#sums.length; k++) {
      this.#sums[k] = (this.#sums[k] ?? 0) + sign * (plate.sums[k] ?? 0);
    }
    this.#plates += sign * plate.cost;
  }

  #dayCost(): number {
    let cost = this.#plates;
    for (let k = 0; k < this.#sums.length; k++) cost += this.#joint.rowCost(k, this.#sums[k] ?? 0);
    return cost;
  }

  #improveOne(): boolean {
    let better = false;
    for (const m of this.#lists.keys()) {
      this.#put(m, -1);
      const chosen = this.#bestFor(m, Number.POSITIVE_INFINITY);
      if (chosen >= 0) {
        this.#at[m] = chosen;
        better = true;
      }
      this.#put(m, 1);
    }
    return better;
  }

  /** With meal m's plate taken out: the place of the plate that makes the day cheaper than it is, or -1. */
  #bestFor(m: number, most: number): number {
    const list = this.#lists[m] ?? [];
    const end = Math.min(most, list.length);
    let best = -1;
    let looked = 0;
    for (let i = 0; i < end; i++) {
      const plate = plateAt(list, i);
      let cost = this.#plates + plate.cost;
      let k = 0;
      for (; k < this.#sums.length && cost < this.#cost; k++) {
        cost += this.#joint.rowCost(k, (this.#sums[k] ?? 0) + (plate.sums[k] ?? 0));
      }
      looked += k;
      if (cost < this.#cost - 1e-9) {
        this.#cost = cost;
        best = i;
      }
    }
    this.work += 8 * looked;
    return best;
  }

  #improveTwo(): boolean {
    let better = false;
    const meals = this.#lists.length;
    for (let a = 0; a < meals; a++) {
      for (let b = a + 1; b < meals; b++) if (this.#improvePair(a, b)) better = true;
    }
    return better;
  }

  #improvePair(a: number, b: number): boolean {
    const before = this.#at[a] ?? 0;
    let chosen: readonly [number, number] | undefined;
    this.#put(a, -1);
    this.#put(b, -1);
    const end = Math.min(IN_PAIRS, this.#lists[a]?.length ?? 0);
    for (let i = 0; i < end; i++) {
      this.#at[a] = i;
      this.#put(a, 1);
      const j = this.#bestFor(b, IN_PAIRS);
      this.#put(a, -1);
      if (j >= 0) chosen = [i, j];
    }
    this.#at[a] = chosen?.[0] ?? before;
    if (chosen) this.#at[b] = chosen[1];
    this.#put(a, 1);
    this.#put(b, 1);
    return chosen !== undefined;
  }
}

function plateAt(list: readonly WholePlate[], i = 0): WholePlate {
  const plate = list[i];
  if (plate === undefined) throw new RangeError('a meal without a plate');
  return plate;
}
