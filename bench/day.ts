import { performance } from 'node:perf_hooks';
import loadHighs, { type Highs } from 'highs';
import type { DayAnswer } from '#core/day/day-answer.ts';
import { planDay } from '#core/day/plan-day.ts';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { dayRequestOf } from '../test/simulation/day-requests.ts';
import { wholeModel } from '../test/simulation/whole-day-model.ts';

/** Days planned by ours alone, and of them held beside the general solver. */
const DAYS = 60;
const BESIDE = 6;
const MOST_SECONDS = 15;

/** Our plan beside the general solver (HiGHS) given the whole model in whole grams: its cost after a time, its time to our cost. */
export async function benchDay(): Promise<void> {
  const answers = Array.from({ length: DAYS }, (_, seed) => ours(seed + 1)).filter(
    ({ answer }) => answer.meals.length > 0,
  );
  const [ms, gaps] = [
    sorted(answers.map(({ answer }) => answer.solveMs)),
    sorted(answers.map(({ answer }) => answer.gap)),
  ];
  console.log(`\nDay plan: ${answers.length} days of 16 foods, each within a budget of 250 ms`);
  console.log(
    `  ours: ${at(ms, 0.5).toFixed(0)} ms at the median, ${at(ms, 0.95).toFixed(0)} at the 95th percentile; proven gap ${(100 * at(gaps, 0.5)).toFixed(1)} % at the median`,
  );
  const highs = await loadHighs();
  console.log('  beside HiGHS given the whole model; its cost as a multiple of ours');
  console.log('  meals   ours kcal      ms   at 0.1 s     at 1 s   its time to our cost');
  for (const { seed, answer } of answers.slice(0, BESIDE)) {
    const model = wholeModel(dayRequestOf(seed), answer, true);
    const after = [0.1, 1].map((seconds) => times(highs, model, seconds, answer.cost).padStart(11));
    console.log(
      `  ${String(answer.meals.length).padStart(5)} ${answer.cost.toFixed(1).padStart(11)} ${answer.solveMs.toFixed(0).padStart(7)}${after.join('')}   ${timeTo(highs, model, answer.cost)}`,
    );
  }
}

function ours(seed: number): { readonly seed: number; readonly answer: DayAnswer } {
  const answer = planDay(dayRequestOf(seed), { solver: solvePlates, clockMs: () => performance.now() });
  if (!answer.ok) throw new Error(answer.problem.message);
  return { seed, answer: answer.value };
}

/** Its best cost after so many seconds, as a multiple of ours. */
function times(highs: Highs, model: string, seconds: number, cost: number): string {
  const found = highs.solve(model, { time_limit: seconds, mip_rel_gap: 1e-6 });
  return Number.isFinite(found.ObjectiveValue) && found.ObjectiveValue > 0
    ? (found.ObjectiveValue / cost).toFixed(2)
    : 'no plan';
}

/** How long it takes to a plan that costs no more than ours. */
function timeTo(highs: Highs, model: string, cost: number): string {
  const start = performance.now();
  const found = highs.solve(model, { time_limit: MOST_SECONDS, mip_rel_gap: 1e-6, objective_target: cost });
  const seconds = (performance.now() - start) / 1000;
  return found.ObjectiveValue <= cost + 1e-6
    ? `${seconds.toFixed(1)} s`
    : `not in ${MOST_SECONDS} s (${(found.ObjectiveValue / cost).toFixed(3)})`;
}

function sorted(values: readonly number[]): readonly number[] {
  return [...values].sort((a, b) => a - b);
}

function at(values: readonly number[], share: number): number {
  return values[Math.floor(share * (values.length - 1))] ?? Number.NaN;
}
