import { PiecewiseProgram } from './piecewise-program.ts';
import { bendMeal, MACROS, type PlateModel } from './plate-model.ts';

/** A plate in whole grams and units. */
export interface WholePlate {
  readonly choices: readonly number[];
  readonly grams: readonly number[];
  /** What it adds to each joint row. */
  readonly sums: Float64Array;
  /** Charges of its foods and its macros' distance from the meal's target. */
  readonly cost: number;
  /** The same with the joint rows at their prices. */
  readonly value: number;
}

/** How many steps either side of the middle are tried, by how many choices are tried so beside the last. */
const REACH = [0, 12, 4, 2, 1, 1];

/**
 * Whole-gram versions of one meal's plates: around given grams, the amounts of all choices but one are varied step by step; that one,
 * the coarsest, is put where the plate is then cheapest.
 */
export class WholePlates {
  /** Multiply-adds done so far. */
  work = 0;
  readonly #model: PlateModel;
  readonly #program = new PiecewiseProgram(MACROS, 0, 0);
  #most = 0;
  /** The plate being varied: per choice its place in the model, grams, price and macros of a gram. */
  #list: readonly number[] = [];
  readonly #grams: number[] = [];
  readonly #price: number[] = [];
  readonly #perGram: number[] = [];
  /** Places in the list of the choices that vary, the coarsest last. */
  #order: number[] = [];
  /** Macros of the plate, and what its grams cost at their prices. */
  #protein = 0;
  #carbohydrate = 0;
  #fat = 0;
  #priced = 0;
  readonly #tried: number[] = [];
  #kept: { readonly grams: readonly number[]; readonly value: number }[] = [];

