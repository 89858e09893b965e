import { Exchange, type WholeDay } from './exchange.ts';
import type { MealClass } from './meal-classes.ts';
import { keepsLimits, mendPlates } from './mend.ts';
import type { PlateModel } from './plate-model.ts';
import { Polish } from './polish.ts';
import { type WholePlate, WholePlates } from './whole-plates.ts';

/** A day this near the best is worth a deeper look, of so many steps. */
const NEARLY = 1;
const DEEP_NODES = 5000;
/** Plates better by less than this are no better. */
const WORTHWHILE = 1e-6;

/** Turns plates into days of whole grams, and keeps the best day met. */
export class WholeDays {
  /** Versions of a plate, for each class of meals. */
  readonly versions: readonly WholePlates[];
  readonly #exchange: Exchange;
  readonly #polish: Polish;
  readonly #model: PlateModel;
  readonly #classOf: readonly number[];
  readonly #onBetter: (day: WholeDay) => void;
  #best: WholeDay = { plates: [], cost: Number.POSITIVE_INFINITY };

  constructor(model: PlateModel, classes: readonly MealClass[], onBetter: (day: WholeDay) => void) {
    this.#model = model;
    this.versions = classes.map(({ meals }) => new WholePlates(model, meals[0] ?? 0));
    this.#exchange = new Exchange(model.joint);
    this.#polish = new Polish(model);
    this.#classOf = model.problem.meals.map((_, m) => classes.findIndex(({ meals }) => meals.includes(m)));
    this.#onBetter = onBetter;
  }

  get best(): WholeDay {
    return this.#best;
  }

  get work(): number {
    const versions = this.versions.reduce((sum, { work }) => sum + work, 0);
    return versions + this.#exchange.work + this.#polish.work;
  }

  /** The versions of a meal's plate around given grams. */
  around(
    meal: number,
    choices: readonly number[],
    grams: readonly number[],
    prices: Float64Array,
    most: number,
  ): readonly WholePlate[] {
    return this.versions[this.#classOf[meal] ?? 0]?.around(choices, grams, prices, most) ?? [];
  }

  /**
   * Chooses from a list of plates for each meal, cheapest first, and keeps the day where it is the best so far. With the `constant` of
   * the prices at which the plates are valued, days that come near the best are looked into more deeply.
   */
  choose(lists: readonly (readonly WholePlate[])[], constant?: number): void {
    let day = this.#exchange.run(
      lists,
      lists.map(() => 0),
    );
    if (constant !== undefined && day.cost < this.#best.cost + NEARLY) {
      day = this.#exchange.deepen(constant, DEEP_NODES);
    }
    if (day.cost >= this.#best.cost - WORTHWHILE) return;
    const polished = this.#polish.run(day.plates);
    this.#best = polished.cost < day.cost ? polished : day;
    if (keepsLimits(this.#model, this.#best.plates)) this.#onBetter(this.#best);
  }

  /** A search may be stopped before it met a day that keeps stock and wishes; then the best is mended. */
  mend(): void {
    const { plates } = this.#best;
    if (keepsLimits(this.#model, plates)) return;
    const free = new Float64Array(this.#model.joint.rows);
    const mended = mendPlates(this.#model, plates, (meal, choices, grams) => {
      const versions = this.versions[this.#classOf[meal] ?? 0];
      if (versions === undefined) throw new RangeError(`no meal ${meal}`);
      return versions.plateOf(choices, grams, free);
    });
    this.#best = this.#polish.run(mended);
    this.#onBetter(this.#best);
  }
}
