import { describe, expect, it } from 'vitest';
import {
  DAY,
  dayJournal,
  dayMs,
  plainDay,
  plainPlan,
  type DayStep,
} from '../../../test/journal/day-journal.ts';
import { separationRules } from '../tables/separation-rules.ts';
import { parseClock } from '../units/clock.ts';
import { daySheet } from './day-sheet.ts';
import { dosesOfDay } from './doses-of-day.ts';
import { kitchenNow } from './kitchen-now.ts';
import { runSheet } from './run-sheet.ts';

const shelf: readonly DayStep[] = [
  [
    '05:10',
    'supplement-defined',
    {
      supplement: 'multi',
      name: 'Multi',
      unit: 'tablet',
      perUnits: 1,
      contents: [{ of: 'zinc', amount: 10, unit: 'mg' }],
    },
  ],
  [
    '05:10',
    'supplement-defined',
    {
      supplement: 'creatine',
      name: 'Creatine',
      unit: 'gram',
      perUnits: 5,
      contents: [{ of: 'creatine', amount: 5, unit: 'g' }],
    },
  ],
  [
    '05:11',
    'regimen-set',
    {
      regimen: 'first',
      supplement: 'multi',
      units: 1,
      tie: { to: 'first meal' },
      cadence: { of: 'every day' },
      from: DAY,
    },
  ],
  [
    '05:11',
    'regimen-set',
    {
      regimen: 'last',
      supplement: 'creatine',
      units: 5,
      tie: { to: 'last meal' },
      cadence: { of: 'every day' },
      from: DAY,
    },
  ],
];

function at(clock: string, ...steps: readonly DayStep[]) {
  const ledger = dayJournal(...plainDay, ...shelf, ...steps);
  const now = parseClock(clock) ?? 0;
  const sheet = daySheet(ledger, DAY, now, kitchenNow(ledger, dayMs(clock)).read);
  const doses = dosesOfDay(ledger, sheet, now);
  if (!doses.ok) throw new Error(doses.problem.message);
  return { doses: doses.value, rows: runSheet(sheet, ledger, now) };
}

const slots = (clock: string, ...steps: readonly DayStep[]) =>
  at(clock, ...steps).doses.groups.map(({ slot, items }) => [slot, items.map(({ regimen }) => regimen)]);

/** The plan after it was made anew: one meal, later. */
const oneMealLeft: DayStep = [
  '12:30',
  'plan-adopted',
  {
    cause: 'running late',
    meals: [
      {
        slot: 'meal-3',
        at: '18:10',
        role: 'after-training',
        target: { proteinG: 60, carbohydrateG: 80, fatG: 10 },
        items: [{ source: 'food', food: 'usda-sr28:08120', grams: 60 }],
        pinned: false,
      },
    ],
    cost: 1,
    gap: 0,
  },
];

