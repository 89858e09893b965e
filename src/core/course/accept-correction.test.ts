import { describe, expect, it } from 'vitest';
import { safeParse } from 'valibot';
import { kinds } from '#core/journal/kinds/registry.ts';
import { acceptCorrection, type Acceptance } from './accept-correction.ts';

const target = (dayKind: 'training' | 'rest', carbohydrateG: number) =>
  ({
    from: '2027-02-01',
    until: '2027-05-01',
    dayKind,
    basis: 'course',
    proteinG: 185,
    carbohydrateG,
    fatG: 60,
    fibreMinG: 25,
    cardioKcal: 200,
  }) as const;

const acceptance: Acceptance = {
  change: { energyKcal: -100, cardioKcal: 50 },
  from: '2027-03-15',
  probabilityBefore: 0.2512,
  probabilityAfter: 0.71,
  why: ['The present plan misses the target beyond noise.'],
  standing: [
    { target: target('training', 260), daysAWeek: 4 },
    { target: target('rest', 180), daysAWeek: 3 },
  ],
  sex: 'male',
  massKg: 82,
  leanKg: 71,
};

const energy = (t: { proteinG: number; carbohydrateG: number; fatG: number }) =>
  4 * t.proteinG + 4 * t.carbohydrateG + 9 * t.fatG;

describe('[CRS-16] accepted corrections', () => {
  it('[CRS-16] become targets from the day on: protein stays, carbohydrate gives, cardio rises, the end date falls away', () => {
    const answer = acceptCorrection(acceptance);
    expect(answer).toMatchObject({
      ok: true,
      value: {
        correction: {
          from: '2027-03-15',
          energyKcal: -100,
          cardioKcal: 50,
          macro: 'carbohydrate',
          days: 'every',
          probabilityBefore: 0.251,
        },
        targets: [
          {
            from: '2027-03-15',
            dayKind: 'training',
            proteinG: 185,
            carbohydrateG: 235,
            fatG: 60,
            fibreMinG: 25,
            cardioKcal: 250,
          },
          { from: '2027-03-15', dayKind: 'rest', carbohydrateG: 155, cardioKcal: 250 },
        ],
      },
    });
    const value = answer.ok ? answer.value : undefined;
    expect(safeParse(kinds['correction-accepted'], value?.correction).success).toBe(true);
    for (const one of value?.targets ?? []) expect(safeParse(kinds['target-set'], one).success).toBe(true);
    expect(value?.targets[0]).not.toHaveProperty('until');
  });

  it('[CRS-16] on rest days alone they change by more, so that the week is the correction', () => {
    const answer = acceptCorrection({ ...acceptance, days: 'rest', change: { energyKcal: -60 } });
    const [rest] = answer.ok ? answer.value.targets : [];
    expect(answer.ok && answer.value.targets.length).toBe(1);
    expect(rest?.dayKind).toBe('rest');
    expect(rest && Math.abs(energy(rest) - (energy(target('rest', 180)) - 140))).toBeLessThanOrEqual(2);
  });

  it('[CRS-16] fat gives down to its floor, then carbohydrate; carbohydrate gives down to 50 g, then fat', () => {
    const fat = acceptCorrection({ ...acceptance, macro: 'fat', change: { energyKcal: -300 } });
    expect(fat.ok && fat.value.targets[1]).toMatchObject({ fatG: 41, carbohydrateG: 148 });
    const low = { ...target('rest', 60), fatG: 100 };
    const carbohydrate = acceptCorrection({
      ...acceptance,
      change: { energyKcal: -100 },
      standing: [{ target: low, daysAWeek: 7 }],
    });
    expect(carbohydrate.ok && carbohydrate.value.targets[0]).toMatchObject({ fatG: 93, carbohydrateG: 51 });
  });

  it('[CRS-16] both macros give in their parts', () => {
    const both = acceptCorrection({ ...acceptance, macro: 'both', change: { energyKcal: -90 } });
    expect(both.ok && both.value.targets[0]).toMatchObject({ fatG: 56, carbohydrateG: 247 });
  });

  it('[CRS-16] a day under its floor, or without room, or no such day, is refused', () => {
    const low = acceptCorrection({ ...acceptance, days: 'rest', change: { energyKcal: -250 } });
    expect(!low.ok && low.problem).toEqual({
      code: 'course/day-below-floor',
      path: 'rest',
      message:
        'A rest day would come to 1417 kcal. Nothing below 1500 kcal a day is planned: lower intakes belong under medical care.',
      remedy: 'Spread the correction over more days, or take part of it as cardio.',
    });
    const none = acceptCorrection({
      ...acceptance,
      days: 'rest',
      standing: [{ target: target('training', 260), daysAWeek: 7 }],
    });
    expect(!none.ok && none.problem.code).toBe('course/no-such-days');
    const dense = acceptCorrection({
      ...acceptance,
      change: { energyKcal: -50 },
      standing: [{ target: { ...target('rest', 0), proteinG: 320, fatG: 41 }, daysAWeek: 7 }],
    });
    expect(!dense.ok && dense.problem.code).toBe('course/no-room-for-carbohydrate');
  });
});
