import { DayBounds, PRICINGS } from './day-bounds.ts';
import { DayGrams } from './day-grams.ts';
import type { MealClass } from './meal-classes.ts';
import type { PlateModel } from './plate-model.ts';
import type { PricedPlate } from './cheapest-plates.ts';
import type { WholeDays } from './whole-days.ts';

/** First width of the search above the least bound, in kcal of mistake, and how fast it widens. */
const FIRST_WIDTH = 0.5;
const WIDENING = 1.6;
/** A combination whose bound was this far off teaches new prices. */
const WORTH_LEARNING = 0.75;
/** How much of the loss by whole grams is believed: all of it first; with work left over, less and less. */
const LOSS_WEIGHTS = [1, 0.5, 0];
/** Whole-gram versions of each plate of a combination that is looked into. */
const VERSIONS = 80;

/** What the search is given: plates worth combining, and the prices at which they were found. */
export interface Pools {
  readonly plates: readonly (readonly PricedPlate[])[];
  readonly prices: Float64Array;
}

/**
 * Combines plates into days. Combinations are gone through in widening circles around the least bound; one that might beat the best whole
 * day is given its grams by linear programming, then whole grams. With enough time every combination of the pools is either
 * looked at or shown to be no better, which lifts the lower bound of the whole search.
 */
export class Combine {
  readonly #days: WholeDays;
  readonly #classes: readonly MealClass[];
  readonly #pools: Pools;
  readonly #bounds: DayBounds;
  readonly #grams: DayGrams;
  /** Meals in the order they are given plates, alike ones together, and the class of each place. */
  readonly #order: readonly number[];
  readonly #classAt: readonly number[];
  /** Grams of each plate at the pools' prices, and what whole grams cost it there (-1: not worked out yet). */
  readonly #middles: readonly (readonly (readonly number[])[])[];
  readonly #losses: readonly Float64Array[];
  readonly #partial: Float64Array;
  readonly #at: number[] = [];
  readonly #seen = new Set<string>();
  #weight = 1;
  #threshold = 0;
  #postponed = false;
  #leastSolved = Number.POSITIVE_INFINITY;
  #leastSkipped = Number.POSITIVE_INFINITY;
  #steps = 0;
  #more: () => boolean = () => true;

