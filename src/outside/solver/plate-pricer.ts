import { CheapestPlates, type PricedPlate } from './cheapest-plates.ts';
import { CutSamples, SAMPLES } from './cut-samples.ts';
import { PlateGrams } from './plate-grams.ts';
import { MACROS, type PlateModel } from './plate-model.ts';

/** How far to look for plates. */
export interface PriceRange {
  /** How much dearer than the cheapest a plate may be, and how many plates are kept. */
  readonly slack: number;
  readonly most: number;
  /** The search ends, incomplete, after so much work. */
  readonly mostWork: number;
  /** Choices on a plate, where fewer than the problem allows are to be looked at. */
  readonly mostChoices?: number;
  /** "one": beside the shortlist, plates with one food from outside it. "any": all foods. Absent: the shortlist alone. */
  readonly outside?: 'one' | 'any';
  /** Only plates cheaper than this are looked for. */
  readonly below?: number;
}

/** What a meal's plates cost at given prices. */
export interface PricedPlates {
  /** No plate of those looked for costs less. */
  readonly least: number;
  readonly plates: readonly PricedPlate[];
  /** Every plate looked for was seen or shown to be dearer than those kept. */
  readonly complete: boolean;
  /** As many as wanted: there may be others as dear as the last. */
  readonly full: boolean;
}

/** A plate whose bound was this far off teaches a new dual point. */
const WORTH_LEARNING = 0.3;

/**
 * Finds the cheapest plates of one meal when what the plates share (nutrients of the day, stock, asked foods) has a price: every
 * set of choices is looked at, most of them only through the bounds of CutSamples. With many foods the search keeps to a
 * shortlist.
 */
export class PlatePricer {
  readonly #model: PlateModel;
  readonly #grams: PlateGrams;
  readonly #samples: CutSamples;
  /** Choices that must be on the plate, one of each list; then those that may. */
  readonly #held: readonly (readonly number[])[];
  readonly #free: readonly number[];
  #shortlist: readonly number[];
  #outsiders: readonly number[] = [];
  #order: number[] = [];
  /** Per depth: bounds of the choices so far at each dual point. */
  readonly #partial: Float64Array;
  /** Per place in the order: what the choices from there on could still take off, at each dual point. */
  readonly #rest: Float64Array;
  readonly #kinLeast: Float64Array;
  readonly #kinTaken: Uint8Array;
  readonly #chosen: number[] = [];
  #found = new CheapestPlates(1, 0);
  #mostChoices = 0;
  #workEnds = 0;
  #bounding = 0;

