import { lifterWorlds } from '../test/simulation/lifter-simulator.ts';
import { scoreLifters } from '../test/simulation/score-lifters.ts';
import { scoreSides } from '../test/simulation/score-sides.ts';

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
  benchSides();
}

/** How often a side is called weaker: ours beside one set of each by Epley's equation and the mark of ten percent. */
function benchSides(): void {
  console.log(`gym: sides, ${LIFTERS} lifters a world; how often the left is called weaker, and the right`);
  console.log('world    | left less | ours left | ours right | plain left | plain right | answered');
  for (const world of lifterWorlds)
    for (const less of [0, 0.04, 0.08, 0.12]) {
      const score = scoreSides(world, LIFTERS, less);
      const share = (value: number, width: number) => value.toFixed(2).padStart(width);
      console.log(
        [
          world.name.padEnd(8),
          `${(100 * less).toFixed(0)} %`.padStart(9),
          share(score.calledLeft, 9),
          share(score.calledRight, 10),
          share(score.plainLeft, 10),
          share(score.plainRight, 11),
          `${score.percent.toFixed(1)} %`.padStart(8),
        ].join(' | '),
      );
    }
}
