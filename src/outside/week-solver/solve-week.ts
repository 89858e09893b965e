import type { Highs } from 'highs';
import { judgedWeek, partsPortions, readDishes, withFoods, type SolvedModel } from '#core/week/read-week.ts';
import { fillRequest, weekModel } from '#core/week/week-model.ts';
import type { PlannedDay, WeekPlan } from '#core/week/week-plan.ts';
import type { WeekRequest } from '#core/week/week-request.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';

export interface WeekBudget {
  /** The time the solver may take; the best plan found by then is answered with its proven gap. */
  readonly seconds: number;
  /** Near enough: the solver stops once this is proven. */
  readonly gap: number;
}

/** Two percent of some hundred kilocalories of mistake is less than a scale shows. */
export const usualBudget: WeekBudget = { seconds: 12, gap: 0.02 };

/**
 * Plans a week with HiGHS in two steps: dishes and pans with foods taken loosely, which bounds every plan from below; then
 * each day's foods in the grams they are eaten in.
 */
export function solveWeek(
  highs: Highs,
  request: WeekRequest,
  budget: WeekBudget = usualBudget,
): Outcome<WeekPlan> {
  const free = solveModel(highs, weekModel(request, 'loose'), budget);
  const parted = free && partsPortions(request, free.values);
  const loose = parted ? solveModel(highs, weekModel(request, 'loose', 'whole'), budget) : free;
  if (!loose) return noPlan();
  const drawn = readDishes(request, loose.values);
  const days: PlannedDay[] = [];
  for (const [index, day] of drawn.days.entries()) {
    const model = weekModel(fillRequest(request, index, day.totals), 'whole');
    const filled = solveModel(highs, model, { seconds: budget.seconds / 10, gap: budget.gap });
    days.push(filled ? withFoods(request, day, filled.values) : day);
  }
  return judgedWeek(request, { ...drawn, days }, loose.bound);
}

function noPlan(): Outcome<never> {
  return refused(
    'week/no-plan',
    '',
    'No plan was found in the time there was.',
    'Ask for fewer days or fewer dishes, or allow more days to cook on.',
  );
}

function solveModel(highs: Highs, data: string, budget: WeekBudget): SolvedModel | undefined {
  return highs.withModel({ format: 'lp', data }, (model) => {
    model.options.set('output_flag', false);
    model.options.set('time_limit', budget.seconds);
    model.options.set('mip_rel_gap', budget.gap);
    model.options.set('random_seed', 1);
    model.run();
    // 2: a feasible point was found (HiGHS, kSolutionStatusFeasible).
    if (model.info.get('primal_solution_status') !== 2) return undefined;
    const { colValue } = model.getSolution();
    const values: Record<string, number> = {};
    const count = model.raw.getDimensions().numCols;
    for (let index = 0; index < count; index += 1) {
      values[model.getColName(index)] = colValue[index] ?? 0;
    }
    return { values, bound: Number(model.info.get('mip_dual_bound')) };
  });
}
