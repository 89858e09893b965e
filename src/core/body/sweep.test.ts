import { describe, expect, it } from 'vitest';
import {
  type AthleteWorld,
  oneSidedWorlds,
  ordinaryWorld,
  wideWorld,
} from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { scoreEstimate } from '../../../test/simulation/score-estimate.ts';

const SEED = 20_270_105;

function scored(world: AthleteWorld, count: number) {
  return scoreEstimate(simulateCohort(world, SEED, count));
}

/** A slice of the sweep: the whole of it is in `sweep.long.test.ts` and in the bench. */
describe(`simulated athletes, seed ${SEED}`, () => {
  it('[EST-09] ordinary preparations: maintenance, forecast and fat far better than practice, intervals honest', () => {
    const score = scored(ordinaryWorld, 12);
    expect(score.maintenanceKcal / score.bestWindowKcal).toBeLessThan(0.6);
    expect(score.maintenanceKcal / score.lineKcal).toBeLessThan(0.7);
    expect(score.forecastKg / score.practiceKg).toBeLessThan(0.65);
    expect(score.fatKg).toBeLessThan(1.7);
    expect(score.maintenanceCovered).toBeGreaterThan(0.85);
    expect(score.forecastCovered).toBeGreaterThan(0.82);
  });

  it('[EST-09] anything at once: still better than practice, intervals still hold', () => {
    const score = scored(wideWorld, 12);
    expect(score.maintenanceKcal / score.bestWindowKcal).toBeLessThan(0.85);
    expect(score.forecastKg / score.practiceKg).toBeLessThan(0.8);
    expect(score.maintenanceCovered).toBeGreaterThan(0.75);
    expect(score.forecastCovered).toBeGreaterThan(0.75);
  });

  it('[EST-12] a scale read before food is recognised and costs no accuracy', () => {
    const before = oneSidedWorlds.find(({ name }) => name === 'weighed before food');
    if (!before) throw new Error('no such world');
    const score = scored(before, 8);
    expect(score.maintenanceKcal / score.bestWindowKcal).toBeLessThan(0.65);
    expect(score.forecastKg / score.practiceKg).toBeLessThan(0.7);
  });
});
