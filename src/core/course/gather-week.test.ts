import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';
import { type CheckInInput, gatherWeek } from './gather-week.ts';
import { propose } from './propose.ts';

const until = '2027-03-14';
const days = Array.from({ length: 14 }, (_, i) => addDays(until, i - 13));

function input(change: Partial<CheckInInput> = {}, intakeKcal = 2200): CheckInInput {
  return {
    until,
    rows: days.map(
      (date, i): DayRow => ({
        date,
        weightKg: 82 - 0.07 * i,
        intake: { energyKcal: i < 7 ? 2250 : intakeKcal, proteinG: 185, carbohydrateG: 220, fatG: 60 },
        cardioKcal: i < 7 ? 200 : 240,
      }),
    ),
    estimated: days.map((date, i) => ({
      date,
      massKg: { mean: 81.8 - 0.07 * i, sd: 0.2 },
      fatKg: { mean: 10 - 0.05 * i, sd: 1 },
    })),
    planned: days.map((date) => ({ date, energyKcal: 2200, cardioKcal: 240 })),
    strength: { kept: 0.99, sd: 0.02 },
    feelings: { sleep: 4, hunger: 3, mood: 4 },
    feelingsBefore: { sleep: 4, hunger: 3, mood: 4 },
    ...change,
  };
}

describe('[CRS-17] the week gathered', () => {
  it('[CRS-17] sets mass, intake, adherence and cardio of a week against the week before', () => {
    const week = gatherWeek(input());
    expect(week.thisWeek).toMatchObject({
      from: '2027-03-08',
      weighIns: 7,
      energyKcal: 2200,
      adherence: 1,
      cardioKcal: 240,
      cardioAdherence: 1,
    });
    expect(week.lastWeek).toMatchObject({ until: '2027-03-07', energyKcal: 2250, cardioKcal: 200 });
    expect(week.cardioGrowth).toBe(0.2);
    expect(week.lossPercent).toBeCloseTo(0.6, 1);
    expect(week.flags).toEqual([]);
    expect(week.words).toEqual([
      'Body mass changed by -0.6 % in the week, give or take 0.57.',
      'Intake averaged 2200 kcal on 7 logged days, 2250 the week before.',
      'Cardio averaged 240 kcal a day, 200 the week before.',
      'Strength over the main lifts stands at 99 % of the start, nine times of ten between 96 and 102 %.',
    ]);
  });

  it('[GYM-41] says what a kilogram of body mass cost, and nothing of strength where nothing tells', () => {
    const strength = { kept: 0.96, sd: 0.01, lostPercentPerKg: 0.71 };
    expect(gatherWeek(input({ strength })).words).toContain(
      'Strength over the main lifts stands at 96 % of the start, nine times of ten between 94 and 98 %, 0.7 % for each 1 kg of body mass lost.',
    );
    expect(gatherWeek(input({ strength: undefined })).words.join(' ')).not.toContain('Strength');
  });

  it('[CRS-17] unlogged days are not zero, and a thin week is said', () => {
    const thin = gatherWeek(
      input({ rows: input().rows.map((row, i) => (i > 9 ? { date: row.date } : row)) }),
    );
    expect(thin.thisWeek.energyKcal).toBe(2200);
    expect(thin.thisWeek.loggedDays).toBe(3);
    expect(thin.flags.map((flag) => flag.about)).toEqual(['log']);
    const empty = gatherWeek(input({ rows: [], estimated: [], planned: [] }));
    expect(empty.thisWeek).not.toHaveProperty('energyKcal');
    expect(empty).not.toHaveProperty('lossPercent');
    expect(empty).not.toHaveProperty('cardioGrowth');
  });

  it('[CRS-17] flags a plan not followed, cardio grown too fast, strength lost beyond noise, low or fallen feelings', () => {
    const strained = gatherWeek(
      input(
        {
          strength: { kept: 0.9, sd: 0.02 },
          feelings: { sleep: 2, mood: 3, joints: 4 },
          feelingsBefore: { sleep: 3, mood: 5, joints: 4 },
          rows: input({}, 2450).rows.map((row, i) => (i >= 7 ? { ...row, cardioKcal: 400 } : row)),
        },
        2450,
      ),
    );
    expect(strained.flags.map((flag) => flag.words)).toEqual([
      'Intake was 11 % over the plan: the plan itself has not been tried, so it need not change.',
      'Cardio grew from 200 to 400 kcal a day. No more than 300 kcal of cardio a day next week: last week had 200, and a week grows by 100 kcal a day at most.',
      'Strength stands at 90 % of the start, beyond its own noise: ease the deficit before asking more.',
      'Sleep is rated 2 of 5, 3 the week before.',
      'Mood is rated 3 of 5, 5 the week before.',
    ]);
  });

  it('[CRS-17] strength lost within its own noise is no flag', () => {
    expect(gatherWeek(input({ strength: { kept: 0.93, sd: 0.06 } })).flags).toEqual([]);
  });
});

describe('[CRS-18] what is proposed', () => {
  const sound = gatherWeek(input());
  const thin = gatherWeek(input({ rows: [] }));
  const strayed = gatherWeek(input({}, 2450));
  const weak = gatherWeek(input({ strength: { kept: 0.9, sd: 0.02 } }));
  const low = gatherWeek(input({ feelings: { sleep: 1, mood: 1 } }));

  it.each([
    ['a sound week behind its course is corrected', 'behind', sound, 'correct'],
    ['a sound week on course is held', 'on course', sound, 'hold'],
    ['a week ahead gives something back', 'ahead', sound, 'correct'],
    ['a thin week asks for more evidence', 'behind', thin, 'more evidence'],
    ['too little evidence asks for more', 'too little evidence', sound, 'more evidence'],
    ['a plan that was not followed is tried first', 'behind', strayed, 'hold'],
    ['lost strength holds', 'behind', weak, 'hold'],
    ['two bad feelings hold', 'behind', low, 'hold'],
    ['what is out of reach is not chased', 'out of reach', sound, 'hold'],
  ] as const)('[CRS-18] %s', (_title, verdict, week, decision) => {
    const proposal = propose(verdict, week);
    expect(proposal.decision).toBe(decision);
    expect(proposal.why.length).toBeGreaterThan(0);
  });
});
