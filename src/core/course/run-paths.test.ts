import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { STATE, STATE_SIZE } from '#core/body/state-layout.ts';
import { addDays } from '#core/units/civil-date.ts';
import { knownStanding } from '../../../test/simulation/known-standing.ts';
import { drawStarts } from './draw-starts.ts';
import type { FutureDay } from './future-day.ts';
import { normalPool } from './normal-pool.ts';
import { meanOf, standardDeviationOf } from './quantiles.ts';
import { type Run, runPaths } from './run-paths.ts';

vi.setConfig({ testTimeout: 30_000 });

const standing = knownStanding({ fatKg: 13, leanTissueKg: 70, baselineKcal: 2750, restingKcal: 1850 });
const pool = normalPool(1, 'course/days');
const adherence = { share: 1, weekSd: 0.04, levelSd: 0.01, daySd: 0.1, cardioShare: 1, cardioSd: 0.1 };

const daysOf = (count: number, energyKcal: number, more: Partial<FutureDay> = {}): FutureDay[] =>
  Array.from({ length: count }, (_, d) => ({
    date: addDays('2027-03-02', d),
    energyKcal,
    carbohydrateKcal: 0.4 * energyKcal,
    sodiumMg: 3500,
    cardioKcal: 200,
    basis: 'habit',
    cycleShare: 0,
    creatineShare: 0,
    ...more,
  }));

const run = (days: readonly FutureDay[], looks: readonly number[], paths = 400, seed = 1): Run =>
  runPaths({ starts: drawStarts(standing, paths, seed), days, adherence, pool, paths, looks });
const arrivals = (of: Run, which: 'massKg' | 'fatKg' | 'tissueKg' = 'massKg', look = 0) =>
  of[which].subarray(look * of.paths, (look + 1) * of.paths);

describe('drawStarts', () => {
  it('[CRS-02] draws have the mean and the covariance of the posterior', () => {
    const { states } = drawStarts(standing, 4000, 3);
    const column = (place: number) =>
      Float64Array.from({ length: 4000 }, (_, path) => states[path * STATE_SIZE + place] ?? 0);
    expect(meanOf(column(STATE.fat))).toBeCloseTo(13, 9);
    expect(standardDeviationOf(column(STATE.fat))).toBeCloseTo(0.8, 1);
    expect(standardDeviationOf(column(STATE.baseline)) / 70).toBeCloseTo(1, 1);
    const fat = column(STATE.fat);
    const sum = column(STATE.lean).map((lean, path) => lean + (fat[path] ?? 0));
    expect(standardDeviationOf(sum)).toBeCloseTo(0.1, 1);
  });

  it('[CRS-03] the first paths of many are the paths of few, and members share them by weight', () => {
    const [member] = standing.members;
    const two = {
      ...standing,
      members: member
        ? [
            { ...member, weight: 0.25 },
            { ...member, weight: 0.75 },
          ]
        : [],
    };
    const many = drawStarts(two, 2000, 5);
    const few = drawStarts(two, 200, 5);
    expect(few.states).toEqual(many.states.subarray(0, 200 * STATE_SIZE));
    expect(meanOf(Float64Array.from(few.members))).toBeCloseTo(0.75, 1);
    expect(meanOf(Float64Array.from(many.members))).toBeCloseTo(0.75, 2);
  });
});

describe('runPaths', () => {
  it('[CRS-03] the same seed gives the same numbers, another seed others', () => {
    const once = run(daysOf(56, 2350), [55]);
    const again = run(daysOf(56, 2350), [55]);
    expect(again).toEqual(once);
    expect(run(daysOf(56, 2350), [55], 400, 2).massKg).not.toEqual(once.massKg);
  });

  it('[CRS-03] looking more often changes nothing', () => {
    const rarely = run(daysOf(56, 2350), [55]);
    const often = run(daysOf(56, 2350), [-1, 6, 20, 55]);
    expect(arrivals(often, 'massKg', 3)).toEqual(arrivals(rarely));
  });

  it('[CRS-03] less food is never a heavier or fatter arrival, on any path', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1300, max: 3500 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 7, max: 112 }),
        (kcal, less, days) => {
          const more = run(daysOf(days, kcal), [days - 1], 40);
          const fewer = run(daysOf(days, kcal - less), [days - 1], 40);
          for (let path = 0; path < 40; path++) {
            expect(fewer.massKg[path]).toBeLessThan(more.massKg[path] ?? 0);
            expect(fewer.fatKg[path]).toBeLessThanOrEqual(more.fatKg[path] ?? 0);
          }
        },
      ),
      { seed: 21, numRuns: 30 },
    );
  });

  it('[CRS-03] more cardio is never a fatter arrival, on any path whose cardio shows up at all', () => {
    const less = run(daysOf(84, 2350, { cardioKcal: 100 }), [83]);
    const more = run(daysOf(84, 2350, { cardioKcal: 300 }), [83]);
    for (let path = 0; path < 400; path++) expect(more.fatKg[path]).toBeLessThan(less.fatKg[path] ?? 0);
  });

  it('[CRS-02] the spread grows with the weeks, and with habit where the plan is not known', () => {
    const spread = (days: number, basis: FutureDay['basis']) =>
      standardDeviationOf(arrivals(run(daysOf(days, 2350, { basis }), [days - 1])));
    expect(spread(84, 'habit')).toBeGreaterThan(spread(28, 'habit'));
    expect(spread(84, 'habit')).toBeGreaterThan(spread(84, 'known'));
  });

  it('[CRS-02] a body in balance with its intake stays what it is (energy conservation)', () => {
    const still = knownStanding({
      fatKg: 13,
      leanTissueKg: 70,
      baselineKcal: 2750,
      restingKcal: 1850,
      doubt: 0,
    });
    const days = daysOf(112, 2750, { cardioKcal: 0, carbohydrateKcal: 0.45 * 2750, basis: 'known' });
    const calm = runPaths({
      starts: drawStarts(still, 400, 1),
      days,
      adherence,
      pool,
      paths: 400,
      looks: [-1, 111],
    });
    const change = meanOf(arrivals(calm, 'tissueKg', 1)) - meanOf(arrivals(calm, 'tissueKg', 0));
    expect(Math.abs(change)).toBeLessThan(0.15);
  });
});
