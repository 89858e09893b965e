import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import { adherenceOf, adherenceTo, recentHabit } from './past-habits.ts';

const until = '2027-03-14';
const row = (age: number, energyKcal: number | undefined, more: Partial<DayRow> = {}): DayRow => ({
  date: addDays(until, -age),
  ...(energyKcal === undefined
    ? {}
    : { intake: { energyKcal, proteinG: 180, carbohydrateG: 200, fatG: 60 } }),
  ...more,
});

describe('recentHabit', () => {
  it('[CRS-04] is the average of the last fourteen days that were logged; unlogged days are not zero', () => {
    const rows = [row(20, 4000), ...[13, 10, 6, 3, 1].map((age) => row(age, 2000)), row(0, undefined)];
    expect(recentHabit(rows, until)).toMatchObject({
      loggedDays: 5,
      energyKcal: 2000,
      proteinG: 180,
      cardioKcal: 0,
    });
  });

  it('[CRS-04] asks the longer stretch where too few recent days were logged', () => {
    const rows = [30, 25, 20, 2].map((age) => row(age, age === 2 ? 2400 : 2000));
    expect(recentHabit(rows, until)).toMatchObject({ loggedDays: 4, energyKcal: 2100 });
    expect(recentHabit([row(100, 1900)], until)).toMatchObject({ loggedDays: 1, energyKcal: 1900 });
  });

  it('[CRS-04] sodium that was never logged stays unknown; nothing logged is no habit', () => {
    expect(recentHabit([row(1, 2000)], until)?.sodiumMg).toBeNaN();
    expect(recentHabit([row(1, undefined, { weightKg: 80 })], until)).toBeUndefined();
  });
});

describe('adherenceOf', () => {
  it('[CRS-04] learns how weeks stray, and days within them', () => {
    const rows = Array.from({ length: 56 }, (_, age) =>
      row(age, 2000 + (Math.floor(age / 7) % 2 === 0 ? 100 : -100)),
    );
    const steady = Array.from({ length: 56 }, (_, age) => row(age, 2000));
    expect(adherenceOf(rows, until).weekSd).toBeGreaterThan(0.05);
    expect(adherenceOf(steady, until).weekSd).toBeLessThan(0.03);
    expect(adherenceOf(steady, until).daySd).toBeLessThan(0.06);
    expect(adherenceOf(rows, until).share).toBe(1);
    const falling = Array.from({ length: 84 }, (_, age) => row(age, 2000 + 40 * Math.floor(age / 7)));
    expect(adherenceOf(falling, until).levelSd).toBeGreaterThan(2 * adherenceOf(steady, until).levelSd);
  });

  it('[CRS-04] believes the common figures before there is a log', () => {
    expect(adherenceOf([row(1, 2000)], until)).toEqual({
      share: 1,
      weekSd: 0.04,
      levelSd: 0.012,
      daySd: 0.1,
      cardioShare: 1,
      cardioSd: 0.1,
    });
  });
});

describe('adherenceTo', () => {
  const rows = Array.from({ length: 28 }, (_, age) => row(age, 2200, { cardioKcal: 150 }));

  it('[CRS-04] learns how the plan is kept, shrunk towards keeping it', () => {
    const planned = rows.map(({ date }) => ({ date, energyKcal: 2000, cardioKcal: 200 }));
    const kept = adherenceTo(planned, rows, until);
    expect(kept.share).toBeCloseTo((28 * 1.1 + 7) / 35, 12);
    expect(kept.cardioShare).toBe(0.75);
  });

  it('[CRS-04] days without a plan, or without a log, teach nothing', () => {
    expect(adherenceTo([], rows, until)).toMatchObject({ share: 1, cardioShare: 1 });
    const planned = rows.map(({ date }) => ({ date, energyKcal: 2000 }));
    expect(adherenceTo(planned, [row(3, undefined)], until).share).toBe(1);
  });
});
