import { answered, type Outcome } from '../problems/problem.ts';
import { formatClock } from '../units/clock.ts';
import { roundTo } from '../units/rounding.ts';
import { brokenWishes, checkPlan } from './check-plan.ts';
import type { AnsweredMeal, DayAnswer } from './day-answer.ts';
import { readDay, type DaySituation } from './day-situation.ts';
import { sumNutrients } from './nutrient-sums.ts';
import { planCost } from './plan-cost.ts';
import type { MacroGrams, PlateSteps } from './plate-problem.ts';
import type { PlateAnswer, PlateSolver } from './plate-solver.ts';
import { eatenPortions, portionOf } from './portions.ts';
import { posePlates, type PosedPlates } from './pose-plates.ts';
import { scheduleMeals, type Schedule } from './schedule.ts';
import { whyPlan } from './why-plan.ts';

/** What the door uses of the outside. */
export interface PlanTools {
  readonly solver: PlateSolver;
  /** Milliseconds since some fixed moment; the brake and `solveMs` go by it, nothing else. */
  readonly clockMs: () => number;
  readonly onBetter?: (meals: readonly AnsweredMeal[]) => void;
}

/** A plan proven within this share of the bound counts as optimal. */
const PROVEN = 1e-6;
/** A bound may lie above the cost by binary dust, not by more. */
const CONTRADICTION = 1e-3;
/** Part of the budget kept for what cannot be interrupted and for concluding, and the most of it. */
const RESERVE_SHARE = 0.12;
const RESERVE_MOST_MS = 60;

/**
 * The rest of today, to the gram: the door of `stagewright day`. It reads the request, schedules the meals, poses the plates, has
 * them solved outside, and concludes: every limit and the arithmetic are checked again on the answered grams (DAY-20, DAY-21).
 */
export function planDay(input: unknown, tools: PlanTools): Outcome<DayAnswer> {
  const startMs = tools.clockMs();
  const read = readDay(input);
  if (!read.ok) return read;
  const day = read.value;
  const schedule = scheduleMeals(day);
  const posed = posePlates(day, schedule);
  const solution = solve(day, schedule, posed, tools, startMs);
  return answered(conclude(day, schedule, posed, solution, tools.clockMs() - startMs));
}

function solve(
  day: DaySituation,
  schedule: Schedule,
  posed: PosedPlates,
  tools: PlanTools,
  startMs: number,
): PlateAnswer {
  const { problem } = posed;
  if (problem.meals.length === 0 || problem.foods.length === 0) {
    const steps = problem.meals.map(() => problem.foods.map(() => 0));
    return { steps, bound: Number.NEGATIVE_INFINITY, ended: 'searched' };
  }
  const { onBetter } = tools;
  const solveMs = day.budgetMs - Math.min(RESERVE_MOST_MS, RESERVE_SHARE * day.budgetMs);
  return tools.solver(problem, {
    budgetMs: solveMs,
    timeLeftMs: () => solveMs - (tools.clockMs() - startMs),
    ...(onBetter && { onBetter: (steps: PlateSteps) => onBetter(answerMeals(day, schedule, posed, steps)) }),
  });
}

