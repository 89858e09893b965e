import { describe, expect, it } from 'vitest';
import { limitSources } from '#core/tables/sources-limits.ts';
import { adultsOnly } from './adults-only.ts';
import { bodyFatFloor } from './body-fat-floor.ts';
import { cardioCeiling } from './cardio-ceiling.ts';
import { dailyEnergyFloor, energyAvailabilityFloor } from './daily-energy-floor.ts';
import { lastWeekSodium, lastWeekWater } from './last-week-limits.ts';
import type { Limit } from './limit.ts';
import { loadCeiling } from './load-ceiling.ts';
import { lossRateCeiling } from './loss-rate-ceiling.ts';
import { fatFloor, proteinFloor } from './macro-floors.ts';
import { refusedPractices } from './refused-practices.ts';

/** [limit, present, the words of every reason]. */
const limits: readonly (readonly [string, Limit, number, readonly string[]])[] = [
  [
    'loss rate',
    lossRateCeiling({ lossPercentPerWeek: { max: 0.6 } }),
    0.6,
    [
      'No faster than 1 % of body mass a week: beyond it more of the loss is muscle.',
      'No faster than 0.6 % of body mass a week: your own limit.',
    ],
  ],
  [
    'protein',
    proteinFloor(65, { proteinG: { min: 160 } }),
    160,
    [
      'At least 150 g of protein a day: 2.3 g for each of 65 kg of fat-free mass.',
      'At least 160 g of protein a day: your own limit.',
    ],
  ],
  [
    'fat',
    fatFloor(81, { fatG: { min: 60 } }, 4500),
    60,
    [
      'At least 41 g of fat a day: 0.5 g for each of 81 kg of body mass.',
      'At least 50 g of fat a day: 10 % of 4500 kcal.',
      'At least 60 g of fat a day: your own limit.',
    ],
  ],
  [
    'energy, woman',
    dailyEnergyFloor({ sex: 'female', massKg: 58, leanKg: 46.6, exerciseKcal: 250 }),
    1648,
    [
      'Nothing below 1200 kcal a day is planned: lower intakes belong under medical care.',
      'Nothing below 690 kcal a day is planned: 108 g of protein and 29 g of fat need it before any carbohydrate.',
      'Nothing below 1648 kcal a day is planned: 46.6 kg of fat-free mass at 30 kcal each, and 250 kcal of exercise.',
    ],
  ],
  [
    'energy, man with his own floor',
    dailyEnergyFloor({
      sex: 'male',
      massKg: 80,
      leanKg: 70,
      exerciseKcal: 200,
      own: { energyKcal: { min: 2100 } },
    }),
    2100,
    [
      'Nothing below 1500 kcal a day is planned: lower intakes belong under medical care.',
      'Nothing below 1004 kcal a day is planned: 161 g of protein and 40 g of fat need it before any carbohydrate.',
      'Nothing below 2100 kcal a day is planned: your own limit.',
      'Nothing below 1950 kcal a day is planned: 70 kg of fat-free mass at 25 kcal each, and 200 kcal of exercise.',
    ],
  ],
  [
    'energy availability, woman',
    energyAvailabilityFloor('female', { energyAvailability: { min: 35 } }),
    35,
    [
      'Energy availability stays at 30 kcal per kg of fat-free mass or above: below it, hormones, bone and the cycle suffer.',
      'Energy availability stays at 35 kcal per kg of fat-free mass or above: your own limit.',
    ],
  ],
  [
    'energy availability, man',
    energyAvailabilityFloor('male'),
    25,
    [
      'Energy availability stays at 25 kcal per kg of fat-free mass or above: men have no agreed threshold, but below it muscle, hormones and mood have suffered.',
    ],
  ],
  [
    'body fat, man',
    bodyFatFloor('male', { bodyFatPercent: { min: 6 } }),
    6,
    [
      'Nothing below 5 % body fat is planned: it is the floor for men in the position stands on weight loss in sport.',
      'Nothing below 6 % body fat is planned: your own limit.',
    ],
  ],
  [
    'body fat, woman',
    bodyFatFloor('female'),
    12,
    [
      'Nothing below 12 % body fat is planned: it is the floor for women in the position stands on weight loss in sport.',
    ],
  ],
  [
    'cardio from a large dose',
    cardioCeiling(401),
    521.3,
    ['No more than 521 kcal of cardio a day next week: last week had 401, and a week grows by 30 % at most.'],
  ],
  [
    'cardio from nothing, with an own ceiling',
    cardioCeiling(0, { cardioKcal: { max: 80 } }),
    80,
    [
      'No more than 100 kcal of cardio a day next week: last week had 0, and a week grows by 100 kcal a day at most.',
      'No more than 80 kcal of cardio a day: your own limit.',
    ],
  ],
  [
    'carbohydrate of a loading day',
    loadCeiling(78),
    702,
    [
      'No more than 700 g of carbohydrate on a loading day: 9 g for each of 78 kg, the dose of the trials, at which half had an upset gut.',
    ],
  ],
  [
    'water floor of the last week',
    lastWeekWater(4000).floor,
    3200,
    ['At least 3200 mL of water a day: near your habit of 4000 mL; water is never cut.'],
  ],
  [
    'water ceiling of the last week',
    lastWeekWater(9000).ceiling,
    10_000,
    [
      'No more than 10000 mL of water a day: the kidneys cannot clear more safely.',
      'No more than 10800 mL of water a day: near your habit of 9000 mL.',
    ],
  ],
  [
    'sodium floor of the last week',
    lastWeekSodium(500).floor,
    500,
    [
      'At least 500 mg of sodium a day: the body needs that much to hold its blood volume.',
      'At least 400 mg of sodium a day: near your habit of 500 mg; salt is never stripped out.',
    ],
  ],
  [
    'sodium ceiling of the last week',
    lastWeekSodium(3990).ceiling,
    4788,
    ['No more than 4750 mg of sodium a day: near your habit of 3990 mg.'],
  ],
];

