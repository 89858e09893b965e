import type { MealClass } from './meal-classes.ts';
import type { PlateModel } from './plate-model.ts';
import type { PricedPlates } from './plate-pricer.ts';

/** So many foods are all looked at all the time. */
const FEW_FOODS = 28;
/** Foods the list begins with, and may grow to. */
const FIRST_FOODS = 20;
const MOST_FOODS = 32;
const FIRST_WORK = 1_000_000;

/**
 * Where there are many foods, the search keeps to a list of promising ones: at first those of the cheapest plates of one or two foods,
 * then each that makes a cheaper plate together with listed ones.
 */
export class Shortlist {
  /** Foods are left out: what is proved of listed foods is not proved of all. */
  readonly partial: boolean;
  readonly #model: PlateModel;
  readonly #classes: readonly MealClass[];
  readonly #kins = new Set<number>();

  constructor(model: PlateModel, classes: readonly MealClass[]) {
    this.#model = model;
    this.#classes = classes;
    const kins = new Set(model.choices.map(({ kin }) => kin));
    this.partial = kins.size > FEW_FOODS;
    if (!this.partial) return;
    for (const food of model.problem.foods) if (food.asked) this.#kins.add(food.kin);
    const free = new Float64Array(model.joint.rows);
    const range = { slack: 30, most: 60, mostWork: FIRST_WORK, mostChoices: 2, outside: 'any' } as const;
    const first = classes.map(({ pricer }) => pricer.price(free, range, []));
    for (let place = 0; place < range.most; place++) {
      for (const { plates } of first) this.#take(plates[place]?.choices ?? [], FIRST_FOODS);
    }
    this.#shorten();
  }

  /** Takes in the foods of these plates; true where one was new. */
  admit(priced: readonly PricedPlates[]): boolean {
    const before = this.#kins.size;
    for (const { plates } of priced) {
      for (const { choices } of plates) this.#take(choices, MOST_FOODS);
    }
    if (this.#kins.size === before) return false;
    this.#shorten();
    return true;
  }

  #take(choices: readonly number[], most: number): void {
    for (const c of choices) {
      const kin = this.#model.choices[c]?.kin;
      if (kin !== undefined && this.#kins.size < most) this.#kins.add(kin);
    }
  }

  #shorten(): void {
    for (const { pricer } of this.#classes) pricer.shorten(this.#kins);
  }
}