  constructor(model: PlateModel, meal: number) {
    this.#model = model;
    const { choices, open, problem } = model;
    this.#grams = new PlateGrams(model, meal);
    this.#samples = new CutSamples(this.#grams.program, {
      low: Float64Array.from(choices, (choice) => choice.lowG),
      high: Float64Array.from(choices, (choice) => choice.highG),
      macros: this.#grams.macros,
    });
    this.#held = model.held[meal] ?? [];
    const heldKins = new Set(this.#held.flat().map((c) => choices[c]?.kin));
    this.#free = choices.flatMap(({ kin }, c) => (c < open && !heldKins.has(kin) ? [c] : []));
    this.#shortlist = this.#free;
    this.#partial = new Float64Array((problem.maxFoodsPerMeal + 1) * SAMPLES);
    this.#rest = new Float64Array((this.#free.length + 1) * SAMPLES);
    const kins = Math.max(0, ...choices.map((choice) => choice.kin)) + 1;
    this.#kinLeast = new Float64Array(kins);
    this.#kinTaken = new Uint8Array(kins);
  }

  /** Multiply-adds done so far. */
  get work(): number {
    return this.#bounding + this.#grams.work;
  }

  /** Keeps later searches to foods of these kins, and says which are outside. */
  shorten(kins: ReadonlySet<number>): void {
    const inside = (c: number) => kins.has(this.#model.choices[c]?.kin ?? -1);
    this.#shortlist = this.#free.filter(inside);
    this.#outsiders = this.#free.filter((c) => !inside(c));
  }

  /**
   * The cheapest plates at these prices (one per joint row). `likely`: plates to look at first, since a cheap one known early saves
   * most of the search.
   */
  price(prices: Float64Array, range: PriceRange, likely: readonly PricedPlate[]): PricedPlates {
    const { count } = this.#samples;
    this.#order = [...(range.outside === 'any' ? this.#free : this.#shortlist)];
    this.#setPrices(prices);
    this.#found = new CheapestPlates(range.most, range.slack, range.below);
    this.#mostChoices = Math.min(range.mostChoices ?? 100, this.#model.problem.maxFoodsPerMeal);
    this.#workEnds = this.work + range.mostWork;
    for (const { choices } of likely) this.#found.keep({ choices, value: this.#grams.cost(choices) });
    let least = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < count; s++) {
      this.#partial[s] = this.#samples.constant[s] ?? 0;
      least = Math.max(least, (this.#partial[s] ?? 0) + this.#heldLeast(s) + (this.#rest[s] ?? 0));
    }
    this.#hold(0, range.outside === 'one' ? this.#outsiders : []);
    const complete = this.work < this.#workEnds;
    const plates = this.#found.list;
    const cheapest = plates[0]?.value ?? range.below ?? Number.POSITIVE_INFINITY;
    return {
      least: complete ? cheapest : Math.min(least, cheapest),
      plates,
      complete,
      full: this.#found.full,
    };
  }

  /** The least cost of each of these plates at other prices. */
  valuesAt(prices: Float64Array, plates: readonly PricedPlate[]): Float64Array {
    this.#grams.setPrices(prices);
    return Float64Array.from(plates, (plate) => this.#grams.cost(plate.choices));
  }

  /** Grams of a plate's choices at the prices last set. */
  gramsOf(plate: PricedPlate): readonly number[] {
    this.#grams.cost(plate.choices);
    return plate.choices.map((c) => this.#grams.amount(c));
  }

  #setPrices(prices: Float64Array): void {
    this.#grams.setPrices(prices);
    this.#samples.setPrices(this.#grams.price, this.#grams.charge);
    const { cost, count } = this.#samples;
    const key = new Float64Array(this.#model.choices.length);
    for (const c of this.#free) {
      let least = Number.POSITIVE_INFINITY;
      for (let s = 0; s < count; s++) least = Math.min(least, cost[c * SAMPLES + s] ?? 0);
      key[c] = least;
    }
    this.#order.sort((a, b) => (key[a] ?? 0) - (key[b] ?? 0) || a - b);
    for (let s = 0; s < count; s++) this.#workOutRest(s);
    this.#bounding += key.length * 2 * MACROS * count;
  }

  /** From the end of the order on: each kin can help once at most. */
  #workOutRest(s: number): void {
    const { choices } = this.#model;
    const { cost } = this.#samples;
    const least = this.#kinLeast;
    least.fill(0);
    let rest = 0;
    this.#rest[this.#order.length * SAMPLES + s] = 0;
    for (let i = this.#order.length - 1; i >= 0; i--) {
      const c = this.#order[i] ?? 0;
      const kin = choices[c]?.kin ?? 0;
      const here = cost[c * SAMPLES + s] ?? 0;
      const before = least[kin] ?? 0;
      if (here < before) {
        rest += here - before;
        least[kin] = here;
      }
      this.#rest[i * SAMPLES + s] = rest;
    }
  }

  #heldLeast(s: number): number {
    return this.#held.reduce(
      (sum, ways) => sum + Math.min(...ways.map((c) => this.#samples.cost[c * SAMPLES + s] ?? 0)),
      0,
    );
  }

  /** Takes one choice of each held list, in every combination; then the free ones, and an outsider with them. */
  #hold(depth: number, outsiders: readonly number[]): void {
    const ways = this.#held[depth];
    if (ways === undefined) {
      this.#dive(0);
      for (const c of outsiders) this.#tryChoice(c, 0);
      return;
    }
    for (const c of ways) {
      this.#put(c, this.#order.length);
      this.#chosen.push(c);
      this.#hold(depth + 1, outsiders);
      this.#chosen.pop();
    }
  }

  /** Works out the bounds one choice deeper; returns the best bound of any plate that goes on from place `from` of the order. */
  #put(c: number, from: number): number {
    const { cost, count } = this.#samples;
    const partial = this.#partial;
    const at = this.#chosen.length * SAMPLES;
    const rest = from * SAMPLES;
    let bound = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < count; s++) {
      const sum = (partial[at + s] ?? 0) + (cost[c * SAMPLES + s] ?? 0);
      partial[at + SAMPLES + s] = sum;
      bound = Math.max(bound, sum + (this.#rest[rest + s] ?? 0));
    }
    this.#bounding += 2 * count;
    return bound;
  }

  #dive(from: number): void {
    if (this.work >= this.#workEnds) return;
    this.#look();
    for (let i = from; i < this.#order.length; i++) this.#tryChoice(this.#order[i] ?? 0, i + 1);
  }

  /** Goes on with a choice and those from place `from` of the order, unless the bounds say that no such plate is wanted. */
  #tryChoice(c: number, from: number): void {
    const kin = this.#model.choices[c]?.kin ?? 0;
    if (this.#chosen.length >= this.#mostChoices || this.#kinTaken[kin] === 1) return;
    if (this.#put(c, from) >= this.#found.limit) return;
    this.#chosen.push(c);
    this.#kinTaken[kin] = 1;
    this.#dive(from);
    this.#kinTaken[kin] = 0;
    this.#chosen.pop();
  }

  /** Costs the plate of the present choices, unless its bound says that it is too dear. */
  #look(): void {
    const { count } = this.#samples;
    const at = this.#chosen.length * SAMPLES;
    let bound = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < count; s++) bound = Math.max(bound, this.#partial[at + s] ?? 0);
    if (bound >= this.#found.limit) return;
    const value = this.#grams.cost(this.#chosen);
    if (value < this.#found.limit) this.#found.keep({ choices: [...this.#chosen], value });
    else if (value - bound > WORTH_LEARNING) this.#learn();
  }

  /** The dual of the plate just costed becomes a sample; the bounds along the present choices are brought up to date. */
  #learn(): void {
    const s = this.#samples.learn(this.#grams.dual);
    this.#workOutRest(s);
    let sum = this.#samples.constant[s] ?? 0;
    this.#partial[s] = sum;
    for (let depth = 0; depth < this.#chosen.length; depth++) {
      sum += this.#samples.cost[(this.#chosen[depth] ?? 0) * SAMPLES + s] ?? 0;
      this.#partial[(depth + 1) * SAMPLES + s] = sum;
    }
    this.#bounding += 3 * MACROS * this.#free.length;
  }
}