  constructor(model: PlateModel, meal: number) {
    this.#model = model;
    const plate = model.problem.meals[meal];
    if (plate === undefined) throw new RangeError(`no meal ${meal}`);
    bendMeal(this.#program, 0, plate);
  }

  /** The `most` cheapest versions found around `middle` (grams in the order of the choices), cheapest first. */
  around(
    choices: readonly number[],
    middle: readonly number[],
    prices: Float64Array,
    most: number,
  ): readonly WholePlate[] {
    this.#list = choices;
    this.#most = most;
    this.#kept = [];
    this.#order = [];
    this.#protein = 0;
    this.#carbohydrate = 0;
    this.#fat = 0;
    this.#priced = 0;
    choices.forEach((c, i) => this.#lay(c, i, prices));
    this.#order.sort((a, b) => this.#coarseness(a) - this.#coarseness(b) || a - b);
    this.#vary(0, middle);
    return this.#kept.map(({ grams }) => this.plateOf(choices, grams, prices));
  }

  #lay(c: number, i: number, prices: Float64Array): void {
    const { joint, perGram, choices } = this.#model;
    const { rows } = joint;
    let price = 0;
    for (let k = 0; k < rows; k++) price += (prices[k] ?? 0) * (perGram[c * rows + k] ?? 0);
    this.#price[i] = price;
    for (let k = 0; k < MACROS; k++) this.#perGram[i * MACROS + k] = perGram[c * rows + k] ?? 0;
    this.#grams[i] = 0;
    const { lowG = 0, highG = 0 } = choices[c] ?? {};
    if (lowG === highG) this.#set(i, lowG);
    else this.#order.push(i);
  }

  #coarseness(i: number): number {
    const at = i * MACROS;
    const { slope2 } = this.#program;
    let perGram = 0;
    for (let k = 0; k < MACROS; k++) perGram += (slope2[k] ?? 0) * (this.#perGram[at + k] ?? 0);
    return perGram * (this.#model.choices[this.#list[i] ?? 0]?.stepG ?? 1);
  }

  #set(i: number, grams: number): void {
    const change = grams - (this.#grams[i] ?? 0);
    const at = i * MACROS;
    this.#grams[i] = grams;
    this.#protein += change * (this.#perGram[at] ?? 0);
    this.#carbohydrate += change * (this.#perGram[at + 1] ?? 0);
    this.#fat += change * (this.#perGram[at + 2] ?? 0);
    this.#priced += change * (this.#price[i] ?? 0);
  }

  #vary(depth: number, middle: readonly number[]): void {
    const i = this.#order[depth];
    if (i === undefined) return this.#keep();
    const { lowG = 0, highG = 0, stepG = 1 } = this.#model.choices[this.#list[i] ?? 0] ?? {};
    if (depth === this.#order.length - 1) return this.#varyLast(i, lowG, highG, stepG);
    const reach = (REACH[this.#order.length - 1] ?? 1) * stepG;
    const centre = Math.round((middle[i] ?? 0) / stepG) * stepG;
    const to = Math.min(highG, centre + reach);
    for (let grams = Math.max(lowG, centre - reach); grams <= to; grams += stepG) {
      this.#set(i, grams);
      this.#vary(depth + 1, middle);
    }
  }

  /** The last choice goes to the steps either side of each place where a macro's cost bends: one of them is cheapest. */
  #varyLast(i: number, lowG: number, highG: number, stepG: number): void {
    const { bend0, bend1 } = this.#program;
    const here = this.#grams[i] ?? 0;
    const sums = [this.#protein, this.#carbohydrate, this.#fat];
    const tried = this.#tried;
    tried.length = 0;
    for (let bend = 0; bend < 2 * MACROS; bend++) {
      const k = bend >> 1;
      const per = this.#perGram[i * MACROS + k] ?? 0;
      const at = (bend & 1 ? bend1[k] : bend0[k]) ?? 0;
      if (per === 0 || at === Number.POSITIVE_INFINITY) continue;
      const grams = here + (at - (sums[k] ?? 0)) / per;
      const below = Math.floor(Math.min(highG, Math.max(lowG, grams)) / stepG + 1e-9) * stepG;
      for (let step = 0; step < 2; step++) {
        const whole = below + step * stepG;
        if (whole < lowG || whole > highG || tried.includes(whole)) continue;
        tried.push(whole);
        this.#set(i, whole);
        this.#keep();
      }
    }
    // A food without any macro (salad leaves come near it) stays at its least.
    if (tried.length === 0) {
      this.#set(i, lowG);
      this.#keep();
    }
  }

  /** Macros and prices of the plate with other grams of one choice. */
  #costWith(i: number, grams: number): number {
    const change = grams - (this.#grams[i] ?? 0);
    const at = i * MACROS;
    const program = this.#program;
    this.work += 30;
    return (
      this.#priced +
      change * (this.#price[i] ?? 0) +
      program.rowCost(0, this.#protein + change * (this.#perGram[at] ?? 0)) +
      program.rowCost(1, this.#carbohydrate + change * (this.#perGram[at + 1] ?? 0)) +
      program.rowCost(2, this.#fat + change * (this.#perGram[at + 2] ?? 0))
    );
  }

  #keep(): void {
    const value = this.#costWith(0, this.#grams[0] ?? 0);
    const kept = this.#kept;
    if (kept.length === this.#most && value >= (kept.at(-1)?.value ?? 0)) return;
    let place = kept.length;
    while (place > 0 && (kept[place - 1]?.value ?? 0) > value) place -= 1;
    kept.splice(place, 0, { grams: this.#grams.slice(0, this.#list.length), value });
    if (kept.length > this.#most) kept.pop();
  }

  /** A plate of these choices in these grams. */
  plateOf(list: readonly number[], grams: readonly number[], prices: Float64Array): WholePlate {
    const { joint, perGram, perPlate, choices } = this.#model;
    const { rows } = joint;
    const sums = new Float64Array(rows);
    let cost = 0;
    list.forEach((c, i) => {
      cost += choices[c]?.cost ?? 0;
      for (let k = 0; k < rows; k++) {
        const added = (perGram[c * rows + k] ?? 0) * (grams[i] ?? 0) + (perPlate[c * rows + k] ?? 0);
        sums[k] = (sums[k] ?? 0) + added;
      }
    });
    for (let k = 0; k < MACROS; k++) cost += this.#program.rowCost(k, sums[k] ?? 0);
    const value = sums.reduce((total, sum, k) => total + sum * (prices[k] ?? 0), cost);
    return { choices: list, grams, sums, cost, value };
  }
}
