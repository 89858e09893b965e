import type { PlateAnswer, SolveLimits } from '#core/day/plate-solver.ts';
import type { PlateProblem, PlateSteps } from '#core/day/plate-problem.ts';
import { Combine, type Pools } from './combine.ts';
import type { WholeDay } from './exchange.ts';
import { type MealClass, mealClasses } from './meal-classes.ts';
import { Meter } from './meter.ts';
import { type PlateModel, plateModel } from './plate-model.ts';
import type { PricedPlates } from './plate-pricer.ts';
import { PriceSearch } from './price-search.ts';
import { WholeDays } from './whole-days.ts';

/** Work, in multiply-adds, that a millisecond of the budget buys: about what a present machine does when cold. */
const WORK_PER_MS = 150_000;
/** Work on one meal's plates at one set of prices, at most: in a round of the price search, and when plates are collected. */
const ROUND_WORK = 400_000;
const COLLECT_WORK = 2_000_000;
const MOST_ROUNDS = 30;
/** The price search ends when its bound is this near the best mixture. */
const NEAR_ENOUGH = 0.1;
/** Plates are collected up to so much above the cheapest, further where there are few. */
const SLACKS = [3, 8, 20];
const ENOUGH_PLATES = 80;
const MOST_PLATES = 200;
const LAST_PRICES = 8;

/**
 * Solves a plate problem. Prices for what the plates share are found first; they prove a lower bound and bring out the plates that can
 * be part of a good day. Those are combined, most promising first, into days of whole grams. Same problem and budget, same
 * answer, unless the clock had to stop it. docs/decisions/0002-day-solver.md says why it is done this way.
 */
export function solvePlates(problem: PlateProblem, limits: SolveLimits): PlateAnswer {
  const model = plateModel(problem);
  const classes = mealClasses(model);
  const meter = new Meter(limits.budgetMs * WORK_PER_MS, limits.timeLeftMs);
  const days = new WholeDays(model, classes, (day) => limits.onBetter?.(stepsOf(model, day)));
  const prices = new PriceSearch(model, classes);
  for (const part of [days, prices, ...classes.map(({ pricer }) => pricer)]) meter.count(part);
  const found = findPrices(prices, days, classes, meter);
  const { pools, beyond } = collectPlates(found.prices, found.bound, classes, meter);
  const combine = new Combine(model, classes, pools, days);
  meter.count(combine);
  if (meter.more()) {
    for (const earlier of found.earlier) combine.learn(earlier);
    combine.start(20, 4);
  }
  const combined = combine.run(() => meter.more());
  return {
    steps: stepsOf(model, days.best),
    bound: Math.max(found.bound, Math.min(combined, beyond, days.best.cost)),
    ended: meter.ended,
  };
}

interface FoundPrices {
  readonly bound: number;
  readonly prices: Float64Array;
  readonly earlier: readonly Float64Array[];
}

function findPrices(
  search: PriceSearch,
  days: WholeDays,
  classes: readonly MealClass[],
  meter: Meter,
): FoundPrices {
  const all: Float64Array[] = [];
  let best = search.round(ROUND_WORK);
  chooseAmong(best.priced, best.prices, days, classes);
  for (let round = 1; round < MOST_ROUNDS && meter.more(); round++) {
    const next = search.round(ROUND_WORK);
    all.push(next.prices);
    if (next.bound > best.bound) best = next;
    if (next.mixture - best.bound < NEAR_ENOUGH) break;
  }
  return { bound: best.bound, prices: best.prices, earlier: all.slice(-LAST_PRICES) };
}

/** A whole day out of the plates of one round, so that there is a plan from the start. */
function chooseAmong(
  priced: readonly PricedPlates[],
  prices: Float64Array,
  days: WholeDays,
  classes: readonly MealClass[],
): void {
  const lists: ReturnType<WholeDays['around']>[] = [];
  classes.forEach(({ meals, pricer }, c) => {
    const versions = (priced[c]?.plates ?? []).flatMap((plate) =>
      days.around(meals[0] ?? 0, plate.choices, pricer.gramsOf(plate), prices, 4),
    );
    for (const m of meals) lists[m] = versions;
  });
  days.choose(lists);
}

/** Plates worth combining, and the least that a day with any other plate costs. */
function collectPlates(
  prices: Float64Array,
  bound: number,
  classes: readonly MealClass[],
  meter: Meter,
): { readonly pools: Pools; readonly beyond: number } {
  let beyond = Number.POSITIVE_INFINITY;
  const plates = classes.map(({ pricer }) => {
    let priced: PricedPlates = pricer.price(prices, { slack: 0, most: 1, mostWork: COLLECT_WORK }, []);
    let reach = 0;
    for (const slack of SLACKS) {
      if (!meter.more() || priced.plates.length >= ENOUGH_PLATES) break;
      priced = pricer.price(prices, { slack, most: MOST_PLATES, mostWork: COLLECT_WORK }, priced.plates);
      const full = priced.plates.length === MOST_PLATES;
      const last = (priced.plates.at(-1)?.value ?? 0) - (priced.plates[0]?.value ?? 0);
      reach = !priced.complete ? 0 : full ? last : slack;
    }
    beyond = Math.min(beyond, bound + reach);
    return priced.plates;
  });
  return { pools: { plates, prices }, beyond };
}

function stepsOf(model: PlateModel, day: WholeDay): PlateSteps {
  const { problem, choices } = model;
  return problem.meals.map((_, m) => {
    const steps = problem.foods.map(() => 0);
    const plate = day.plates[m];
    plate?.choices.forEach((c, i) => {
      const { food = 0, stepG = 1 } = choices[c] ?? {};
      steps[food] = Math.round((plate.grams[i] ?? 0) / stepG);
    });
    return steps;
  });
}