describe('the doses of a day', () => {
  it('[HLT-37] stand beside the meals they are tied to, as lines right behind them', () => {
    expect(slots('06:10', plainPlan)).toEqual([
      ['meal-1', ['first']],
      ['meal-2', ['last']],
    ]);
    const { rows } = at('06:10', plainPlan);
    const types = rows.map(({ thing }) => thing.type);
    expect(types[types.indexOf('meal') + 1]).toBe('doses');
  });

  it('[HLT-37] a day planned anew moves them with the meals', () => {
    const { doses, rows } = at('12:40', plainPlan, oneMealLeft);
    expect(doses.groups.map(({ slot }) => slot)).toEqual(['meal-3']);
    expect(doses.groups[0]?.items.map(({ at: time }) => time)).toEqual(['18:10', '18:10']);
    expect(rows.find(({ thing }) => thing.type === 'doses')?.at).toBe(18 * 60 + 10);
  });

  it('[HLT-37] a late meal waits with its dose; one just eaten may still be followed by it, an hour later no more', () => {
    const eaten: DayStep = [
      '12:00',
      'meal-eaten',
      { slot: 'meal-1', items: [{ source: 'food', food: 'usda-sr28:08120', grams: 80 }] },
    ];
    expect(slots('11:30', plainPlan)[0]).toEqual(['meal-1', ['first']]);
    expect(slots('12:20', plainPlan, eaten)[0]).toEqual(['meal-1', ['first']]);
    expect(slots('12:55', plainPlan, eaten)).toEqual([['meal-2', expect.arrayContaining(['first', 'last'])]]);
  });

  it('[HLT-38] what is taken or skipped is done, with its reason, and no longer due', () => {
    const { doses, rows } = at(
      '07:30',
      plainPlan,
      ['07:05', 'supplement-taken', { supplement: 'multi', units: 1, regimen: 'first', slot: 'meal-1' }],
      ['07:06', 'supplement-skipped', { supplement: 'creatine', regimen: 'last', reason: 'Ran out' }],
    );
    expect(doses.groups).toEqual([]);
    expect(doses.done.map(({ name, fact }) => [name, fact.kind])).toEqual([
      ['Multi', 'supplement-taken'],
      ['Creatine', 'supplement-skipped'],
    ]);
    expect(rows.filter(({ thing }) => thing.type === 'dose-done').map(({ state }) => state)).toEqual([
      'done',
      'done',
    ]);
  });

  it('[HLT-37] on the morning of a draw nothing is due before it', () => {
    const draw: DayStep = [
      '05:20',
      'draw-planned',
      { draw: 'd', date: DAY, at: '09:00', analytes: [], fasting: true },
    ];
    const { doses, rows } = at('06:10', plainPlan, draw);
    expect(doses.groups.every(({ at: time }) => time >= 9 * 60)).toBe(true);
    expect(rows.find(({ thing }) => thing.type === 'draw')).toMatchObject({ at: 540 });
    expect(rows.find(({ state }) => state === 'next')?.thing.type).not.toBe('draw-lines');
  });

  it('[HLT-37] no two of a conflicting pair stand inside their gap, on any plan of the day', () => {
    const pair: readonly DayStep[] = [
      [
        '05:12',
        'supplement-defined',
        {
          supplement: 'iron',
          name: 'Iron',
          unit: 'capsule',
          perUnits: 1,
          contents: [{ of: 'iron', amount: 25, unit: 'mg' }],
        },
      ],
      [
        '05:12',
        'supplement-defined',
        {
          supplement: 'calcium',
          name: 'Calcium',
          unit: 'tablet',
          perUnits: 1,
          contents: [{ of: 'calcium', amount: 400, unit: 'mg' }],
        },
      ],
      [
        '05:13',
        'regimen-set',
        {
          regimen: 'fe',
          supplement: 'iron',
          units: 1,
          tie: { to: 'first meal' },
          cadence: { of: 'every day' },
          from: DAY,
        },
      ],
      [
        '05:13',
        'regimen-set',
        {
          regimen: 'ca',
          supplement: 'calcium',
          units: 1,
          tie: { to: 'first meal' },
          cadence: { of: 'every day' },
          from: DAY,
        },
      ],
    ];
    const rule = separationRules.find(({ a, b }) => [a, b].includes('iron') && [a, b].includes('calcium'));
    const gap = Math.min(rule?.aThenBMinutes ?? 0, rule?.bThenAMinutes ?? 0);
    expect(gap).toBeGreaterThan(0);
    for (const clock of ['06:10', '08:00', '12:40', '15:00', '19:00']) {
      for (const plan of [[plainPlan], [plainPlan, oneMealLeft]]) {
        const { answer } = at(clock, ...plan, ...pair).doses;
        const time = (regimen: string) => answer.items.find((item) => item.regimen === regimen)?.at;
        const [fe, ca] = [parseClock(time('fe') ?? ''), parseClock(time('ca') ?? '')];
        if (fe !== undefined && ca !== undefined) expect(Math.abs(fe - ca)).toBeGreaterThanOrEqual(gap);
        else expect([...answer.impossible, ...answer.missed].length).toBeGreaterThan(0);
      }
    }
  });
});