function conclude(
  day: DaySituation,
  schedule: Schedule,
  posed: PosedPlates,
  solution: PlateAnswer,
  ms: number,
): DayAnswer {
  const nothing = posed.problem.meals.length === 0 || posed.problem.foods.length === 0;
  const every = answerMeals(day, schedule, posed, solution.steps);
  // Plates that cannot be filled at all are no meals.
  const meals = nothing ? every.filter((meal) => meal.items.length > 0) : every;
  const broken = [...checkPlan(day, meals), ...brokenWishes(posed, solution.steps)];
  if (broken.length > 0) throw new RangeError(`the plan breaks a limit: ${broken.join('; ')}`);
  const cost = roundTo(planCost(day.request, meals.map(counted), day.rules.fatBeforeTrainingMaxG), 6);
  const portions = [
    ...eatenPortions(day.request),
    ...meals.flatMap((meal) => meal.items.map((item) => portionOf(day.request, item))),
  ];
  const totals = sumNutrients(portions);
  const { targets } = day.request;
  const deviation = {
    proteinG: roundTo(totals.proteinG - targets.proteinG, 4),
    carbohydrateG: roundTo(totals.carbohydrateG - targets.carbohydrateG, 4),
    fatG: roundTo(totals.fatG - targets.fatG, 4),
  };
  const gap = nothing ? 0 : provenGap(day, meals, posed, solution.bound, cost);
  const status = nothing && stillWanted(deviation) ? 'infeasible' : gap <= PROVEN ? 'optimal' : 'within-gap';
  const answer = { status, gap, cost, meals, totals, deviation, solveMs: roundTo(ms, 2) } as const;
  return {
    ...answer,
    meals: [...meals],
    why: whyPlan(day, schedule, posed, answer, solution.ended === 'clock'),
  };
}

function answerMeals(
  day: DaySituation,
  schedule: Schedule,
  posed: PosedPlates,
  steps: PlateSteps,
): readonly AnsweredMeal[] {
  const { foods } = posed.problem;
  return schedule.meals.map((meal, place) => {
    const target = posed.targets[place] ?? [0, 0, 0];
    const free = posed.free.indexOf(meal);
    const items =
      meal.pinned === undefined
        ? foods.flatMap((food, f) => {
            const count = steps[free]?.[f] ?? 0;
            return count > 0 ? [{ food: food.id, grams: roundTo(count * food.stepG, 6) }] : [];
          })
        : (day.request.pinned[meal.pinned]?.items ?? []).map(({ food, grams }) => ({ food, grams }));
    return {
      at: formatClock(meal.at),
      role: meal.role,
      target: { proteinG: target[0], carbohydrateG: target[1], fatG: target[2] },
      items,
      totals: sumNutrients(items.map((item) => portionOf(day.request, item))),
    };
  });
}

function counted({ role, target, items }: AnsweredMeal): {
  role: AnsweredMeal['role'];
  target: MacroGrams;
  items: AnsweredMeal['items'];
} {
  return { role, target: [target.proteinG, target.carbohydrateG, target.fatG], items };
}

/** The bound is of the free plates; what pinned plates cost is fixed and stands on both sides. */
function provenGap(
  day: DaySituation,
  meals: readonly AnsweredMeal[],
  posed: PosedPlates,
  bound: number,
  cost: number,
): number {
  const capG = day.rules.fatBeforeTrainingMaxG;
  const pinned = meals.filter((meal) => day.request.pinned.some((pin) => pin.at === meal.at));
  const alone = planCost(day.request, pinned.map(counted), capG) - planCost(day.request, [], capG);
  const dayAlone = dayShift(day, posed, pinned);
  const lower = bound + alone - dayAlone;
  if (cost <= 0) return 0;
  // No plan costs less than nothing; and a bound above the plan's own cost contradicts itself and proves nothing.
  const proved = lower > cost + CONTRADICTION ? 0 : Math.max(0, lower);
  return roundTo(Math.max(0, (cost - proved) / cost), 9);
}

/** How pinned plates move the day's own cost: posed as eaten already, so the bound holds it. */
function dayShift(day: DaySituation, posed: PosedPlates, pinned: readonly AnsweredMeal[]): number {
  if (pinned.length === 0 || posed.problem.meals.length === 0) return 0;
  const capG = day.rules.fatBeforeTrainingMaxG;
  const asEaten = {
    ...day.request,
    eaten: [...day.request.eaten, ...pinned.map((meal) => ({ at: meal.at, items: meal.items }))],
  };
  return planCost(asEaten, [], capG) - planCost(day.request, [], capG);
}

function stillWanted(deviation: DayAnswer['deviation']): boolean {
  return deviation.proteinG < -1 || deviation.carbohydrateG < -1 || deviation.fatG < -1;
}
