import { performance } from 'node:perf_hooks';
import loadHighs from 'highs';
import { planDay } from '#core/day/plan-day.ts';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { dayRequestOf } from '../test/simulation/day-requests.ts';
import { wholeModel } from '../test/simulation/whole-day-model.ts';

const DAYS = 6;

/** Our plan beside the general solver given the whole model: cost at 100 ms, and its time to our cost. */
export async function benchDay(): Promise<void> {
  const highs = await loadHighs();
  console.log('\nDay plan: ours beside the general solver (HiGHS) given the whole model');
  console.log('  day   ours kcal      ms    HiGHS at 0.1 s   at 1 s    at 5 s   (times ours)');
  for (let seed = 1; seed <= DAYS; seed += 1) {
    const request = dayRequestOf(seed);
    const answer = planDay(request, { solver: solvePlates, clockMs: () => performance.now() });
    if (!answer.ok || answer.value.meals.length === 0) continue;
    const { cost, solveMs } = answer.value;
    const model = wholeModel(request, answer.value);
    const ratios = [0.1, 1, 5].map((seconds) => {
      const found = highs.solve(model, { time_limit: seconds, mip_rel_gap: 1e-6 });
      const there = found.Status === 'Optimal' || found.Status === 'Time limit reached';
      const value = there && Number.isFinite(found.ObjectiveValue) ? found.ObjectiveValue / cost : Number.NaN;
      return Number.isNaN(value) ? 'none' : value.toFixed(2);
    });
    console.log(
      `  ${String(seed).padEnd(5)} ${cost.toFixed(1).padStart(9)} ${solveMs.toFixed(0).padStart(7)} ${ratios.map((ratio) => ratio.padStart(12)).join('')}`,
    );
  }
}
