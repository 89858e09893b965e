import { describe, expect, it } from 'vitest';
import { withChange } from './change.ts';
import type { DayRow } from './day-row.ts';
import { futureDays, NO_MOVING_WATER } from './future-days.ts';
import { withStretches } from './stretches.ts';

const intake = (energyKcal: number, carbohydrateG = 200) => ({
  energyKcal,
  proteinG: 180,
  carbohydrateG,
  fatG: 60,
});
const past: DayRow[] = ['2027-03-01', '2027-03-02', '2027-03-03', '2027-03-04', '2027-03-05'].map((date) => ({
  date,
  intake: intake(2200),
  cardioKcal: 150,
}));

describe('futureDays', () => {
  it('[CRS-04] rows of the plan stand as they are and are known; weights in them are not looked at', () => {
    const plan: DayRow[] = [{ date: '2027-03-06', weightKg: 50, intake: intake(1900, 150), cardioKcal: 300 }];
    const { days, planned } = futureDays(
      [...past, ...plan],
      '2027-03-05',
      '2027-03-06',
      2500,
      NO_MOVING_WATER,
    );
    expect(planned).toBe(1);
    expect(days).toEqual([
      {
        date: '2027-03-06',
        energyKcal: 1900,
        carbohydrateKcal: 600,
        sodiumMg: Number.NaN,
        cardioKcal: 300,
        basis: 'known',
        cycleShare: 0,
        creatineShare: 0,
      },
    ]);
  });

  it('[CRS-04] beyond the plan its own average goes on; without a plan the log does', () => {
    const plan: DayRow[] = [
      { date: '2027-03-06', intake: intake(1900), cardioKcal: 100 },
      { date: '2027-03-08', intake: intake(1700), cardioKcal: 300 },
    ];
    const planned = futureDays([...past, ...plan], '2027-03-05', '2027-03-09', 2500, NO_MOVING_WATER).days;
    expect(planned.map((day) => day.energyKcal)).toEqual([1900, 1800, 1700, 1800]);
    expect(planned.map((day) => day.basis)).toEqual(['known', 'habit', 'known', 'habit']);
    expect(planned.at(-1)?.cardioKcal).toBe(200);
    const unplanned = futureDays(past, '2027-03-05', '2027-03-07', 2500, NO_MOVING_WATER).days;
    expect(unplanned.map((day) => [day.energyKcal, day.cardioKcal])).toEqual([
      [2200, 150],
      [2200, 150],
    ]);
  });

  it('[CRS-04] where nothing was ever logged the balance goes on, never zero', () => {
    const { days, goesOn } = futureDays([], '2027-03-05', '2027-03-06', 2500, NO_MOVING_WATER);
    expect(days[0]?.energyKcal).toBe(2500);
    expect(goesOn.loggedDays).toBe(0);
  });
});

describe('withChange', () => {
  const { days } = futureDays(past, '2027-03-05', '2027-03-08', 2500, NO_MOVING_WATER);

  it('[CRS-08] changes every day from its date on, carbohydrate by its share, nothing below zero', () => {
    const changed = withChange(days, { energyKcal: -100, cardioKcal: -400 }, '2027-03-07', 0.6);
    expect(changed.map((day) => day.energyKcal)).toEqual([2200, 2100, 2100]);
    expect(changed.map((day) => day.carbohydrateKcal)).toEqual([800, 740, 740]);
    expect(changed.map((day) => day.cardioKcal)).toEqual([150, 0, 0]);
    expect(withChange(days, {}, '2027-03-07', 0.6)).toBe(days);
  });
});

describe('withStretches', () => {
  const { days } = futureDays(past, '2027-03-05', '2027-03-14', 2500, NO_MOVING_WATER);

  it('[CRS-11] a diet break eats what keeps the balance with its cardio, the addition as carbohydrate', () => {
    const broken = withStretches(
      days,
      [{ type: 'diet break', from: '2027-03-08', until: '2027-03-09' }],
      2500,
    );
    expect(broken.map((day) => day.energyKcal)).toEqual([
      2200, 2200, 2650, 2650, 2200, 2200, 2200, 2200, 2200,
    ]);
    expect(broken[2]?.carbohydrateKcal).toBe(800 + 450);
  });

  it('[CRS-11] higher-carbohydrate days fall on their weekdays, with their own grams', () => {
    const stretch = {
      type: 'higher-carbohydrate days',
      from: '2027-03-06',
      until: '2027-03-14',
      weekdays: [3, 6],
      energyKcal: 2600,
      carbohydrateG: 400,
    } as const;
    const raised = withStretches(days, [stretch], 2500);
    expect(raised.flatMap((day) => (day.energyKcal === 2600 ? [day.date] : []))).toEqual([
      '2027-03-06',
      '2027-03-10',
      '2027-03-13',
    ]);
    expect(raised[0]?.carbohydrateKcal).toBe(1600);
  });
});
