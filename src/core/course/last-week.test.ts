import { describe, expect, it, vi } from 'vitest';
import { knownCourse } from '../../../test/simulation/known-course.ts';
import { sources } from '#core/tables/sources.ts';
import { foretellJump } from './foretell-jump.ts';
import { type LastWeekInput, planLastWeek } from './last-week.ts';
import { withStretches } from './stretches.ts';

vi.setConfig({ testTimeout: 30_000 });

const input: LastWeekInput = {
  show: '2027-05-10',
  today: '2027-05-03',
  massKg: 78,
  leanKg: 71,
  habit: { proteinG: 190, carbohydrateG: 180, fatG: 55, fibreG: 30, sodiumMg: 4000, waterMl: 4000 },
  rehearsed: true,
};

describe('[CRS-23] the last week', () => {
  it('[CRS-23] tapers, loads inside the studied dose with less fibre and fat at its floor, keeps water and sodium', () => {
    const week = planLastWeek(input);
    const days = week.ok ? week.value.days : [];
    expect(days.map(({ role }) => role)).toEqual([
      'taper',
      'taper',
      'taper',
      'taper',
      'taper',
      'load',
      'load',
      'show',
    ]);
    expect(days[5]).toEqual({
      date: '2027-05-08',
      daysOut: 2,
      role: 'load',
      energyKcal: 4 * 164 + 4 * 625 + 9 * 39,
      proteinG: 164,
      carbohydrateG: 625,
      fatG: 39,
      fibreMaxG: 15,
      waterMl: 4000,
      sodiumMg: 4000,
      training: 'Rest and posing; no hard sets.',
    });
    for (const day of days) {
      expect(day.waterMl).toBe(4000);
      expect(day.sodiumMg).toBe(4000);
      expect(day.carbohydrateG).toBeLessThanOrEqual(9 * 78);
    }
  });

  it('[CRS-23] wishes past a limit are brought back to it and the reason is said', () => {
    const week = planLastWeek({ ...input, wish: { loadGPerKg: 14, waterMl: 500, sodiumMg: 0 } });
    expect(week.ok && week.value.days[5]).toMatchObject({
      carbohydrateG: 700,
      waterMl: 3200,
      sodiumMg: 3200,
    });
    expect(week.ok && week.value.why.slice(0, 3)).toEqual([
      'No more than 700 g of carbohydrate on a loading day: 9 g for each of 78 kg, the dose of the trials, at which half had an upset gut.',
      'At least 3200 mL of water a day: near your habit of 4000 mL; water is never cut.',
      'At least 3200 mg of sodium a day: near your habit of 4000 mg; salt is never stripped out.',
    ]);
  });

  it('[CRS-23] what hurts is named as refused, with the red flags', () => {
    const week = planLastWeek(input);
    expect(week.ok && week.value.refused.length).toBe(7);
    for (const key of week.ok ? week.value.sources : ['none']) expect(sources).toHaveProperty(key);
    expect(week.ok && week.value.redFlags).toContain('no urine for 12 hours');
  });

  it('[CRS-23] unknown habits stay unknown; no load is a sound week; an untried load is warned of', () => {
    const bare = planLastWeek({
      ...input,
      habit: { proteinG: 190, carbohydrateG: 180, fatG: 55 },
      wish: { loadDays: 0 },
      rehearsed: false,
    });
    expect(
      bare.ok && bare.value.days.every((day) => day.waterMl === undefined && day.sodiumMg === undefined),
    ).toBe(true);
    expect(bare.ok && bare.value.days.map(({ role }) => role)).not.toContain('load');
    expect(bare.ok && bare.value.days.at(-1)?.carbohydrateG).toBe(180);
    const untried = planLastWeek({ ...input, rehearsed: false });
    expect(untried.ok && untried.value.why.some((words) => words.includes('has not been rehearsed'))).toBe(
      true,
    );
  });

  it('[CRS-23] offers a rehearsal while there is time for one', () => {
    const early = planLastWeek({ ...input, today: '2027-04-19', rehearsed: false });
    expect(early.ok && early.value.rehearsal).toEqual({ from: '2027-04-19', until: '2027-04-19' });
    const late = planLastWeek({ ...input, rehearsed: false });
    expect(late.ok && late.value.rehearsal).toBeUndefined();
  });

  it('[CRS-23] what cannot be planned is said', () => {
    const codes = [
      planLastWeek({ ...input, today: '2027-05-11' }),
      planLastWeek({ ...input, today: '2027-04-01' }),
      planLastWeek({ ...input, wish: { loadDays: 4 } }),
    ].map((outcome) => !outcome.ok && outcome.problem.code);
    expect(codes).toEqual(['course/not-the-last-week', 'course/not-the-last-week', 'course/loading-days']);
    const near = planLastWeek({ ...input, today: '2027-05-09' });
    expect(near.ok && near.value.days.map(({ role }) => role)).toEqual(['load', 'show']);
  });

  it('[CRS-23] the rise it foretells lies inside what the crossover trial saw and the trade expects (homer-2024: 0.8 %)', () => {
    const course = knownCourse({ show: '2027-05-10' });
    const week = planLastWeek({ ...input, massKg: course.startMassKg });
    const stretches = week.ok ? week.value.stretches.filter(({ from }) => from < '2027-05-10') : [];
    const loaded = withStretches(course.future.days, stretches, course.balanceKcal);
    const jump = foretellJump(course, course.future.days, loaded, '2027-05-09');
    const percent = (100 * (jump?.riseKg.mean ?? 0)) / 80;
    expect(percent).toBeGreaterThan(0.8);
    expect(percent).toBeLessThan(3.5);
  });
});
