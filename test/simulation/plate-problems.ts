import {
  DAY_WEIGHTS,
  FAT_BEFORE_TRAINING_WEIGHT,
  FIBRE_WEIGHT,
  MEAL_WEIGHTS,
  PLATE_COST,
  type PlateProblem,
  type PlateSteps,
  SODIUM_WEIGHT,
} from '#core/day/plate-problem.ts';
import { randomStream } from '#core/random/random-stream.ts';

export interface ProblemSize {
  readonly meals: number;
  readonly foods: number;
  /** Foods in whole units only, at most so many on a plate. */
  readonly units?: number;
}

/** A plate problem of invented foods, the same for the same seed: some short in stock, one asked for, one meal before training. */
export function plateProblemOf(seed: number, { meals, foods, units }: ProblemSize): PlateProblem {
  const chance = randomStream(seed, 'plate problems');
  const between = (low: number, high: number) => low + (high - low) * chance.uniform();
  const pick = (low: number, high: number) => Math.floor(between(low, high + 1));
  const target = [between(20, 45), between(20, 80), between(5, 20)] as const;
  return {
    meals: Array.from({ length: meals }, (_, m) => ({
      target: m === 0 ? target : ([target[0], target[1] * 0.6, target[2] * 1.4] as const),
      ...(m === 0 && { fatCapG: 12 }),
      held: [],
    })),
    foods: Array.from({ length: foods }, (_, f) => {
      const counted = units !== undefined || chance.uniform() < 0.2;
      const stepG = counted ? pick(25, 60) : 1;
      const minSteps = counted ? 1 : pick(10, 60);
      const maxSteps = units ?? (counted ? 5 : minSteps + pick(50, 250));
      const scarce = chance.uniform() < 0.3;
      const kind = f % 3;
      const per = [
        between(0, kind === 0 ? 0.3 : 0.1),
        between(0, kind === 1 ? 0.7 : 0.15),
        between(0, kind === 2 ? 0.8 : 0.1),
      ];
      return {
        id: `food ${f}`,
        stepG,
        perStep: [
          (per[0] ?? 0) * stepG,
          (per[1] ?? 0) * stepG,
          (per[2] ?? 0) * stepG,
          between(0, 0.08) * stepG,
          between(0, 5) * stepG,
        ] as const,
        minSteps,
        maxSteps,
        stockSteps: scarce ? maxSteps : Number.POSITIVE_INFINITY,
        plateCost: PLATE_COST,
        asked: f === foods - 1,
        kin: f,
      };
    }),
    left: [target[0] * meals, target[1] * (1 + 0.6 * (meals - 1)), target[2] * (1 + 1.4 * (meals - 1))],
    fibreMissingG: between(0, 20),
    sodiumRoomMg: between(500, 3000),
    maxFoodsPerMeal: 3,
  };
}

/** What steps cost, counted plainly; infinite where they break a limit. */
export function costOfSteps(problem: PlateProblem, steps: PlateSteps): number {
  const { foods, meals, left, fibreMissingG, sodiumRoomMg } = problem;
  const sums = (plate: readonly number[]) =>
    [0, 1, 2, 3, 4].map((k) => plate.reduce((sum, count, f) => sum + count * (foods[f]?.perStep[k] ?? 0), 0));
  const day = sums(foods.map((_, f) => steps.reduce((sum, plate) => sum + (plate[f] ?? 0), 0)));
  let cost = left.reduce((sum, grams, k) => sum + (DAY_WEIGHTS[k] ?? 0) * Math.abs((day[k] ?? 0) - grams), 0);
  cost += FIBRE_WEIGHT * Math.max(0, (fibreMissingG ?? 0) - (day[3] ?? 0));
  cost += SODIUM_WEIGHT * Math.max(0, (day[4] ?? 0) - (sodiumRoomMg ?? Number.POSITIVE_INFINITY));
  meals.forEach(({ target, fatCapG }, m) => {
    const plate = steps[m] ?? [];
    const own = sums(plate);
    cost += target.reduce(
      (sum, grams, k) => sum + (MEAL_WEIGHTS[k] ?? 0) * Math.abs((own[k] ?? 0) - grams),
      0,
    );
    if (fatCapG !== undefined) cost += FAT_BEFORE_TRAINING_WEIGHT * Math.max(0, (own[2] ?? 0) - fatCapG);
    plate.forEach((count, f) => {
      if (count > 0) cost += foods[f]?.plateCost ?? 0;
    });
  });
  return keepsLimits(problem, steps) ? cost : Number.POSITIVE_INFINITY;
}

function keepsLimits({ foods, maxFoodsPerMeal }: PlateProblem, steps: PlateSteps): boolean {
  const served = steps.every(
    (plate) =>
      plate.filter((count) => count > 0).length <= maxFoodsPerMeal &&
      plate.every((count, f) => {
        const { minSteps = 0, maxSteps = 0 } = foods[f] ?? {};
        return count === 0 || (Number.isInteger(count) && count >= minSteps && count <= maxSteps);
      }),
  );
  return (
    served &&
    foods.every(({ stockSteps, asked }, f) => {
      const all = steps.reduce((sum, plate) => sum + (plate[f] ?? 0), 0);
      return all <= stockSteps && (!asked || all > 0);
    })
  );
}

/** The least cost there is, by looking at every plan: for a few foods in a few units. */
export function leastCost(problem: PlateProblem): number {
  const ways = plates(problem, 0);
  const search = (chosen: readonly (readonly number[])[]): number =>
    chosen.length === problem.meals.length
      ? costOfSteps(problem, chosen)
      : Math.min(...ways.map((plate) => search([...chosen, plate])));
  return search([]);
}

function plates(problem: PlateProblem, food: number): number[][] {
  const { minSteps = 0, maxSteps = 0 } = problem.foods[food] ?? {};
  if (food === problem.foods.length) return [[]];
  const counts = [0, ...Array.from({ length: maxSteps - minSteps + 1 }, (_, i) => minSteps + i)];
  return plates(problem, food + 1).flatMap((others) => counts.map((count) => [count, ...others]));
}
