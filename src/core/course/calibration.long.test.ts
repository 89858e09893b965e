import { describe, expect, it } from 'vitest';
import { oneSidedWorlds, ordinaryWorld, wideWorld } from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { brierOf, landAhead, rootMeanSquare, shareOf } from '../../../test/simulation/course-cohort.ts';

const SEED = 20;
const COUNT = 60;

/** Expenditure that walks at random is what no forecast can foresee; it is asked for less. */
const RESTLESS = 'restless expenditure';
const worlds = [ordinaryWorld, wideWorld, ...oneSidedWorlds].map((world) => ({
  world,
  name: world.name,
  asked:
    world.name === RESTLESS
      ? { inside: 0.65, brier: 0.9, error: 1 }
      : { inside: 0.84, brier: 0.7, error: 0.8 },
}));

describe('[CRS-22] chances over simulated cohorts', () => {
  it.each(worlds)(
    `[CRS-22] $name (seed ${SEED}): chances and landings beat the straight line, intervals hold with the plan known`,
    ({ world, asked }) => {
      const cohort = simulateCohort(world, SEED, COUNT).filter(({ request }) => request.days.length > 70);
      const landings = cohort.map((athlete) => landAhead(athlete, 28, true));
      expect(shareOf(landings, ({ massInside }) => massInside)).toBeGreaterThanOrEqual(asked.inside);
      expect(shareOf(landings, ({ fatInside }) => fatInside)).toBeGreaterThanOrEqual(0.84);
      expect(brierOf(landings, 'course')).toBeLessThan(asked.brier * brierOf(landings, 'line'));
      const course = rootMeanSquare(landings.map(({ meanKg, truthKg }) => meanKg - truthKg));
      const line = rootMeanSquare(landings.map(({ lineKg, truthKg }) => lineKg - truthKg));
      expect(course).toBeLessThan(asked.error * line);
    },
  );
});
