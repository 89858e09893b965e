import { MACROS } from './plate-model.ts';
import type { PiecewiseProgram } from './piecewise-program.ts';

/** So many dual points are kept; the first few for good, the others make room for newer ones. */
export const SAMPLES = 24;
const KEPT = 9;

/**
 * Lower bounds on the cost of one plate, from a few dual points of its three macros. At a dual point the macros' costs are replaced by
 * straight lines below them, so a plate's bound is a constant plus a sum over its choices: quick to carry along while plates
 * are put together. Points are learnt from plates that looked cheap and were not.
 */
export class CutSamples {
  count = 0;
  /** Bound of an empty plate at each point. */
  readonly constant = new Float64Array(SAMPLES);
  /** What each choice adds, choice after choice. */
  readonly cost: Float64Array;
  readonly #program: PiecewiseProgram;
  readonly #choices: number;
  /** Per choice: grams at both ends, charge of the plate, price of a gram, three macros per gram. */
  readonly #low: Float64Array;
  readonly #high: Float64Array;
  readonly #macros: Float64Array;
  readonly #charge: Float64Array;
  readonly #price: Float64Array;
  readonly #points = new Float64Array(SAMPLES * MACROS);
  #next = KEPT;

  constructor(
    program: PiecewiseProgram,
    limits: { readonly low: Float64Array; readonly high: Float64Array; readonly macros: Float64Array },
  ) {
    this.#program = program;
    this.#choices = limits.low.length;
    this.#low = limits.low;
    this.#high = limits.high;
    this.#macros = limits.macros;
    this.#charge = new Float64Array(this.#choices);
    this.#price = new Float64Array(this.#choices);
    this.cost = new Float64Array(this.#choices * SAMPLES);
    const { slope0, slope2 } = program;
    for (let corner = 0; corner < 8; corner++) {
      this.learn(
        Float64Array.from({ length: MACROS }, (_, k) => ((corner >> k) & 1 ? slope2 : slope0)[k] ?? 0),
      );
    }
    this.learn(new Float64Array(MACROS));
  }

  /** New prices: per choice what a gram and what being on the plate costs beside the macros. */
  setPrices(perGram: Float64Array, charge: Float64Array): void {
    this.#price.set(perGram);
    this.#charge.set(charge);
    for (let s = 0; s < this.count; s++) this.#workOut(s);
  }

  /** Adds a dual point, in the place of an old one when there is no room; returns its place. */
  learn(dual: Float64Array): number {
    const s = this.count < SAMPLES ? this.count++ : this.#next;
    if (s === this.#next) this.#next = s + 1 < SAMPLES ? s + 1 : KEPT;
    let constant = 0;
    for (let k = 0; k < MACROS; k++) {
      const point = this.#program.withinSlopes(k, dual[k] ?? 0);
      this.#points[s * MACROS + k] = point;
      constant += this.#program.leastLess(k, point);
    }
    this.constant[s] = constant;
    this.#workOut(s);
    return s;
  }

  #workOut(s: number): void {
    const points = this.#points;
    const macros = this.#macros;
    const at = s * MACROS;
    for (let c = 0; c < this.#choices; c++) {
      let perGram = this.#price[c] ?? 0;
      for (let k = 0; k < MACROS; k++) perGram += (points[at + k] ?? 0) * (macros[c * MACROS + k] ?? 0);
      const grams = perGram > 0 ? this.#low[c] : this.#high[c];
      this.cost[c * SAMPLES + s] = (this.#charge[c] ?? 0) + perGram * (grams ?? 0);
    }
  }
}
