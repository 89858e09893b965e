import { ordinaryWorld, oneSidedWorlds, wideWorld } from '../test/simulation/athlete-world.ts';
import { simulateCohort } from '../test/simulation/athlete-simulator.ts';
import { type EstimateScore, scoreEstimate } from '../test/simulation/score-estimate.ts';

const SEED = 20_270_104;
const ATHLETES = 20;

/**
 * The estimate beside moving windows and straight lines, in every world of the simulator: errors as ratios of
 * practice, how often the intervals hold, and the time of a request.
 */
export function benchEstimate(): void {
  console.log(
    `estimate: ${ATHLETES} athletes a world, seed ${SEED}; ratios below 1 are better than practice`,
  );
  console.log(
    [
      'world'.padEnd(22),
      'maintenance rmse',
      'of best window',
      'of straight line',
      '90 % holds',
      'forecast rmse',
      'of practice',
      '90 % holds',
      'fat rmse',
      'ms/request',
    ].join(' | '),
  );
  for (const world of [ordinaryWorld, wideWorld, ...oneSidedWorlds]) {
    const score = scoreEstimate(simulateCohort(world, SEED, ATHLETES), () => performance.now());
    console.log(lineOf(world.name, score));
  }
}

function lineOf(name: string, score: EstimateScore): string {
  return [
    name.padEnd(22),
    `${score.maintenanceKcal.toFixed(0)} kcal`.padStart(16),
    (score.maintenanceKcal / score.bestWindowKcal).toFixed(3).padStart(14),
    (score.maintenanceKcal / score.lineKcal).toFixed(3).padStart(16),
    score.maintenanceCovered.toFixed(3).padStart(10),
    `${score.forecastKg.toFixed(2)} kg`.padStart(13),
    (score.forecastKg / score.practiceKg).toFixed(3).padStart(11),
    score.forecastCovered.toFixed(3).padStart(10),
    `${score.fatKg.toFixed(2)} kg`.padStart(8),
    (score.milliseconds / score.requests).toFixed(1).padStart(10),
  ].join(' | ');
}
