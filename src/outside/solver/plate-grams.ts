import { PiecewiseProgram } from './piecewise-program.ts';
import { PiecewiseSimplex } from './piecewise-simplex.ts';
import { BEYOND_SERVING, bendMeal, MACROS, type PlateModel } from './plate-model.ts';

const MOST_PIVOTS = 100;

/** One plate by itself: the cheapest grams of given choices when what the plates share has a price. */
export class PlateGrams {
  /** Multiply-adds done so far. */
  work = 0;
  /** The macros' costs, and per choice the macros of a gram. */
  readonly program: PiecewiseProgram;
  readonly macros: Float64Array;
  /** Per choice: what a gram costs at the prices, and what being on the plate costs. */
  readonly price: Float64Array;
  readonly charge: Float64Array;
  readonly #model: PlateModel;
  readonly #lp: PiecewiseSimplex;
  readonly #laid: number[] = [];

  constructor(model: PlateModel, meal: number) {
    this.#model = model;
    const { choices, perGram, joint } = model;
    const plate = model.problem.meals[meal];
    if (plate === undefined) throw new RangeError(`no meal ${meal}`);
    this.program = new PiecewiseProgram(MACROS, choices.length, MACROS);
    bendMeal(this.program, 0, plate);
    this.macros = new Float64Array(choices.length * MACROS);
    choices.forEach((_, c) => {
      this.macros.set(perGram.subarray(c * joint.rows, c * joint.rows + MACROS), c * MACROS);
      this.program.addColumn([0, 1, 2].map((k) => [k, this.macros[c * MACROS + k] ?? 0]));
    });
    this.#lp = new PiecewiseSimplex(this.program, BEYOND_SERVING);
    this.price = new Float64Array(choices.length);
    this.charge = new Float64Array(choices.length);
  }

  /** Duals of the three macros at the last `cost`. */
  get dual(): Float64Array {
    return this.#lp.dual;
  }

  /** A price per joint row. */
  setPrices(prices: Float64Array): void {
    const { choices, perGram, perPlate, joint } = this.#model;
    const { rows } = joint;
    for (let c = 0; c < choices.length; c++) {
      let price = 0;
      let charge = choices[c]?.cost ?? 0;
      for (let k = 0; k < rows; k++) {
        price += (prices[k] ?? 0) * (perGram[c * rows + k] ?? 0);
        charge += (prices[k] ?? 0) * (perPlate[c * rows + k] ?? 0);
      }
      this.price[c] = price;
      this.charge[c] = charge;
      this.#lp.slope[c] = price;
    }
    this.work += choices.length * rows * 2;
  }

  /** The least cost of a plate with these choices and no others. */
  cost(list: readonly number[]): number {
    const lp = this.#lp;
    const { choices } = this.#model;
    const before = lp.work;
    for (const c of this.#laid) if (!list.includes(c)) lp.setLimits(c, 0, 0);
    let fixed = 0;
    this.#laid.length = 0;
    for (const c of list) {
      const choice = choices[c];
      if (choice === undefined) continue;
      this.#laid.push(c);
      fixed += this.charge[c] ?? 0;
      if (choice.lowG === choice.highG) fixed += (this.price[c] ?? 0) * choice.lowG;
      if (lp.high[c] !== choice.highG) lp.setLimits(c, choice.lowG, choice.highG);
    }
    lp.solve(MOST_PIVOTS);
    this.work += 60 + lp.work - before;
    return lp.cost() + fixed;
  }

  /** Grams of a choice at the last `cost`. */
  amount(choice: number): number {
    return this.#lp.amount(choice);
  }
}
