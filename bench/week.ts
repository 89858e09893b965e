import { performance } from 'node:perf_hooks';
import loadHighs, { type Highs } from 'highs';
import { addDays } from '#core/units/civil-date.ts';
import { judged } from '#core/week/read-week.ts';
import { macroCost, totalsOfDay, weekCost, type DrawnWeek } from '#core/week/week-cost.ts';
import type { PlannedDay, PlannedFood, PlannedPan, PlannedPortions } from '#core/week/week-plan.ts';
import type { Macros, WeekRequest } from '#core/week/week-request.ts';
import { solveWeek } from '#outside/week-solver/solve-week.ts';
import { weekRequestOf } from '../test/simulation/week-requests.ts';

const WEEKS = 4;

/** Weeks planned together beside two ways people go about it: cooking every day for that day, and cooking what fits best when nothing is ready. */
export async function benchWeek(): Promise<void> {
  const highs = await loadHighs();
  console.log(
    `\nWeek: ${WEEKS} weeks of 7 days, 5 dishes, 8 foods; cost in kcal of mistake, evenings at the stove`,
  );
  console.log('  together (proven least)    s  evenings   cooking daily  evenings   greedy  evenings');
  const sums = { together: 0, daily: 0, greedy: 0 };
  for (let seed = 1; seed <= WEEKS; seed += 1) {
    const request = weekRequestOf(seed);
    const start = performance.now();
    const plan = solveWeek(highs, request);
    if (!plan.ok) throw new Error(plan.problem.message);
    const seconds = (performance.now() - start) / 1000;
    const [daily, greedy] = [cookedDaily(highs, request), cookedGreedily(request)];
    const [dailyCost, greedyCost] = [weekCost(request, daily).total, judged(request, greedy, 0).cost];
    sums.together += plan.value.cost;
    sums.daily += dailyCost;
    sums.greedy += greedyCost;
    console.log(
      `  ${plan.value.cost.toFixed(0).padStart(8)} (${plan.value.bound.toFixed(0)})${seconds.toFixed(1).padStart(13)}${evenings(plan.value)}${dailyCost.toFixed(0).padStart(16)}${evenings(daily)}${greedyCost.toFixed(0).padStart(9)}${evenings(greedy)}`,
    );
  }
  console.log(
    `  together costs ${((100 * sums.together) / sums.daily).toFixed(0)} % of cooking daily, ${((100 * sums.together) / sums.greedy).toFixed(0)} % of greedy`,
  );
}

function evenings({ pans }: { readonly pans: readonly PlannedPan[] }): string {
  return String(new Set(pans.map((pan) => pan.date)).size).padStart(10);
}

/** Each day by itself, solved as well as it can be: what is cooked is for that day only, in pans as small as it needs. */
function cookedDaily(highs: Highs, request: WeekRequest): DrawnWeek {
  const week: { days: PlannedDay[]; pans: PlannedPan[] } = { days: [], pans: [] };
  for (const day of request.days) {
    const alone: WeekRequest = {
      ...request,
      days: [day],
      dishes: request.dishes.map((dish) => ({ ...dish, leastPortions: 1 })),
      rules: { ...request.rules, wantedDishes: 1 },
    };
    const plan = solveWeek(highs, alone, { seconds: 3, gap: 0.01 });
    if (!plan.ok) throw new Error(plan.problem.message);
    week.days.push(...plan.value.days);
    week.pans.push(...plan.value.pans);
  }
  return week;
}

/** Eats what is ready; when that is too little, cooks a whole recipe of the dish that fits the day best. */
function cookedGreedily(request: WeekRequest): DrawnWeek {
  const left: { readonly pan: PlannedPan; portions: number }[] = [];
  const days = request.days.map((day): PlannedDay => {
    const dishes: PlannedPortions[] = [];
    for (let portion = 0; portion < request.rules.portionsPerDay.min; portion += 1) {
      const fresh = left.find(({ pan, portions }) => portions > 0 && keeps(request, pan, day.date));
      const from = fresh ?? cook(request, day, left);
      from.portions -= 1;
      const { recipe, date } = from.pan;
      const same = dishes.findIndex(
        (dish) => dish.from === 'pan' && dish.recipe === recipe && dish.cookedOn === date,
      );
      const before = dishes[same];
      const portions = (before?.portions ?? 0) + 1;
      const eaten: PlannedPortions = { from: 'pan', recipe, cookedOn: date, portions, frozen: false };
      if (same === -1) dishes.push(eaten);
      else dishes[same] = eaten;
    }
    const foods = filledGreedily(request, day.target, dishes);
    return {
      date: day.date,
      target: day.target,
      dishes,
      foods,
      totals: totalsOfDay(request, { dishes, foods }),
    };
  });
  return { days, pans: left.map(({ pan }) => pan) };
}

function keeps(request: WeekRequest, pan: PlannedPan, date: string): boolean {
  const dish = request.dishes.find((one) => one.recipe === pan.recipe);
  return dish !== undefined && date < addDays(pan.date, dish.keepsDays);
}

function cook(
  request: WeekRequest,
  day: WeekRequest['days'][number],
  left: { readonly pan: PlannedPan; portions: number }[],
): { readonly pan: PlannedPan; portions: number } {
  const third: Macros = {
    proteinG: day.target.proteinG / 3,
    carbohydrateG: day.target.carbohydrateG / 3,
    fatG: day.target.fatG / 3,
    fibreG: day.target.fibreG / 3,
  };
  const [best] = [...request.dishes].sort(
    (a, b) => macroCost(third, a.perPortion) - macroCost(third, b.perPortion),
  );
  if (!best) throw new Error('there is nothing to cook');
  const portions = Math.floor(best.mostPortions / 2);
  const cooked = { pan: { date: day.date, recipe: best.recipe, portions }, portions };
  left.push(cooked);
  return cooked;
}

const STEP_G = 10;

/** Ten grams at a time of whatever brings the day nearer. */
function filledGreedily(
  request: WeekRequest,
  target: Macros,
  dishes: readonly PlannedPortions[],
): readonly PlannedFood[] {
  let foods: PlannedFood[] = [];
  let cost = macroCost(target, totalsOfDay(request, { dishes, foods }));
  for (;;) {
    const tries = request.foods.flatMap((food): { foods: PlannedFood[]; cost: number }[] => {
      const before = foods.find((one) => one.food === food.food);
      const grams = before ? before.grams + STEP_G : Math.max(food.minG, STEP_G);
      if (grams > food.maxG || (!before && foods.length >= request.rules.foodsPerDay)) return [];
      const next = [...foods.filter((one) => one !== before), { food: food.food, grams }];
      return [{ foods: next, cost: macroCost(target, totalsOfDay(request, { dishes, foods: next })) }];
    });
    const best = tries.reduce((least, one) => (one.cost < least.cost ? one : least), { foods, cost });
    if (best.cost >= cost) return foods;
    ({ foods, cost } = best);
  }
}
