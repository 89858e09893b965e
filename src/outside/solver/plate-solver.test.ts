import { describe, expect, it } from 'vitest';
import type { SolveLimits } from '#core/day/plate-solver.ts';
import { costOfSteps, leastCost, plateProblemOf } from '../../../test/simulation/plate-problems.ts';
import { solvePlates } from './plate-solver.ts';

const unhurried: SolveLimits = { budgetMs: 250, timeLeftMs: () => 1 };
const SEEDS = Array.from({ length: 25 }, (_, seed) => seed);

describe('the solver of plates', () => {
  it.each(SEEDS)(
    '[DAY-22] seed %i: on a small problem it finds and proves what looking at every plan finds',
    (seed) => {
      const problem = plateProblemOf(seed, { meals: 2, foods: 4, units: 3 });
      const least = leastCost(problem);
      const { steps, bound, ended } = solvePlates(problem, unhurried);
      expect(ended).toBe('searched');
      expect(costOfSteps(problem, steps)).toBeCloseTo(least, 6);
      expect(bound).toBeLessThanOrEqual(least + 1e-6);
    },
  );

  it.each(SEEDS.slice(0, 12))(
    '[DAY-21] [DAY-22] seed %i: steps keep every limit, and the bound lies under their cost',
    (seed) => {
      const problem = plateProblemOf(seed, { meals: 4, foods: 14 });
      const { steps, bound } = solvePlates(problem, unhurried);
      const cost = costOfSteps(problem, steps);
      expect(cost).toBeLessThan(Number.POSITIVE_INFINITY);
      expect(bound).toBeLessThanOrEqual(cost + 1e-6);
      expect(bound).toBeGreaterThan(0.6 * cost);
    },
  );

  it('[DAY-23] each plan told of on the way keeps every limit and is better than the last', () => {
    for (const seed of SEEDS) {
      const problem = plateProblemOf(seed, { meals: 3, foods: 12 });
      const costs: number[] = [];
      const { steps } = solvePlates(problem, {
        ...unhurried,
        onBetter: (better) => costs.push(costOfSteps(problem, better)),
      });
      costs.forEach((cost, i) => {
        expect(cost, `seed ${seed}`).toBeLessThan(costs[i - 1] ?? Number.POSITIVE_INFINITY);
      });
      expect(costs.at(-1)).toBeCloseTo(costOfSteps(problem, steps), 6);
    }
  });

  it('[DAY-21] [DAY-23] no time at all still gives a plan that keeps stock and wishes', () => {
    for (const seed of SEEDS) {
      const problem = plateProblemOf(seed, { meals: 4, foods: 16 });
      const { steps, ended } = solvePlates(problem, { budgetMs: 250, timeLeftMs: () => -1 });
      expect(ended).toBe('clock');
      expect(costOfSteps(problem, steps), `seed ${seed}`).toBeLessThan(Number.POSITIVE_INFINITY);
    }
  });

  it('[DAY-22] with four times as many foods the plan is no dearer, and what is proved still holds', () => {
    for (const seed of [1, 2, 3]) {
      const many = plateProblemOf(seed, { meals: 3, foods: 60 });
      const few = { ...many, foods: many.foods.filter((food, f) => f < 14 || food.asked) };
      const ofMany = solvePlates(many, unhurried);
      const cost = costOfSteps(many, ofMany.steps);
      expect(cost).toBeLessThan(costOfSteps(few, solvePlates(few, unhurried).steps) + 1e-6);
      expect(ofMany.bound).toBeLessThanOrEqual(cost + 1e-6);
    }
  });

  it('[DAY-24] more work never costs more, and proves no less', () => {
    for (const seed of [1, 2, 3, 4]) {
      const problem = plateProblemOf(seed, { meals: 4, foods: 16 });
      const quick = solvePlates(problem, { ...unhurried, budgetMs: 20 });
      const slow = solvePlates(problem, { ...unhurried, budgetMs: 400 });
      expect(costOfSteps(problem, slow.steps)).toBeLessThanOrEqual(costOfSteps(problem, quick.steps) + 1e-9);
      expect(slow.bound).toBeGreaterThanOrEqual(quick.bound - 1e-9);
    }
  });
});
