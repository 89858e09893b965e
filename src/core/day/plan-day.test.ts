import { describe, expect, it } from 'vitest';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { dayRequestOf } from '../../../test/simulation/day-requests.ts';
import { parseClock } from '../units/clock.ts';
import { checkPlan } from './check-plan.ts';
import type { DayAnswer } from './day-answer.ts';
import { readDay } from './day-situation.ts';
import { planDay } from './plan-day.ts';

/** A clock that stands still: the brake is never pulled. */
const still = { solver: solvePlates, clockMs: () => 0 };

function plan(request: unknown): DayAnswer {
  const answer = planDay(request, still);
  if (!answer.ok) throw new Error(`${answer.problem.path}: ${answer.problem.message}`);
  return answer.value;
}

const seeds = [1, 2, 3, 4, 5, 6, 7, 8];
const minutes = (clock: string) => parseClock(clock) ?? Number.NaN;

describe('the rest of a day', () => {
  it.each(seeds)(
    '[DAY-21] seed %i keeps every limit, by a check that shares nothing with the solver',
    (seed) => {
      const request = dayRequestOf(seed);
      const day = readDay(request);
      if (!day.ok) throw new Error(day.problem.message);
      const answer = plan(request);
      expect(checkPlan(day.value, answer.meals)).toEqual([]);
      expect(answer.gap).toBeGreaterThanOrEqual(0);
      expect(answer.gap).toBeLessThan(0.35);
    },
  );

  it.each(seeds)(
    '[DAY-11] [DAY-12] [DAY-13] seed %i: targets add up, protein even, carbohydrate around training',
    (seed) => {
      const request = dayRequestOf(seed);
      const { meals } = plan(request);
      const sum = (key: 'proteinG' | 'carbohydrateG' | 'fatG', some = meals) =>
        some.reduce((total, meal) => total + meal.target[key], 0);
      if (meals.length === 0) throw new Error('a day without a meal says nothing');
      expect(sum('proteinG')).toBeCloseTo(request.targets.proteinG, 3);
      expect(sum('fatG')).toBeCloseTo(request.targets.fatG, 3);
      const protein = meals.map((meal) => meal.target.proteinG);
      expect(Math.max(...protein) - Math.min(...protein)).toBeLessThanOrEqual(0.5);
      const near = meals.filter((meal) => meal.role !== 'away');
      const share = sum('carbohydrateG', near) / sum('carbohydrateG');
      expect(near.length === 0 || near.length === meals.length || share >= 0.6).toBe(true);
    },
  );

  it('[DAY-23] the same request gives the same answer', () => {
    const { solveMs: _first, ...one } = plan(dayRequestOf(3));
    const { solveMs: _second, ...two } = plan(dayRequestOf(3));
    expect(two).toEqual(one);
  });

  it.each([2, 5])(
    '[DAY-09] seed %i: a quarter of an hour later, the same day a quarter of an hour later',
    (seed) => {
      const now = plan(dayRequestOf(seed));
      const later = plan(dayRequestOf(seed, 16, 5, 15));
      expect(later.meals.map((meal) => minutes(meal.at) - 15)).toEqual(
        now.meals.map((meal) => minutes(meal.at)),
      );
      expect(later.meals.map((meal) => meal.items)).toEqual(now.meals.map((meal) => meal.items));
    },
  );

  it('[DAY-25] a pinned meal keeps its time and grams, whatever else changes', () => {
    const request = dayRequestOf(4);
    const first = plan(request).meals.find((meal) => meal.items.length > 0);
    if (!first) throw new Error('nothing was planned');
    const pinned = [{ at: first.at, items: first.items }];
    for (const proteinG of [100, 180, 260]) {
      const again = plan({ ...request, pinned, targets: { ...request.targets, proteinG } });
      expect(again.meals.find((meal) => meal.at === first.at)?.items).toEqual(first.items);
    }
  });

  it.each([1, 6])('[DAY-24] seed %i: more stock never costs more, within the proven gaps', (seed) => {
    const request = dayRequestOf(seed);
    const scarce = plan(request);
    const { foods } = request;
    const plenty = plan({
      ...request,
      foods: foods.map(({ availableG, ...food }) => (availableG === undefined ? food : { ...food })),
    });
    expect(plenty.cost * (1 - plenty.gap)).toBeLessThanOrEqual(scarce.cost + 1e-6);
  });

  it('[DAY-26] [DAY-27] nothing in stock, or no time: it is said, and the answer stands', () => {
    const empty = plan({ ...dayRequestOf(1), foods: [] });
    expect(empty.status).toBe('infeasible');
    expect(empty.meals).toEqual([]);
    expect(empty.why.join(' ')).toContain('nothing is in stock');
    const request = dayRequestOf(1);
    const late = plan({ ...request, now: request.events.sleep });
    expect(late.status).toBe('infeasible');
    expect(late.deviation.proteinG).toBe(-request.targets.proteinG);
  });

  it('[DAY-26] protein that no food can give is named as what is missing', () => {
    const request = dayRequestOf(1);
    const poor = request.foods.filter((food) => food.per100g.proteinG < 5);
    expect(plan({ ...request, foods: poor }).why.join(' ')).toMatch(
      /g of protein short: nothing in stock holds much of it/,
    );
  });

  it.each([
    [
      'an unknown food',
      { eaten: [{ at: '08:00', items: [{ food: 'nothing', grams: 10 }] }] },
      'eaten.0.items.0.food',
    ],
    ['negative grams', { eaten: [{ at: '08:00', items: [{ food: 'x', grams: -10 }] }] }, 'eaten.0.items.0'],
    ['sleep before waking', { events: { wake: '09:00', sleep: '08:00' } }, 'events.sleep'],
    ['a typo', { targts: {} }, 'targts'],
  ])('[DAY-01] %s is refused with its field', (_name, change, path) => {
    const answer = planDay({ ...dayRequestOf(1), ...change }, still);
    expect(answer.ok ? '' : answer.problem.path).toContain(path);
    expect(answer.ok ? '' : answer.problem.remedy).not.toBe('');
  });

  it('[DAY-23] the brake pulled in the middle is said, and the plan still keeps every limit', () => {
    let ms = 0;
    const hurried = planDay(dayRequestOf(2), { solver: solvePlates, clockMs: () => (ms += 60) });
    expect(hurried.ok && hurried.value.why.join(' ')).toContain('ran out first');
  });
});
