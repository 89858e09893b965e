import { describe, expect, it } from 'vitest';
import { sources } from '#core/tables/sources.ts';
import { type AfterwardsInput, planAfterwards } from './afterwards.ts';

const input: AfterwardsInput = {
  show: '2027-05-10',
  sex: 'female',
  massKg: 54,
  fatKg: 6.5,
  dietKcal: 1650,
  balanceKcal: 2050,
  pace: 'at once',
};

describe('[CRS-24] afterwards', () => {
  it('[CRS-24] at once: balance in the first week, then a small surplus', () => {
    const { weeks } = planAfterwards(input);
    expect(weeks).toHaveLength(12);
    expect(weeks[0]).toMatchObject({ from: '2027-05-11', week: 1, energyKcal: 2050 });
    expect(weeks[1]?.energyKcal).toBe(2214);
  });

  it('[CRS-24] in steps: never past the goal, never below the diet', () => {
    const { weeks } = planAfterwards({ ...input, pace: 'in steps' });
    expect(weeks.slice(0, 5).map(({ energyKcal }) => energyKcal)).toEqual([1800, 1950, 2100, 2214, 2214]);
    const high = planAfterwards({ ...input, dietKcal: 2500 }).weeks;
    expect(high.every(({ energyKcal }) => energyKcal === 2500)).toBe(true);
  });

  it('[CRS-24] foretells the first week of trexler-2017: 65.4 kg rise to 67.4 inside the band', () => {
    const { weeks, why } = planAfterwards({ ...input, massKg: 65.4 });
    expect(weeks[0]?.massKg.low ?? 99).toBeLessThan(67.4);
    expect(weeks[0]?.massKg.high ?? 0).toBeGreaterThan(67.4);
    // Four to six weeks after, 69.3 kg.
    expect(weeks[4]?.massKg.low ?? 99).toBeLessThan(69.3);
    expect(weeks[4]?.massKg.high ?? 0).toBeGreaterThan(69.3);
    expect(why[1]).toContain('about 2 kg in the first week');
  });

  it('[CRS-24] paces the regain towards a healthy range and names its markers', () => {
    const plan = planAfterwards(input);
    expect(plan.healthyPercent).toEqual({ low: 18, high: 25 });
    expect((plan.reachedBy ?? '') > '2027-06-10').toBe(true);
    expect((plan.reachedBy ?? '9') < '2028-03-01').toBe(true);
    expect(plan.markers[0]).toBe('menses');
    expect(planAfterwards({ ...input, sex: 'male', massKg: 75, fatKg: 9 }).reachedBy).toBe('2027-05-10');
  });

  it('[CRS-24] defers to care where it can hurt, without shaming', () => {
    const missing = planAfterwards({ ...input, daysSinceMenses: 95 }).cautions.join(' ');
    expect(missing).toContain('No menses for three months: see a physician');
    expect(planAfterwards(input).cautions.join(' ')).not.toContain('No menses');
    expect(missing).toContain('no failure');
    expect(missing).toContain('phosphate');
    for (const key of planAfterwards(input).sources) expect(sources).toHaveProperty(key);
  });
});
