import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weekTargets, type WeekShape } from './day-targets.ts';

const shape: WeekShape = {
  sex: 'male',
  massKg: 82,
  leanKg: 71,
  energyKcal: 2400,
  balanceKcal: 2750,
  cardioKcal: 200,
  trainingDays: 4,
  higherCarbohydrateDays: 1,
};

describe('[CRS-13] week targets', () => {
  it('[CRS-13] training, rest and higher-carbohydrate days average to the week, protein from lean mass', () => {
    const answer = weekTargets(shape);
    expect(answer).toMatchObject({
      ok: true,
      value: {
        targets: [
          { dayKind: 'training', daysAWeek: 4, proteinG: 185 },
          { dayKind: 'rest', daysAWeek: 2, proteinG: 185 },
          { dayKind: 'higher-carbohydrate', daysAWeek: 1, proteinG: 185, fatG: 41 },
        ],
      },
    });
    expect(answer.ok && Math.abs(answer.value.energyKcal - 2400)).toBeLessThan(3);
    expect(answer.ok && answer.value.why[0]).toBe(
      'At least 164 g of protein a day: 2.3 g for each of 71 kg of fat-free mass.',
    );
  });

  it('[CRS-13] a week below its floor and a day below its own are refused with the limit', () => {
    expect(weekTargets({ ...shape, energyKcal: 1900 })).toEqual({
      ok: false,
      problem: {
        code: 'course/week-below-floor',
        path: 'energyKcal',
        message:
          'The week would average 1900 kcal a day. Nothing below 1975 kcal a day is planned: 71 kg of fat-free mass at 25 kcal each, and 200 kcal of exercise.',
        remedy: 'Take a milder target, a later show, or less cardio.',
      },
    });
    const steep = weekTargets({
      ...shape,
      energyKcal: 2000,
      trainingExtraKcal: 900,
      higherCarbohydrateDays: 0,
    });
    expect(!steep.ok && steep.problem.code).toBe('course/day-below-floor');
    expect(!steep.ok && steep.problem.path).toBe('rest');
    const full = weekTargets({ ...shape, trainingDays: 7 });
    expect(!full.ok && full.problem.code).toBe('course/more-than-a-week');
    const dense = weekTargets({ ...shape, energyKcal: 1975, proteinGPerKgLean: 6 });
    expect(!dense.ok && dense.problem.code).toBe('course/no-room-for-carbohydrate');
  });

  it('[CRS-13] whatever the week, its days average to it within 5 kcal and keep the protein and fat floors', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2000, max: 3200 }),
        fc.integer({ min: 0, max: 7 }),
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 300 }),
        (energyKcal, trainingDays, higherCarbohydrateDays, trainingExtraKcal) => {
          const answer = weekTargets({
            ...shape,
            energyKcal,
            trainingDays,
            higherCarbohydrateDays,
            trainingExtraKcal,
          });
          fc.pre(answer.ok);
          const { targets, energyKcal: average } = answer.ok ? answer.value : { targets: [], energyKcal: 0 };
          expect(Math.abs(average - energyKcal)).toBeLessThan(5);
          expect(targets.reduce((sum, target) => sum + target.daysAWeek, 0)).toBe(7);
          for (const { proteinG, fatG, carbohydrateG, energyKcal: kcal } of targets) {
            expect(proteinG).toBeGreaterThanOrEqual(2.3 * shape.leanKg);
            expect(fatG).toBeGreaterThanOrEqual(0.5 * shape.massKg);
            expect(carbohydrateG).toBeGreaterThanOrEqual(0);
            expect(kcal).toBe(4 * proteinG + 4 * carbohydrateG + 9 * fatG);
          }
        },
      ),
      { seed: 13 },
    );
  });
});
