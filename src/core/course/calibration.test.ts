import { describe, expect, it, vi } from 'vitest';
import { ordinaryWorld } from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { brierOf, landAhead, rootMeanSquare, shareOf } from '../../../test/simulation/course-cohort.ts';

vi.setConfig({ testTimeout: 60_000 });

describe('[CRS-22] chances over a small simulated cohort', () => {
  it('[CRS-22] twelve athletes (seed 5), four weeks ahead: chances and landings beat the straight line', () => {
    const landings = simulateCohort(ordinaryWorld, 5, 12).map((athlete) => landAhead(athlete, 28, true));
    expect(shareOf(landings, ({ massInside }) => massInside)).toBeGreaterThanOrEqual(0.75);
    expect(brierOf(landings, 'course')).toBeLessThan(0.6 * brierOf(landings, 'line'));
    const course = rootMeanSquare(landings.map(({ meanKg, truthKg }) => meanKg - truthKg));
    const line = rootMeanSquare(landings.map(({ lineKg, truthKg }) => lineKg - truthKg));
    expect(course).toBeLessThan(0.7 * line);
  });
});
