import { lifterWorlds } from '../test/simulation/lifter-simulator.ts';
import { scoreLifters } from '../test/simulation/score-lifters.ts';

const LIFTERS = 60;

/** Expected repetitions beside last time's and the plain equations, on simulated lifters whose strength is known. */
export function benchGym(): void {
  console.log(
    `gym: ${LIFTERS} lifters a world, first set of each session; errors in repetitions, ratios below 1 are better`,
  );
  console.log(
    [
      'world'.padEnd(8),
      'sets',
      'ours',
      'of last time',
      'of equations',
      '90 % holds',
      'kept, points',
      '90 % holds',
      'ms/lifter',
    ].join(' | '),
  );
  for (const world of lifterWorlds) {
    const started = performance.now();
    const score = scoreLifters(world, LIFTERS);
    const each = (performance.now() - started) / LIFTERS;
    console.log(
      [
        score.world.padEnd(8),
        String(score.sets).padStart(4),
        score.ours.toFixed(2),
        (score.ours / score.lastTime).toFixed(3).padStart(12),
        (score.ours / score.equations).toFixed(3).padStart(12),
        score.covered.toFixed(3).padStart(10),
        score.keptPoints.toFixed(2).padStart(12),
        score.keptCovered.toFixed(3).padStart(10),
        each.toFixed(1).padStart(9),
      ].join(' | '),
    );
  }
}
