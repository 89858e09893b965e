import type { MealClass } from './meal-classes.ts';
import { PiecewiseProgram } from './piecewise-program.ts';
import { PiecewiseSimplex } from './piecewise-simplex.ts';
import { bendMeal, MACROS, type PlateModel } from './plate-model.ts';
import type { PricedPlate } from './cheapest-plates.ts';
import type { PricedPlates } from './plate-pricer.ts';

/** Every meal has one plate: being short of plates costs more than any plate. */
const MISSING_PLATE = 20_000;
const MOST_PLATES = 800;
const MOST_PIVOTS = 400;
/** Plates of each class taken into the mixture a round. */
const TAKEN_A_ROUND = 3;

/** Where the search for prices stands after a round. */
export interface PriceRound {
  readonly prices: Float64Array;
  /** No plan costs less: what the prices of this round prove. */
  readonly bound: number;
  /** The best mixture of plates known costs this much; the bound of later rounds ends between. */
  readonly mixture: number;
  /** Per class. */
  readonly priced: readonly PricedPlates[];
}

/**
 * Prices of what the plates share at which plates can be judged one by one: column generation (P. C. Gilmore and R. E. Gomory, Operations
 * Research 9, 1961), the mixture of known plates priced by linear programming, the cheapest plates at those prices added,
 * until none improves it. Each round's prices prove a lower bound of the day (Lagrange).
 */
export class PriceSearch {
  readonly #model: PlateModel;
  readonly #classes: readonly MealClass[];
  readonly #program: PiecewiseProgram;
  readonly #lp: PiecewiseSimplex;
  readonly #macros: readonly PiecewiseProgram[];
  readonly #prices: Float64Array;
  #likely: readonly (readonly PricedPlate[])[];

  constructor(model: PlateModel, classes: readonly MealClass[]) {
    this.#model = model;
    this.#classes = classes;
    const { rows } = model.joint;
    this.#program = new PiecewiseProgram(rows + classes.length, MOST_PLATES, rows + 1);
    for (let row = 0; row < rows; row++) this.#program.bendAs(row, model.joint, row);
    classes.forEach(({ meals }, i) => {
      this.#program.bendOnce(rows + i, meals.length, -MISSING_PLATE, MISSING_PLATE);
    });
    this.#lp = new PiecewiseSimplex(this.#program, MISSING_PLATE * 100);
    this.#macros = classes.map(({ meals }) => {
      const program = new PiecewiseProgram(MACROS, 0, 0);
      const meal = model.problem.meals[meals[0] ?? 0];
      if (meal) bendMeal(program, 0, meal);
      return program;
    });
    this.#prices = new Float64Array(rows);
    this.#likely = classes.map(() => []);
  }

  get work(): number {
    return this.#lp.work;
  }

  /**
   * One round: plates at the present prices, their bound, and new prices from the mixture with them. `outside`: also plates with one
   * food from outside the shortlist.
   */
  round(mostWork: number, outside?: 'one'): PriceRound {
    const { joint } = this.#model;
    const prices = this.#prices.map((price, row) => joint.withinSlopes(row, price));
    const priced = this.#classes.map(({ pricer }, i) =>
      pricer.price(
        prices,
        { slack: 0.2, most: TAKEN_A_ROUND, mostWork, ...(outside && { outside }) },
        this.#likely[i] ?? [],
      ),
    );
    this.#likely = priced.map(({ plates }) => plates);
    priced.forEach(({ plates }, i) => {
      for (const plate of plates) this.#take(plate, i);
    });
    this.#lp.solve(MOST_PIVOTS);
    for (let row = 0; row < joint.rows; row++) this.#prices[row] = this.#lp.dual[row] ?? 0;
    return { prices, bound: this.bound(prices, priced), mixture: this.#lp.cost(), priced };
  }

  /** What plates priced at these prices prove about the whole day. */
  bound(prices: Float64Array, priced: readonly PricedPlates[]): number {
    const { joint } = this.#model;
    let bound = 0;
    for (let row = 0; row < joint.rows; row++) bound += joint.leastLess(row, prices[row] ?? 0);
    priced.forEach(({ least }, i) => {
      bound += least * (this.#classes[i]?.meals.length ?? 0);
    });
    return bound;
  }

  /** Adds a plate, in the grams that are cheapest at the prices it was found at, to what may be mixed. */
  #take(plate: PricedPlate, i: number): void {
    const meals = this.#classes[i]?.meals.length ?? 0;
    const macros = this.#macros[i];
    const grams = this.#classes[i]?.pricer.gramsOf(plate);
    if (grams === undefined || macros === undefined || this.#program.added >= MOST_PLATES) return;
    const { choices, perGram, perPlate, joint } = this.#model;
    const { rows } = joint;
    const sums = new Float64Array(rows);
    let cost = 0;
    plate.choices.forEach((c, at) => {
      cost += choices[c]?.cost ?? 0;
      for (let k = 0; k < rows; k++) {
        const added = (perGram[c * rows + k] ?? 0) * (grams[at] ?? 0) + (perPlate[c * rows + k] ?? 0);
        sums[k] = (sums[k] ?? 0) + added;
      }
    });
    for (let k = 0; k < MACROS; k++) cost += macros.rowCost(k, sums[k] ?? 0);
    const entries = [...sums].map((sum, row) => [row, sum] as const);
    const column = this.#program.addColumn([...entries, [rows + i, 1]]);
    this.#lp.slope[column] = cost;
    this.#lp.setLimits(column, 0, meals);
  }
}
