import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { product } from '../../../../test/health/product.ts';
import { scheduleAnswer, type ScheduleAnswer } from './schedule-request.ts';
import { scheduleSupplements } from './schedule-supplements.ts';

const products = [
  product('iron', [{ of: 'iron', amount: 14, unit: 'mg' }]),
  product('calcium', [{ of: 'calcium', amount: 400, unit: 'mg' }]),
  product('creatine', [{ of: 'creatine', amount: 5, unit: 'g' }]),
  product('oil', [{ of: 'fish oil', amount: 1000, unit: 'mg' }]),
  product('wake-up', [{ of: 'caffeine', amount: 100, unit: 'mg' }]),
  product('zinc', [{ of: 'zinc', amount: 10, unit: 'mg' }]),
];
const meals = [
  { slot: 'm1', at: '07:30', carbohydrateG: 60, fatG: 5 },
  { slot: 'm2', at: '12:00', carbohydrateG: 80, fatG: 6 },
  { slot: 'm3', at: '16:00', carbohydrateG: 40, fatG: 18 },
  { slot: 'm4', at: '20:00', carbohydrateG: 20, fatG: 25 },
];
const events = { wake: '06:30', sleep: '22:30', training: { start: '17:30', minutes: 75 } };
const dose = (supplement: string, to: string, more: object = {}, units = 1) => ({
  regimen: `${supplement} ${to}`,
  supplement,
  units,
  tie: { to, ...more },
});

