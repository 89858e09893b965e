import { describe, expect, it } from 'vitest';
import { oneSidedWorlds, ordinaryWorld, wideWorld } from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { brierOf, landAhead, rootMeanSquare, shareOf } from '../../../test/simulation/course-cohort.ts';

const SEED = 20;
const COUNT = 60;

describe('[CRS-22] chances over simulated cohorts', () => {
  it.each([ordinaryWorld, wideWorld, ...oneSidedWorlds])(
    `[CRS-22] $name (seed ${SEED}): chances beat the straight line, intervals hold with the plan known`,
    (world) => {
      const cohort = simulateCohort(world, SEED, COUNT).filter(({ request }) => request.days.length > 70);
      const landings = cohort.map((athlete) => landAhead(athlete, 28, true));
      expect(shareOf(landings, ({ massInside }) => massInside)).toBeGreaterThanOrEqual(0.84);
      expect(shareOf(landings, ({ fatInside }) => fatInside)).toBeGreaterThanOrEqual(0.84);
      expect(brierOf(landings, 'course')).toBeLessThan(0.7 * brierOf(landings, 'line'));
      const course = rootMeanSquare(landings.map(({ meanKg, truthKg }) => meanKg - truthKg));
      const line = rootMeanSquare(landings.map(({ lineKg, truthKg }) => lineKg - truthKg));
      expect(course).toBeLessThan(0.8 * line);
    },
  );
});
