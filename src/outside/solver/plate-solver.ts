import type { PlateAnswer, SolveLimits } from '#core/day/plate-solver.ts';
import type { PlateProblem, PlateSteps } from '#core/day/plate-problem.ts';
import { Combine, type Pools } from './combine.ts';
import { findPrices, type FoundPrices } from './find-prices.ts';
import type { WholeDay } from './exchange.ts';
import { type MealClass, mealClasses } from './meal-classes.ts';
import { Meter } from './meter.ts';
import { type PlateModel, plateModel } from './plate-model.ts';
import type { PricedPlates } from './plate-pricer.ts';
import { WholeDays } from './whole-days.ts';

/** Work, in multiply-adds, that a millisecond of the budget buys: about what a present machine does in a cold process. */
const WORK_PER_MS = 90_000;
/** Work on one meal's plates at one set of prices, at most, when plates are collected. */
const COLLECT_WORK = 2_000_000;
/** Plates are collected up to so much above the cheapest, further where there are few. */
const SLACKS = [3, 8, 20, 60, 300];
const ENOUGH_PLATES = 80;
const MOST_PLATES = 200;

/**
 * Solves a plate problem. Prices for what the plates share are found first; they prove a lower bound and bring out the plates that can
 * be part of a good day. Those are combined, most promising first, into days of whole grams. Same problem and budget, same
 * answer, unless the clock had to stop it. docs/decisions/0010-day-solver.md says why it is done this way.
 */
export function solvePlates(problem: PlateProblem, limits: SolveLimits): PlateAnswer {
  const model = plateModel(problem);
  const classes = mealClasses(model);
  const meter = new Meter(limits.budgetMs * WORK_PER_MS, limits.timeLeftMs);
  const days = new WholeDays(model, classes, (day) => limits.onBetter?.(stepsOf(model, day)));
  for (const part of [days, ...classes.map(({ pricer }) => pricer)]) meter.count(part);
  const found = findPrices(model, classes, meter, ({ priced, prices }) =>
    chooseAmong(priced, prices, days, classes),
  );
  const { pools, beyond } = collectPlates(found, classes, meter);
  const combine = new Combine(model, classes, pools, days);
  meter.count(combine);
  if (meter.ended !== 'clock') combine.start(20, 4);
  if (meter.more()) for (const earlier of found.earlier) combine.learn(earlier);
  const combined = combine.run(() => meter.more());
  days.mend();
  // Nothing on a plate has a price below nothing, so no plan costs less than nothing.
  return {
    steps: stepsOf(model, days.best),
    bound: Math.max(0, found.bound, Math.min(combined, beyond, days.best.cost)),
    ended: meter.ended,
  };
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
  { prices, bound, partial }: FoundPrices,
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
      reach = partial || !priced.complete ? 0 : full ? last : slack;
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