function plan(doses: object[], more: object = {}): ScheduleAnswer {
  const outcome = scheduleSupplements({ date: '2027-03-01', events, meals, products, doses, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return parse(scheduleAnswer, outcome.value);
}
const at = (answer: ScheduleAnswer) => answer.items.map((item) => [item.supplement, item.at]);

describe("the day's doses", () => {
  it('[HLT-30] stand beside what they are tied to', () => {
    const answer = plan([
      dose('zinc', 'first meal'),
      dose('creatine', 'high-carbohydrate meal'),
      dose('oil', 'fat-holding meal'),
      dose('wake-up', 'clock', { at: '09:00' }),
      dose('calcium', 'before sleep', { minutes: 30 }),
      dose('iron', 'waking, empty stomach'),
    ]);
    expect(at(answer)).toEqual([
      ['iron', '06:30'],
      ['zinc', '07:30'],
      ['wake-up', '09:00'],
      ['creatine', '12:00'],
      ['oil', '16:00'],
      ['calcium', '22:00'],
    ]);
    expect(answer.items.find(({ supplement }) => supplement === 'oil')?.slot).toBe('m3');
  });

  it('[HLT-30] move with a meal that is moved', () => {
    const later = meals.map((meal) => (meal.slot === 'm1' ? { ...meal, at: '09:10' } : meal));
    expect(at(plan([dose('zinc', 'first meal')], { meals: later }))).toEqual([['zinc', '09:10']]);
  });

  it('[HLT-30] around training: before, after with the meal, and not on a rest day', () => {
    const doses = [dose('creatine', 'after training'), dose('zinc', 'before training', { minutes: 40 })];
    expect(at(plan(doses))).toEqual([
      ['zinc', '16:50'],
      ['creatine', '20:00'],
    ]);
    const rest = plan(doses, { events: { wake: '06:30', sleep: '22:30' } });
    expect(rest.items).toEqual([]);
    expect(rest.notToday.map(({ regimen }) => regimen)).toEqual([
      'creatine after training',
      'zinc before training',
    ]);
  });

  it('[HLT-31] an open dose whose meal has passed goes with the next; one without a next is missed', () => {
    const late = { now: '13:00' };
    const answer = plan([dose('zinc', 'first meal'), dose('iron', 'clock', { at: '08:00' })], late);
    expect(at(answer)).toEqual([['zinc', '16:00']]);
    expect(answer.items[0]?.words).toContain('moved to the meal at 16:00');
    expect(answer.missed.map(({ regimen }) => regimen)).toEqual(['iron clock']);
  });

  it('[HLT-31] a meal that holds too little of what is asked is taken only for want of a better, and it is said', () => {
    const thin = meals.map(({ slot, at: time }) => ({ slot, at: time, carbohydrateG: 20, fatG: 4 }));
    expect(plan([dose('oil', 'fat-holding meal')], { meals: thin }).items[0]?.words).toContain(
      'no meal to come',
    );
  });

  it('[HLT-32] keep iron 2 h from calcium, coffee and tea', () => {
    const answer = plan([dose('iron', 'first meal'), dose('calcium', 'first meal')]);
    expect(at(answer)).toEqual([
      ['iron', '07:30'],
      ['calcium', '12:00'],
    ]);
    const coffee = plan([dose('iron', 'first meal')], {
      drinks: [{ drink: 'Black coffee', at: '08:00', caffeineMg: 90 }],
    });
    expect(at(coffee)).toEqual([['iron', '12:00']]);
  });

  it('[HLT-32] re-check every gap when the day is re-planned', () => {
    const doses = [dose('iron', 'first meal'), dose('calcium', 'before training', { minutes: 30 })];
    expect(at(plan(doses))).toEqual([
      ['iron', '07:30'],
      ['calcium', '17:00'],
    ]);
    const late = [
      { slot: 'm3', at: '16:00' },
      { slot: 'm4', at: '20:00' },
    ];
    expect(at(plan(doses, { meals: late, now: '13:00' }))).toEqual([
      ['calcium', '17:00'],
      ['iron', '20:00'],
    ]);
  });

  it("[HLT-32] keep 4 h from levothyroxine at its prescriber's time, and say where a meal stands too close to it", () => {
    const answer = plan([dose('calcium', 'first meal'), dose('iron', 'first meal')], {
      medicines: [{ name: 'Levothyroxine', at: '06:30' }],
    });
    const calcium = answer.items.find(({ supplement }) => supplement === 'calcium');
    const iron = answer.items.find(({ supplement }) => supplement === 'iron');
    expect(new Set([calcium?.at, iron?.at])).toEqual(new Set(['12:00', '16:00']));
    expect(answer.conflicts).toEqual([]);
    const close = plan([], { medicines: [{ name: 'levothyroxine', at: '07:00' }] });
    expect(close.conflicts[0]?.words).toContain('30 min apart');
  });

  it('[HLT-33] a set that cannot be kept apart is reported, never broken in silence', () => {
    const one = [{ slot: 'm1', at: '12:00' }];
    const answer = plan([dose('iron', 'first meal'), dose('calcium', 'first meal')], { meals: one });
    expect(answer.items).toHaveLength(1);
    expect(answer.impossible).toEqual([expect.objectContaining({ against: 'iron', gapMinutes: 120 })]);
    expect(answer.impossible[0]?.words).toContain('no time of today');
  });

  it.each([
    ['a diuretic', [{ of: 'dandelion root', amount: 500, unit: 'mg' }], 'Diuretic'],
    [
      'a stimulant without an acceptable dose',
      [{ of: 'yohimbine', amount: 2, unit: 'mg' }],
      'No acceptable intake',
    ],
    ['a hormone', [{ of: 'DHEA', amount: 25, unit: 'mg' }], 'prohibited at all times'],
    ['a medicine', [{ of: 'levothyroxine', amount: 50, unit: 'ug' }], 'prescriber'],
    ['DNP', [{ of: '2,4-dinitrophenol' }], 'no antidote'],
    ['caffeine above 200 mg a dose', [{ of: 'caffeine', amount: 250, unit: 'mg' }], 'above 200 mg'],
    ['caffeine of an unknown amount', [{ of: 'caffeine anhydrous' }], 'how much caffeine'],
    ['potassium by the spoon', [{ of: 'potassium chloride', amount: 1.5, unit: 'g' }], 'potassium'],
  ])('[HLT-34] %s is refused with reason and source', (_name, contents, words) => {
    const answer = plan([dose('x', 'first meal')], { products: [product('x', contents)] });
    expect(answer.items).toEqual([]);
    expect(answer.refused[0]?.words).toContain(words);
    expect(answer.refused[0]?.source.length).toBeGreaterThan(30);
  });

  it('[HLT-35] caffeine: 400 mg a day from all sources, drinks too (EFSA Journal 2015;13:4102)', () => {
    const drinks = [
      { drink: 'coffee', at: '07:00', caffeineMg: 180 },
      { drink: 'espresso', at: '11:00', caffeineMg: 150 },
    ];
    const answer = plan([dose('wake-up', 'before training', { minutes: 30 })], { drinks });
    expect(answer.refused[0]?.words).toContain('430 mg');
    expect(answer.caffeine).toEqual({ plannedMg: 0, takenMg: 330, limitMg: 400 });
  });

  it('[HLT-35] caffeine: no two within 2 h that make more than 200 mg', () => {
    const doses = [
      dose('wake-up', 'clock', { at: '09:00' }, 1.5),
      { ...dose('wake-up', 'clock', { at: '09:30' }), regimen: 'second' },
    ];
    const answer = plan(doses);
    expect(answer.items.map(({ at: time }) => time)).toEqual(['09:00', '11:00']);
  });

  it('[HLT-35] caffeine: none of 100 mg and more within 6 h of sleep', () => {
    const evening = { events: { wake: '06:30', sleep: '22:30', training: { start: '19:00', minutes: 60 } } };
    expect(plan([dose('wake-up', 'before training', { minutes: 30 })], evening).refused[0]?.words).toContain(
      'before sleep',
    );
  });

  it('[HLT-36] taken and skipped doses are done, and what was taken is kept clear of', () => {
    const taken = [{ regimen: 'calcium first meal', supplement: 'calcium', units: 1, at: '11:30' }];
    const answer = plan(
      [dose('calcium', 'first meal'), dose('iron', 'clock', { at: '12:00' }), dose('zinc', 'first meal')],
      { taken, skipped: ['zinc first meal'], now: '11:40' },
    );
    expect(answer.done).toEqual(['calcium first meal', 'zinc first meal']);
    expect(at(answer)).toEqual([['iron', '13:30']]);
  });

  it('[HLT-36] a product that holds a pair, a large dose of calcium and a tie without fat get a word', () => {
    const both = product('both', [
      { of: 'iron', amount: 10, unit: 'mg' },
      { of: 'calcium', amount: 300, unit: 'mg' },
    ]);
    const answer = plan(
      [
        dose('both', 'first meal'),
        dose('calcium', 'last meal', {}, 2),
        dose('oil', 'before sleep', { minutes: 30 }),
      ],
      { products: [both, ...products] },
    );
    const said = answer.cautions.map(({ words }) => words).join(' ');
    expect(said).toContain('holds both iron and calcium');
    expect(said).toContain('800 mg of calcium');
    expect(said).toContain('taken up with fat');
  });

  it('[HLT-36] a dose of a product that is not described is asked about', () => {
    const outcome = scheduleSupplements({
      date: '2027-03-01',
      events,
      meals,
      products: [],
      doses: [dose('iron', 'first meal')],
    });
    expect(outcome.ok ? undefined : outcome.problem).toMatchObject({
      code: 'health/unknown-supplement',
      path: 'doses.0.supplement',
    });
  });
});
