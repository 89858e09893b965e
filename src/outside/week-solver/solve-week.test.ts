import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { weekRequestOf } from '../../../test/simulation/week-requests.ts';
import { totalsOfDay, weekCost, weekFaults, type DrawnWeek } from '#core/week/week-cost.ts';
import type { PlannedPan, PlannedPortions } from '#core/week/week-plan.ts';
import type { WeekDish, WeekRequest } from '#core/week/week-request.ts';
import { solveWeek } from './solve-week.ts';

const highs = await loadHighs();
const exact = { seconds: 20, gap: 1e-6 };

const dish = (recipe: string, perPortion: [number, number, number], keepsDays: number): WeekDish => ({
  recipe,
  name: recipe,
  perPortion: { proteinG: perPortion[0], carbohydrateG: perPortion[1], fatG: perPortion[2], fibreG: 0 },
  keepsDays,
  freezes: true,
  leastPortions: 1,
  mostPortions: 4,
});

/** Three days, two dishes, no foods: small enough to try every plan there is. */
function smallWeek(freezer: boolean): WeekRequest {
  const target = { proteinG: 70, carbohydrateG: 60, fatG: 20, fibreG: 0 };
  return {
    days: [
      { date: '2027-03-08', target, cooking: true },
      { date: '2027-03-09', target: { ...target, carbohydrateG: 30 }, cooking: true },
      { date: '2027-03-10', target, cooking: false },
    ],
    dishes: [dish('a', [30, 40, 6], 1), dish('b', [38, 8, 14], 2)],
    ready: [],
    foods: [],
    rules: {
      portionsPerDay: { min: 1, max: 2 },
      sameDishPerDay: 2,
      wantedDishes: 2,
      toleratedPortions: 3,
      pansPerCookDay: 2,
      foodsPerDay: 0,
      freezer,
    },
  };
}

/** The least cost over all plans, found by trying them all with the same counting of cost and limits. */
function leastByTrying(request: WeekRequest): number {
  const pairs = [0, 1, 2].flatMap((a) => [0, 1, 2].flatMap((b) => (a + b <= 2 ? [[a, b] as const] : [])));
  const pans = ['a', 'b'].flatMap((recipe) => ['2027-03-08', '2027-03-09'].map((date) => ({ recipe, date })));
  let least = Number.POSITIVE_INFINITY;
  for (const [x, y, z] of pairs.flatMap((x) => pairs.flatMap((y) => pairs.map((z) => [x, y, z] as const)))) {
    for (let some = 0; some < 2 ** pans.length; some += 1) {
      const cooked = pans.filter((_, place) => (some >> place) % 2 === 1);
      const week = drawnFrom(request, [x, y, z], cooked);
      if (week && weekFaults(request, week).length === 0)
        least = Math.min(least, weekCost(request, week).total);
    }
  }
  return least;
}

/** Every portion from the last pan before it; past its days it comes from the freezer. */
function drawnFrom(
  request: WeekRequest,
  eaten: readonly (readonly [number, number])[],
  cooked: readonly { readonly recipe: string; readonly date: string }[],
): DrawnWeek | undefined {
  const taken = new Map<string, number>();
  const days = request.days.map(({ date, target }, day) => {
    const dishes = ['a', 'b'].flatMap((recipe, place): PlannedPortions[] => {
      const portions = eaten[day]?.[place] ?? 0;
      const pan = cooked.filter((one) => one.recipe === recipe && one.date <= date).at(-1);
      if (portions === 0) return [];
      const cookedOn = pan?.date ?? '9999-01-01';
      taken.set(`${recipe} ${cookedOn}`, (taken.get(`${recipe} ${cookedOn}`) ?? 0) + portions);
      const keeps = request.dishes[place]?.keepsDays ?? 1;
      const frozen = pan !== undefined && Number(date.slice(8)) >= Number(cookedOn.slice(8)) + keeps;
      return [{ from: 'pan', recipe, cookedOn, portions, frozen }];
    });
    return { date, target, dishes, foods: [], totals: totalsOfDay(request, { dishes, foods: [] }) };
  });
  const pans: PlannedPan[] = cooked.map(({ recipe, date }) => ({
    recipe,
    date,
    portions: taken.get(`${recipe} ${date}`) ?? 0,
  }));
  return pans.some((pan) => pan.portions === 0) ? undefined : { days, pans };
}

describe('a week planned together', () => {
  it.each([true, false])('[WEK-02] costs what the best of all plans costs, freezer %s', (freezer) => {
    const request = smallWeek(freezer);
    const plan = solveWeek(highs, request, exact);
    if (!plan.ok) throw new Error(plan.problem.message);
    expect(plan.value.cost).toBeCloseTo(leastByTrying(request), 4);
    expect(plan.value.bound).toBeLessThanOrEqual(plan.value.cost + 1e-6);
    expect(plan.value.gap).toBeLessThan(1e-4);
  });

  it('[WEK-03] keeps every limit in weeks of all sorts, and its bound is below its cost', () => {
    for (const seed of [1, 2, 3]) {
      const whole = weekRequestOf(seed);
      const request = { ...whole, days: whole.days.slice(0, 3) };
      const plan = solveWeek(highs, request, { seconds: 4, gap: 0.3 });
      if (!plan.ok) throw new Error(plan.problem.message);
      expect(weekFaults(request, plan.value)).toEqual([]);
      expect(plan.value.bound).toBeLessThanOrEqual(plan.value.cost);
      expect(weekCost(request, plan.value).total).toBeCloseTo(plan.value.cost, 6);
    }
  }, 20_000);

  it('[WEK-04] eats what is ready before it is out', () => {
    const week = smallWeek(false);
    const perPortion = { proteinG: 35, carbohydrateG: 30, fatG: 10, fibreG: 0 };
    const ready = [{ batch: 'pan', name: 'Pan', perPortion, portions: 2, lastDay: 0 }];
    const plan = solveWeek(highs, { ...week, ready }, exact);
    if (!plan.ok) throw new Error(plan.problem.message);
    expect(plan.value.days[0]?.dishes).toEqual([{ from: 'ready', batch: 'pan', portions: 2 }]);
  });

  it('[WEK-11] cooks in time what is bought, where it otherwise would not', () => {
    const week = smallWeek(false);
    const perPortion = { proteinG: 60, carbohydrateG: 60, fatG: 20, fibreG: 0 };
    // All days are provided for: nothing would be cooked.
    const ready = [{ batch: 'pan', name: 'Pan', perPortion, portions: 9 }];
    const bought = [{ food: 'mince', recipes: ['a'], lastDay: 1, portions: 20 }];
    const panOfA = (request: WeekRequest) => {
      const plan = solveWeek(highs, request, exact);
      if (!plan.ok) throw new Error(plan.problem.message);
      expect(weekCost(request, plan.value).total).toBeCloseTo(plan.value.cost, 6);
      return plan.value.pans.some(({ recipe }) => recipe === 'a');
    };
    const few = { ...week, ready, rules: { ...week.rules, wantedDishes: 1 } };
    expect(panOfA(few)).toBe(false);
    expect(panOfA({ ...few, bought })).toBe(true);
  });
});
