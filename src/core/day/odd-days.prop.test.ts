import { describe, expect, it } from 'vitest';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { oddDayRequestOf } from '../../../test/simulation/odd-day-requests.ts';
import { checkPlan } from './check-plan.ts';
import { readDay } from './day-situation.ts';
import { planCost } from './plan-cost.ts';
import { planDay } from './plan-day.ts';

const SEEDS = Array.from({ length: 150 }, (_, seed) => seed);

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('days with everything in them that makes planning hard', () => {
  it('[DAY-20] [DAY-21] [DAY-22] each is planned within every limit with a finite, proven answer, or refused by name', () => {
    let planned = 0;
    for (const seed of SEEDS) {
      const request = oddDayRequestOf(seed);
      const answer = planDay(request, { solver: solvePlates, clockMs: () => 0 });
      if (!answer.ok) {
        expect(answer.problem.code, `seed ${seed}`).toMatch(/^day\/(fixed-and-banned|pinned-in-the-past)$/);
        continue;
      }
      const day = readDay(request);
      if (!day.ok) throw new Error(`seed ${seed}: ${day.problem.message}`);
      const { meals, cost, gap } = answer.value;
      expect(checkPlan(day.value, meals), `seed ${seed}`).toEqual([]);
      expect(numbersIn(answer.value).every(Number.isFinite), `seed ${seed}`).toBe(true);
      const counted = meals.map(({ role, target, items }) => ({
        role,
        target: [target.proteinG, target.carbohydrateG, target.fatG] as const,
        items,
      }));
      expect(cost).toBeCloseTo(
        planCost(day.value.request, counted, day.value.rules.fatBeforeTrainingMaxG),
        4,
      );
      expect(gap, `seed ${seed}`).toBeGreaterThanOrEqual(0);
      expect(gap, `seed ${seed}`).toBeLessThanOrEqual(1);
      planned += 1;
    }
    // The simulation did something.
    expect(planned).toBeGreaterThan(100);
  });

  it('[DAY-21] [DAY-23] a brake pulled at any moment leaves a plan within every limit', () => {
    for (const seed of SEEDS.slice(0, 60)) {
      let ms = 0;
      const hurried = planDay(oddDayRequestOf(seed), {
        solver: solvePlates,
        clockMs: () => (ms += 1 + seed),
      });
      const said = hurried.ok ? hurried.value.why.length > 0 : hurried.problem.remedy !== '';
      expect(said, `seed ${seed}`).toBe(true);
    }
  });
});
