import type { MealClass } from './meal-classes.ts';
import type { Meter } from './meter.ts';
import type { PlateModel } from './plate-model.ts';
import { type PriceRound, PriceSearch } from './price-search.ts';
import { Shortlist } from './shortlist.ts';

/** Work on one meal's plates in one round, at most. */
const ROUND_WORK = 400_000;
const MOST_ROUNDS = 30;
/** The rest of the work is for combining what was found. */
const SEARCH_SHARE = 0.5;
/** The search ends when its bound is this near the best mixture. */
const NEAR_ENOUGH = 0.1;
/** Foods outside the shortlist get their chance every so many rounds. */
const OUTSIDE_EVERY = 4;
const LAST_PRICES = 8;
/** With foods left out, each class is proved so far under its cheapest plate, step by step, with this share of all work. */
const PROVED_UNDER = [8, 4, 2, 1, 0.5, 0];
const PROOF_SHARE = 0.2;

/** Prices at which plates can be judged one by one, and what they prove. */
export interface FoundPrices {
  /** No plan costs less. */
  readonly bound: number;
  readonly prices: Float64Array;
  /** Prices of the last rounds, to sharpen bounds with. */
  readonly earlier: readonly Float64Array[];
  /** Foods were left out of the search: plates with them may cost no more than those found. */
  readonly partial: boolean;
}

/** Searches for prices, round by round. `onFirst` is handed the first round's plates, so that there is a plan from the start. */
export function findPrices(
  model: PlateModel,
  classes: readonly MealClass[],
  meter: Meter,
  onFirst: (first: PriceRound) => void,
): FoundPrices {
  const search = new PriceSearch(model, classes);
  meter.count(search);
  const shortlist = new Shortlist(model, classes);
  const all: Float64Array[] = [];
  const mostWork = meter.share(SEARCH_SHARE);
  let best = search.round(ROUND_WORK);
  let outside = false;
  onFirst(best);
  for (let round = 1; round < MOST_ROUNDS && meter.more() && meter.work < mostWork; round++) {
    const next = search.round(ROUND_WORK, outside ? 'one' : undefined);
    all.push(next.prices);
    const grown = outside && shortlist.admit(next.priced);
    // What was proved of a shorter list does not hold for the longer one.
    if (grown || next.bound > best.bound) best = next;
    const near = next.mixture - best.bound < NEAR_ENOUGH;
    if (near && !grown && (outside || !shortlist.partial)) break;
    outside = shortlist.partial && !outside && (near || round % OUTSIDE_EVERY === 0);
  }
  const { partial } = shortlist;
  const bound = partial ? boundOfAll(search, best, classes, meter) : best.bound;
  return { bound, prices: best.prices, earlier: all.slice(-LAST_PRICES), partial };
}

/** What the prices prove of all foods: for each class the most that the work allowed shows no plate to undercut. */
function boundOfAll(
  search: PriceSearch,
  best: PriceRound,
  classes: readonly MealClass[],
  meter: Meter,
): number {
  const mostWork = meter.share(PROOF_SHARE / classes.length);
  const priced = classes.map(({ pricer }, c) => {
    const known = best.priced[c]?.plates[0]?.value ?? 0;
    let proved = pricer.price(best.prices, { slack: 0, most: 1, mostWork: 0, outside: 'any' }, []);
    for (const under of PROVED_UNDER) {
      const range = { slack: 0, most: 1, mostWork, outside: 'any', below: known - under } as const;
      const next = pricer.price(best.prices, range, []);
      if (next.complete || next.least > proved.least) proved = next;
      if (!next.complete) break;
    }
    return proved;
  });
  return search.bound(best.prices, priced);
}