  constructor(model: PlateModel, classes: readonly MealClass[], pools: Pools, days: WholeDays) {
    this.#classes = classes;
    this.#pools = pools;
    this.#days = days;
    this.#bounds = new DayBounds(model, classes, pools.plates);
    this.#bounds.learn(pools.prices);
    this.#middles = pools.plates.map((plates, c) =>
      plates.map((plate) => classes[c]?.pricer.gramsOf(plate) ?? []),
    );
    this.#losses = pools.plates.map((plates) => new Float64Array(plates.length).fill(-1));
    this.#grams = new DayGrams(model);
    this.#order = classes.flatMap(({ meals }) => meals);
    this.#classAt = classes.flatMap(({ meals }, c) => meals.map(() => c));
    this.#partial = new Float64Array((model.meals + 1) * PRICINGS);
  }

  get work(): number {
    return this.#steps * 3 * PRICINGS + this.#grams.work;
  }

  /** Prices of earlier rounds sharpen the bounds. */
  learn(prices: Float64Array): void {
    this.#bounds.learn(prices);
  }

  /** A first whole day, from the cheapest `most` plates of each meal. */
  start(most: number, versions: number): void {
    const lists = this.#pools.plates.map((plates, c) =>
      plates
        .slice(0, most)
        .flatMap((_, j) => this.#versions(c, j, versions))
        .sort((a, b) => a.value - b.value),
    );
    this.#days.choose(this.#perMeal((c) => lists[c] ?? []));
  }

  /**
   * Goes through the combinations while `more`. Returns a lower bound on every combination of the pools, those looked at and those
   * not: the plain least bound where the search was not finished.
   */
  run(more: () => boolean): number {
    this.#more = more;
    let proved = this.#bounds.least;
    for (const weight of LOSS_WEIGHTS) {
      this.#weight = weight;
      this.#leastSkipped = Number.POSITIVE_INFINITY;
      if (!this.#widen()) break;
      proved = Math.max(proved, Math.min(this.#leastSolved, this.#leastSkipped, this.#days.best.cost));
    }
    return proved;
  }

  /** Widens the search until nothing is left of it; false where the work ended first. */
  #widen(): boolean {
    const least = this.#bounds.least;
    for (let width = FIRST_WIDTH; ; width *= WIDENING) {
      this.#threshold = least + width;
      this.#postponed = false;
      this.#partial.set(this.#bounds.constant);
      this.#dive(0);
      if (!this.#more()) return false;
      if (!this.#postponed) return true;
    }
  }

  #dive(loss: number): void {
    const place = this.#at.length;
    const c = this.#classAt[place];
    if (c === undefined) return this.#look();
    const alike = place > 0 && this.#classAt[place - 1] === c;
    const plates = this.#pools.plates[c]?.length ?? 0;
    for (let j = alike ? (this.#at[place - 1] ?? 0) : 0; j < plates; j++) {
      if (!this.#more()) return;
      const bound = this.#put(place, c, j);
      const best = this.#days.best.cost;
      if (bound >= best) continue;
      if (bound + loss >= this.#threshold) {
        this.#postponed = true;
        continue;
      }
      const lossThen = loss + this.#weight * this.#loss(c, j);
      // Whole grams would make it dearer than the best day, as far as the pools' prices can tell.
      if (bound + lossThen >= best) this.#leastSkipped = Math.min(this.#leastSkipped, bound);
      else if (bound + lossThen >= this.#threshold) this.#postponed = true;
      else {
        this.#at.push(j);
        this.#dive(lossThen);
        this.#at.pop();
      }
    }
  }

  /** Works out the bounds with plate j at a place; returns the best. */
  #put(place: number, c: number, j: number): number {
    const { count, rest } = this.#bounds;
    const values = this.#bounds.values[c];
    const at = place * PRICINGS;
    let bound = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < count; s++) {
      const sum = (this.#partial[at + s] ?? 0) + (values?.[j * PRICINGS + s] ?? 0);
      this.#partial[at + PRICINGS + s] = sum;
      bound = Math.max(bound, sum + (rest[at + PRICINGS + s] ?? 0));
    }
    this.#steps += 1;
    return bound;
  }

  /** What whole grams cost a plate at the pools' prices. */
  #loss(c: number, j: number): number {
    const losses = this.#losses[c];
    const known = losses?.[j] ?? 0;
    if (known >= 0) return known;
    const whole = this.#versions(c, j, 1)[0]?.value ?? Number.POSITIVE_INFINITY;
    const loss = Math.max(0, whole - (this.#pools.plates[c]?.[j]?.value ?? 0));
    if (losses) losses[j] = loss;
    return loss;
  }

  #versions(c: number, j: number, most: number) {
    const plate = this.#pools.plates[c]?.[j];
    const meal = this.#classes[c]?.meals[0];
    if (plate === undefined || meal === undefined) return [];
    return this.#days.around(meal, plate.choices, this.#middles[c]?.[j] ?? [], this.#pools.prices, most);
  }

  /** A whole combination: its grams, and whole grams where it may beat the best day. */
  #look(): void {
    const key = this.#at.join();
    if (this.#seen.has(key)) return;
    this.#seen.add(key);
    const plates: (readonly number[])[] = [];
    this.#order.forEach((m, place) => {
      const c = this.#classAt[place] ?? 0;
      plates[m] = this.#pools.plates[c]?.[this.#at[place] ?? 0]?.choices ?? [];
    });
    const cost = this.#grams.solve(plates);
    this.#leastSolved = Math.min(this.#leastSolved, cost);
    if (cost < this.#days.best.cost) {
      const { prices } = this.#grams;
      this.#days.choose(
        plates.map((choices, m) => this.#days.around(m, choices, this.#grams.gramsOf(m), prices, VERSIONS)),
        this.#bounds.constantAt(prices),
      );
    }
    this.#learnFrom(cost);
  }

  /** Where the bound of the combination just solved was far off, its prices join the bounds. */
  #learnFrom(cost: number): void {
    const places = this.#order.length;
    let bound = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < this.#bounds.count; s++) {
      bound = Math.max(bound, this.#partial[places * PRICINGS + s] ?? 0);
    }
    if (cost - bound <= WORTH_LEARNING) return;
    const s = this.#bounds.learn(this.#grams.prices);
    let sum = this.#bounds.constant[s] ?? 0;
    this.#partial[s] = sum;
    this.#at.forEach((j, place) => {
      sum += this.#bounds.values[this.#classAt[place] ?? 0]?.[j * PRICINGS + s] ?? 0;
      this.#partial[(place + 1) * PRICINGS + s] = sum;
    });
  }

  #perMeal<Thing>(ofClass: (c: number) => Thing): Thing[] {
    const list: Thing[] = [];
    this.#order.forEach((m, place) => {
      list[m] = ofClass(this.#classAt[place] ?? 0);
    });
    return list;
  }
}
