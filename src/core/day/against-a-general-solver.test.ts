import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { dayRequestOf } from '../../../test/simulation/day-requests.ts';
import { wholeModel } from '../../../test/simulation/whole-day-model.ts';
import { planDay } from './plan-day.ts';

describe('against a general solver (HiGHS 1.15, Huangfu and Hall 2018) given the whole model', () => {
  it.each([11, 12, 13, 14])(
    '[DAY-22] seed %i: the bound is a bound, and the plan is near what the solver proves',
    async (seed) => {
      const highs = await loadHighs();
      const request = dayRequestOf(seed, 7, 3);
      const answer = planDay(request, { solver: solvePlates, clockMs: () => 0 });
      if (!answer.ok || answer.value.meals.length === 0) throw new Error('a day without a plan says nothing');
      const found = highs.solve(wholeModel(request, answer.value), { time_limit: 20, mip_rel_gap: 1e-6 });
      expect(found.Status).toBe('Optimal');
      const { cost, gap, meals } = answer.value;
      const items = meals.reduce((sum, meal) => sum + meal.items.length, 0);
      expect(cost * (1 - gap)).toBeLessThanOrEqual(found.ObjectiveValue + 0.75 * items);
      // The solver's grams are not whole: a gram off costs at most 4.5 + 9 kcal, half of that on the mean; 0.75 a food is allowed.
      expect(cost).toBeLessThanOrEqual(1.03 * found.ObjectiveValue + 1.5 + 0.75 * items);
    },
  );
});
