import { PiecewiseProgram } from './piecewise-program.ts';
import { PiecewiseSimplex } from './piecewise-simplex.ts';
import { BEYOND_SERVING, bendMeal, MACROS, type PlateModel } from './plate-model.ts';

const MOST_PIVOTS = 300;

/** The day's grams when the choices on each plate are given: a small linear programme, solved from the last one's answer. */
export class DayGrams {
  /** Prices of the joint rows at the last answer. */
  readonly prices: Float64Array;
  readonly #model: PlateModel;
  readonly #lp: PiecewiseSimplex;
  readonly #plates: (readonly number[])[];

  constructor(model: PlateModel) {
    this.#model = model;
    const { meals, joint, choices, perGram, problem, firstAsked } = model;
    const { rows } = joint;
    const program = new PiecewiseProgram(rows + MACROS * meals, meals * choices.length, rows + MACROS);
    // Asked foods are left out: whether they are there is a matter of the plates, which are given.
    for (let row = 0; row < firstAsked; row++) program.bendAs(row, joint, row);
    problem.meals.forEach((meal, m) => bendMeal(program, rows + MACROS * m, meal));
    for (let m = 0; m < meals; m++) {
      for (let c = 0; c < choices.length; c++) {
        const shared = Array.from({ length: rows }, (_, k) => [k, perGram[c * rows + k] ?? 0] as const);
        const own = shared.slice(0, MACROS).map(([k, amount]) => [rows + MACROS * m + k, amount] as const);
        program.addColumn([...shared, ...own]);
      }
    }
    this.#lp = new PiecewiseSimplex(program, BEYOND_SERVING);
    this.#plates = Array.from({ length: meals }, () => []);
    this.prices = new Float64Array(rows);
  }

  get work(): number {
    return this.#lp.work;
  }

  /** Least cost of the day with these choices on its plates, not held to whole grams. */
  solve(plates: readonly (readonly number[])[]): number {
    const { choices } = this.#model;
    let charges = 0;
    plates.forEach((plate, m) => {
      const first = m * choices.length;
      for (const c of this.#plates[m] ?? []) if (!plate.includes(c)) this.#lp.setLimits(first + c, 0, 0);
      for (const c of plate) {
        const { lowG = 0, highG = 0, cost = 0 } = choices[c] ?? {};
        charges += cost;
        if (this.#lp.high[first + c] !== highG) this.#lp.setLimits(first + c, lowG, highG);
      }
      this.#plates[m] = plate;
    });
    this.#lp.solve(MOST_PIVOTS);
    for (let row = 0; row < this.prices.length; row++) this.prices[row] = this.#lp.dual[row] ?? 0;
    return charges + this.#lp.cost();
  }

  /** Grams of a meal's choices at the last answer, in their order. */
  gramsOf(meal: number): readonly number[] {
    const first = meal * this.#model.choices.length;
    return (this.#plates[meal] ?? []).map((c) => this.#lp.amount(first + c));
  }
}
