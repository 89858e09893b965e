import { describe, expect, it, vi } from 'vitest';
import { knownCourse } from '../../../test/simulation/known-course.ts';
import { foretellJump } from './foretell-jump.ts';
import { fanOver } from './fan.ts';
import { FULL_PATHS, QUICK_PATHS } from './open-course.ts';
import { withStretches } from './stretches.ts';
import { whatIf, whatIfInFull } from './what-if.ts';

vi.setConfig({ testTimeout: 30_000 });

const course = knownCourse();

describe('[CRS-11] the scale foretold around days planned otherwise', () => {
  const { days } = course.future;

  it('[CRS-11] two higher-carbohydrate days raise the scale by water, not tissue, and it goes again', () => {
    const raised = withStretches(
      days,
      [{ type: 'higher-carbohydrate days', from: '2027-03-10', until: '2027-03-11', carbohydrateG: 500 }],
      course.balanceKcal,
    );
    const jump = foretellJump(course, days, raised, '2027-03-11');
    expect(jump?.on).toBe('2027-03-12');
    expect(jump?.riseKg.mean ?? 0).toBeGreaterThan(0.5);
    expect(jump?.riseKg.mean ?? 9).toBeLessThan(2);
    expect(jump?.waterKg ?? 0).toBeGreaterThan(0.8 * (jump?.riseKg.mean ?? 9));
    expect((jump?.goneBy ?? '') > '2027-03-12').toBe(true);
    expect((jump?.goneBy ?? '9') < '2027-03-22').toBe(true);
    expect(Math.abs((jump?.riseKg.mean ?? 0) - (jump?.waterKg ?? 9) - (jump?.tissueKg ?? 9))).toBeLessThan(
      0.02,
    );
  });

  it('[CRS-11] a stretch that is over before the first day foretells nothing', () => {
    expect(foretellJump(course, days, days, '2027-02-20')).toBeUndefined();
    expect(foretellJump(course, [], [], '2027-04-01')).toBeUndefined();
  });
});

describe('[CRS-10] the fan', () => {
  it('[CRS-10] runs from the last day known to the show, its edges in order, fat and lean adding up', () => {
    const fan = fanOver(course, course.future.days, QUICK_PATHS);
    expect(fan.dates[0]?.date).toBe('2027-03-01');
    expect(fan.dates.at(-1)?.date).toBe('2027-05-10');
    expect(fan.dates.length).toBeLessThanOrEqual(32);
    for (const { massKg, fatKg, leanKg, bodyFatPercent } of fan.dates) {
      for (const point of [massKg, fatKg, leanKg, bodyFatPercent]) {
        const edges = [point.q05, point.q25, point.q75, point.q95];
        expect(edges).toEqual(edges.toSorted((a, b) => a - b));
      }
      expect(massKg.mean).toBeCloseTo(fatKg.mean + leanKg.mean, 2);
    }
  });

  it('[CRS-10] a what-if meets the same chance: less food lowers every edge, and few paths stand for many', () => {
    const calm = whatIf(course, {});
    const less = whatIf(course, { energyKcal: -200 });
    const [calmEnd, lessEnd] = [calm.dates.at(-1), less.dates.at(-1)];
    for (const edge of ['q05', 'mean', 'q95'] as const)
      expect(lessEnd?.fatKg[edge] ?? 99).toBeLessThan(calmEnd?.fatKg[edge] ?? 0);
    const full = whatIfInFull(course, { energyKcal: -200 });
    expect(full.paths).toBe(FULL_PATHS);
    expect(Math.abs((full.dates.at(-1)?.massKg.mean ?? 0) - (lessEnd?.massKg.mean ?? 9))).toBeLessThan(0.1);
    expect(Math.abs(full.probability - less.probability)).toBeLessThan(0.06);
  });
});
