import { describe, expect, it } from 'vitest';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import type { EstimateDay } from './estimate-request.ts';
import { livedDays } from './lived-days.ts';
import { waterShares } from './moving-water.ts';

const START = '2027-01-04';

function day(offset: number, energyKcal?: number, more: Partial<EstimateDay> = {}): EstimateDay {
  const date = addDays(START, offset);
  if (energyKcal === undefined) return { date, ...more };
  return {
    date,
    intake: { energyKcal, proteinG: 180, carbohydrateG: 250, fatG: 70, sodiumMg: 4000 },
    ...more,
  };
}

function live(rows: readonly EstimateDay[], asOf = rows.at(-1)?.date ?? START) {
  return livedDays(rows, [], waterShares(rows, undefined), parseDate(asOf) ?? 0);
}

describe('days as the filter meets them', () => {
  it('[EST-01] every date from the first row on, days without a row too, to asOf beyond the last row', () => {
    const lived = live([day(0, 2400), day(3, 2400)], addDays(START, 5));
    expect(lived.map(({ date }) => date)).toEqual([0, 1, 2, 3, 4, 5].map((offset) => addDays(START, offset)));
    expect(lived.map(({ basis }) => basis)).toEqual([
      'logged',
      'nothing-before',
      'nothing-before',
      'logged',
      'nothing-before',
      'nothing-before',
    ]);
  });

  it('[EST-03] a day that was not logged is the average of the logged days before it, never of later ones', () => {
    const rows = [day(0, 2000), day(1, 2200), day(2, 2400), day(3), day(4, 6000)];
    const filled = live(rows)[3];
    expect(filled?.basis).toBe('unlogged');
    expect(filled?.load.energyKcal).toBeCloseTo(2200, 9);
    expect(live(rows.slice(0, 4))[3]).toEqual(filled);
    expect(filled?.load.logErrorSd).toBeGreaterThan(0.12);
  });

  it('[EST-03] unlogged days in a row are off to one side together: their spread grows', () => {
    const rows = [day(0, 2000), day(1, 2200), day(2, 2400), ...[3, 4, 5, 6].map((offset) => day(offset))];
    const spreads = live(rows)
      .slice(3)
      .map(({ load }) => load.logErrorSd);
    expect(spreads).toEqual(spreads.toSorted((a, b) => a - b));
    expect(spreads[3]).toBeCloseTo(2 * (spreads[0] ?? 0), 9);
  });

  it('[EST-03] what the person confirms is taken as it stands: a fast is a fast', () => {
    const usual = [day(0, 2400), day(1, 2400), day(2, 2400)];
    const fast = live([...usual, day(3, 0, { confirmed: true })])[3];
    expect(fast).toMatchObject({ basis: 'logged', load: { energyKcal: 0 } });
    const little = live([...usual, day(3, 500, { confirmed: true })])[3];
    expect(little).toMatchObject({ basis: 'logged', load: { energyKcal: 500, logErrorSd: 0.06 } });
  });

  it('[EST-03] energy 0 is unclear and wide; far below the usual is taken as midway', () => {
    const usual = [day(0, 2400), day(1, 2400), day(2, 2400)];
    const zero = live([...usual, day(3, 0)])[3];
    expect(zero).toMatchObject({ basis: 'zero', load: { energyKcal: 2400, logErrorSd: 0.5 } });
    const half = live([...usual, day(3, 600)])[3];
    expect(half?.basis).toBe('doubtful');
    expect(half?.load.energyKcal).toBeCloseTo(1500, 9);
    expect((half?.load.logErrorSd ?? 0) * 1500).toBeCloseTo(900, 9);
  });

  it('[EST-02] a plan is taken as it stands, a planned fast too', () => {
    const rows = [day(0, 2400), day(1, 2400), day(2, 2400), day(3, 0), day(4, 500)];
    const lived = live(rows, addDays(START, 2));
    expect(lived.slice(3).map(({ basis, load }) => [basis, load.energyKcal])).toEqual([
      ['logged', 0],
      ['logged', 500],
    ]);
  });

  it('[EST-03] a lasting cut becomes the usual after some days', () => {
    const rows = [
      ...Array.from({ length: 10 }, (_, i) => day(i, 2600)),
      ...Array.from({ length: 25 }, (_, i) => day(10 + i, 900)),
    ];
    const lived = live(rows);
    expect(lived[10]?.basis).toBe('doubtful');
    expect(lived.at(-1)?.basis).toBe('logged');
  });
});

describe('water of the cycle and of creatine', () => {
  it('[EST-13] rises about the onset of menses, is counted on to the next, and is not known before a cycle is logged', () => {
    const rows = [day(0), day(10, undefined, { cycleDay: 1 }), day(60)];
    const { cycle } = waterShares(rows, undefined);
    expect(cycle(addDays(START, 5))).toBe(0);
    expect(cycle(addDays(START, 10))).toBe(1);
    expect(cycle(addDays(START, 24))).toBeLessThan(0.01);
    expect(cycle(addDays(START, 36))).toBeGreaterThan(0.8);
    expect(cycle(addDays(START, 60))).toBe(0);
  });

  it('[EST-13] creatine fills muscle over days from its start', () => {
    const { creatine } = waterShares([day(0)], addDays(START, 20));
    expect(creatine(addDays(START, 19))).toBe(0);
    expect(creatine(addDays(START, 20))).toBeLessThan(0.2);
    expect(creatine(addDays(START, 50))).toBeGreaterThan(0.95);
  });
});
