import { PiecewiseProgram } from './piecewise-program.ts';
import { bendMeal, MACROS, type PlateModel } from './plate-model.ts';
import type { WholePlate } from './whole-plates.ts';

/** How many steps either side are tried, by how many choices of a plate may vary. */
const REACH = [0, 6, 4, 3, 2, 1];
/** Choices beyond these keep their grams while the others vary. */
const MOST_VARIED = 5;

/** Last touch on a whole day: small changes of grams, at what they cost the day as it is, until none helps. */
export class Polish {
  work = 0;
  readonly #model: PlateModel;
  readonly #macros: readonly PiecewiseProgram[];
  readonly #sums: Float64Array;
  readonly #plate: Float64Array;
  #grams: number[] = [];
  #list: readonly number[] = [];
  #order: readonly number[] = [];
  #meal = 0;
  #least = 0;
  #best: readonly number[] = [];

  constructor(model: PlateModel) {
    this.#model = model;
    this.#macros = model.problem.meals.map((meal) => {
      const program = new PiecewiseProgram(MACROS, 0, 0);
      bendMeal(program, 0, meal);
      return program;
    });
    this.#sums = new Float64Array(model.joint.rows);
    this.#plate = new Float64Array(model.joint.rows);
  }

  run(plates: readonly WholePlate[]): { readonly plates: readonly WholePlate[]; readonly cost: number } {
    const now = [...plates];
    this.#sums.fill(0);
    for (const plate of now) this.#add(plate.sums, 1);
    for (let since = 0, m = 0; since < now.length; m = (m + 1) % now.length) {
      const plate = now[m];
      if (plate === undefined) break;
      this.#add(plate.sums, -1);
      const better = this.#vary(m, plate);
      since = better ? 1 : since + 1;
      if (better) now[m] = better;
      this.#add((better ?? plate).sums, 1);
    }
    let cost = now.reduce((total, plate) => total + plate.cost, 0);
    for (let k = 0; k < this.#sums.length; k++) cost += this.#model.joint.rowCost(k, this.#sums[k] ?? 0);
    return { plates: now, cost };
  }

  #add(sums: Float64Array, sign: 1 | -1): void {
    for (let k = 0; k < sums.length; k++) this.#sums[k] = (this.#sums[k] ?? 0) + sign * (sums[k] ?? 0);
  }

  #vary(m: number, plate: WholePlate): WholePlate | undefined {
    const { choices } = this.#model;
    this.#meal = m;
    this.#list = plate.choices;
    this.#grams = [...plate.grams];
    this.#plate.set(plate.sums);
    this.#order = plate.choices
      .flatMap((c, i) => ((choices[c]?.lowG ?? 0) < (choices[c]?.highG ?? 0) ? [i] : []))
      .slice(0, MOST_VARIED);
    this.#best = [];
    this.#least = this.#cost() - 1e-7;
    this.#step(0, plate.grams);
    if (this.#best.length === 0) return undefined;
    return this.#wholePlate();
  }

  #step(depth: number, middle: readonly number[]): void {
    const i = this.#order[depth];
    if (i === undefined) {
      const cost = this.#cost();
      if (cost < this.#least) {
        this.#least = cost;
        this.#best = [...this.#grams];
      }
      return;
    }
    const { lowG = 0, highG = 0, stepG = 1 } = this.#model.choices[this.#list[i] ?? 0] ?? {};
    const reach = (REACH[this.#order.length] ?? 1) * stepG;
    const to = Math.min(highG, (middle[i] ?? 0) + reach);
    for (let grams = Math.max(lowG, (middle[i] ?? 0) - reach); grams <= to; grams += stepG) {
      this.#set(i, grams);
      this.#step(depth + 1, middle);
    }
    this.#set(i, middle[i] ?? 0);
  }

  #set(i: number, grams: number): void {
    const { perGram, joint } = this.#model;
    const change = grams - (this.#grams[i] ?? 0);
    if (change === 0) return;
    const at = (this.#list[i] ?? 0) * joint.rows;
    this.#grams[i] = grams;
    for (let k = 0; k < joint.rows; k++) {
      this.#plate[k] = (this.#plate[k] ?? 0) + change * (perGram[at + k] ?? 0);
    }
  }

  #cost(): number {
    const { joint } = this.#model;
    const macros = this.#macros[this.#meal];
    let cost = 0;
    for (let k = 0; k < joint.rows; k++)
      cost += joint.rowCost(k, (this.#sums[k] ?? 0) + (this.#plate[k] ?? 0));
    for (let k = 0; k < MACROS; k++) cost += macros?.rowCost(k, this.#plate[k] ?? 0) ?? 0;
    this.work += 6 * (joint.rows + MACROS);
    return cost;
  }

  #wholePlate(): WholePlate {
    this.#best.forEach((grams, i) => {
      this.#set(i, grams);
    });
    const macros = this.#macros[this.#meal];
    let cost = 0;
    for (const c of this.#list) cost += this.#model.choices[c]?.cost ?? 0;
    for (let k = 0; k < MACROS; k++) cost += macros?.rowCost(k, this.#plate[k] ?? 0) ?? 0;
    return { choices: this.#list, grams: this.#best, sums: this.#plate.slice(), cost, value: cost };
  }
}