describe('[LIM-31] sentences and sources', () => {
  it.each(limits)('[LIM-31] %s, word for word', (_name, limit, present, words) => {
    expect(limit.present).toBeCloseTo(present, 9);
    expect(limit.reasons.map((reason) => reason.words)).toEqual(words);
    for (const { source } of limit.reasons) expect(limitSources).toHaveProperty(source);
  });

  it('[LIM-02] an own limit that is looser changes nothing', () => {
    expect(lossRateCeiling({ lossPercentPerWeek: { max: 2 } })).toEqual({
      ...lossRateCeiling(),
      reasons: [...lossRateCeiling().reasons, expect.objectContaining({ limit: 'own', value: 2 })],
    });
    expect(bodyFatFloor('female', { bodyFatPercent: { min: 8 } }).present).toBe(12);
  });

  it('[LIM-05] nothing is planned for people under 18', () => {
    expect(adultsOnly(18, 'athlete.age')).toEqual({ ok: true, value: 18 });
    expect(adultsOnly(17, 'athlete.age')).toEqual({
      ok: false,
      problem: {
        code: 'limits/adults-only',
        path: 'athlete.age',
        message: 'The age is 17; this tool plans energy restriction for adults of 18 years and more only.',
        remedy:
          'Growing bodies belong in the hands of a physician and a dietitian; correct the age if it is a slip.',
      },
    });
  });

  it('[LIM-20] each refused practice says why and what it has done, with a source', () => {
    const refused = refusedPractices.map(({ practice }) => practice).join('; ');
    for (const word of ['water', 'sodium', 'Diuretics', 'laxatives', 'Potassium', 'Sauna', 'Insulin'])
      expect(refused).toContain(word);
    for (const { why, hazard, source } of refusedPractices) {
      expect(limitSources).toHaveProperty(source);
      expect(why.endsWith('.') && hazard.endsWith('.')).toBe(true);
    }
  });
});

describe('[LIM-10] worked values from publications', () => {
  it('[LIM-12] 65 kg of fat-free mass: 149.5 g of protein (Helms 2014, 2.3 g/kg)', () => {
    expect(proteinFloor(65).present).toBeCloseTo(149.5, 9);
  });

  it('[LIM-11] the woman of Halliday 2016 (Nutrients 8:740) stood below the floor in each week reported', () => {
    for (const [intake, exercise, availability] of [
      [1798, 484, 28.2],
      [1541, 459, 23.2],
      [1712, 440, 27.3],
    ] as const) {
      expect((intake - exercise) / 46.6).toBeCloseTo(availability, 1);
      const floor = dailyEnergyFloor({ sex: 'female', massKg: 54, leanKg: 46.6, exerciseKcal: exercise });
      expect(intake).toBeLessThan(floor.present);
    }
  });
});
