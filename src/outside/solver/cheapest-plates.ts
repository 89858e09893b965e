/** Choices for one plate, and the least that the plate costs with them at the prices asked, its charges and macros included. */
export interface PricedPlate {
  readonly choices: readonly number[];
  readonly value: number;
}

/** Plates that cost the same to this much may be one plate found twice. */
const SAME = 1e-7;

/** The cheapest plates met so far: at most `most`, none more than `slack` dearer than the cheapest, cheapest first. */
export class CheapestPlates {
  readonly list: PricedPlate[] = [];
  /** A plate that costs this or more is not wanted. */
  limit: number;
  readonly #most: number;
  readonly #slack: number;

  /** `below`: plates that cost this or more are not wanted from the start. */
  constructor(most: number, slack: number, below = Number.POSITIVE_INFINITY) {
    this.#most = most;
    this.#slack = slack;
    this.limit = below;
  }

  get full(): boolean {
    return this.list.length === this.#most;
  }

  /** Puts a plate in its place, once. */
  keep(plate: PricedPlate): void {
    const { list } = this;
    let place = list.length;
    while (place > 0 && (list[place - 1]?.value ?? 0) > plate.value) place -= 1;
    if (this.#isThere(plate, place)) return;
    list.splice(place, 0, plate);
    this.limit = (list[0]?.value ?? 0) + this.#slack + SAME;
    while (list.length > this.#most || (list.at(-1)?.value ?? 0) > this.limit) list.pop();
    if (this.full) this.limit = Math.min(this.limit, list.at(-1)?.value ?? 0);
  }

  #isThere(plate: PricedPlate, place: number): boolean {
    const { list } = this;
    let from = place;
    while (from > 0 && (list[from - 1]?.value ?? 0) > plate.value - SAME) from -= 1;
    for (let i = from; i < list.length && (list[i]?.value ?? 0) < plate.value + SAME; i++) {
      const other = list[i]?.choices ?? [];
      if (other.length === plate.choices.length && other.every((c) => plate.choices.includes(c))) return true;
    }
    return false;
  }
}
