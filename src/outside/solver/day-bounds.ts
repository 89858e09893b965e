import type { MealClass } from './meal-classes.ts';
import type { PlateModel } from './plate-model.ts';
import type { PricedPlate } from './cheapest-plates.ts';

/** So many sets of prices are kept; the first for good, the others make room for newer ones. */
export const PRICINGS = 16;

/**
 * Lower bounds on what a combination of plates costs, from several sets of prices at once: each plate of the pools is valued at each
 * set, and a combination costs at least the constant of a set and its plates' values there. Meals are taken in `order`,
 * alike ones together.
 */
export class DayBounds {
  count = 0;
  readonly constant = new Float64Array(PRICINGS);
  /** Per class: value of each plate at each pricing. */
  readonly values: readonly Float64Array[];
  /** Per place in the order: the least that the meals from there on add at each pricing. */
  readonly rest: Float64Array;
  readonly #model: PlateModel;
  readonly #classes: readonly MealClass[];
  readonly #pools: readonly (readonly PricedPlate[])[];
  readonly #classAt: readonly number[];
  #next = 1;

  constructor(model: PlateModel, classes: readonly MealClass[], pools: readonly (readonly PricedPlate[])[]) {
    this.#model = model;
    this.#classes = classes;
    this.#pools = pools;
    this.#classAt = classes.flatMap(({ meals }, c) => meals.map(() => c));
    this.values = pools.map((pool) => new Float64Array(pool.length * PRICINGS));
    this.rest = new Float64Array((model.meals + 1) * PRICINGS);
  }

  /** Adds a set of prices, in the place of an old one when there is no room; returns its place. */
  learn(prices: Float64Array): number {
    const { joint } = this.#model;
    const s = this.count < PRICINGS ? this.count++ : this.#next;
    if (this.count === PRICINGS) this.#next = s + 1 < PRICINGS ? s + 1 : 1;
    const within = prices.map((price, row) => joint.withinSlopes(row, price));
    this.constant[s] = this.constantAt(within);
    const least = this.#pools.map((pool, c) => {
      const values = this.#classes[c]?.pricer.valuesAt(within, pool) ?? [];
      const all = this.values[c];
      values.forEach((value, j) => {
        if (all) all[j * PRICINGS + s] = value;
      });
      return Math.min(...values);
    });
    let rest = 0;
    this.rest[this.#classAt.length * PRICINGS + s] = 0;
    for (let at = this.#classAt.length - 1; at >= 0; at--) {
      rest += least[this.#classAt[at] ?? 0] ?? 0;
      this.rest[at * PRICINGS + s] = rest;
    }
    return s;
  }

  /** What a day costs at least beside its plates' values, at prices within the rows' slopes. */
  constantAt(prices: Float64Array): number {
    const { joint } = this.#model;
    let constant = 0;
    for (let k = 0; k < joint.rows; k++)
      constant += joint.leastLess(k, joint.withinSlopes(k, prices[k] ?? 0));
    return constant;
  }

  /** No combination of plates from the pools costs less. */
  get least(): number {
    let least = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < this.count; s++) {
      least = Math.max(least, (this.constant[s] ?? 0) + (this.rest[s] ?? 0));
    }
    return least;
  }
}
