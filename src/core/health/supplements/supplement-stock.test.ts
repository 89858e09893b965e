import { describe, expect, it } from 'vitest';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { datedEntry as entry } from '../../../../test/journal/dated-entry.ts';
import { scheduleRequestOf } from './regimens.ts';
import { scheduleSupplements } from './schedule-supplements.ts';
import { supplementStock } from './supplement-stock.ts';

const zinc = entry('supplement-defined', {
  supplement: 'zinc',
  name: 'Zinc',
  unit: 'capsule',
  perUnits: 1,
  contents: [{ of: 'zinc', amount: 10, unit: 'mg' }],
});
const regimen = (more: object = {}) =>
  entry('regimen-set', {
    regimen: 'r',
    supplement: 'zinc',
    units: 1,
    tie: { to: 'first meal' },
    cadence: { of: 'every day' },
    from: '2027-03-01',
    ...more,
  });
const stock = (entries: Entry[], more: object = {}) =>
  supplementStock(createLedger([zinc, ...entries]), { today: '2027-03-02', show: '2027-03-31', ...more })[0];

describe('stock of a product', () => {
  it('[HLT-45] counts down from the last count by what was taken, and names the day it runs out against the show', () => {
    const entries = [
      regimen(),
      entry('supplement-counted', { supplement: 'zinc', units: 20 }),
      entry('supplement-taken', { supplement: 'zinc', units: 1, regimen: 'r' }, '2027-03-01', '09:00'),
    ];
    expect(stock(entries)).toMatchObject({
      left: 19,
      countedOn: '2027-03-01',
      runsOutOn: '2027-03-21',
      daysBeforeShow: 10,
      missingForShow: 11,
      usedPerDay: 1,
    });
  });

  it('[HLT-45] what was bought adds, a new count replaces all before it', () => {
    const entries = [
      regimen(),
      entry('supplement-counted', { supplement: 'zinc', units: 20 }),
      entry('supplement-bought', { supplement: 'zinc', units: 60 }, '2027-03-01', '10:00'),
    ];
    expect(stock(entries)).toMatchObject({ left: 80 });
    expect(stock(entries)).not.toHaveProperty('daysBeforeShow');
    expect(
      stock([
        ...entries,
        entry('supplement-counted', { supplement: 'zinc', units: 7 }, '2027-03-01', '11:00'),
      ])?.left,
    ).toBe(7);
    expect(stock([regimen(), entry('supplement-bought', { supplement: 'zinc', units: 60 })])?.left).toBe(60);
  });

  it('[HLT-45] every second day, pauses and an end stretch it', () => {
    const counted = entry('supplement-counted', { supplement: 'zinc', units: 5 });
    expect(stock([regimen({ cadence: { of: 'every n-th day', days: 2 } }), counted])?.runsOutOn).toBe(
      '2027-03-13',
    );
    expect(
      stock([regimen({ pauses: [{ from: '2027-03-03', until: '2027-03-09' }] }), counted])?.runsOutOn,
    ).toBe('2027-03-14');
    expect(stock([regimen({ until: '2027-03-04' }), counted])).not.toHaveProperty('runsOutOn');
    expect(
      stock([regimen({ cadence: { of: 'training days' } }), counted], {
        trainingOn: (date: string) => date.endsWith('0'),
      })?.runsOutOn,
    ).toBe('2027-04-30');
  });

  it('[HLT-45] never counted is not known, more taken than was there asks for a count', () => {
    expect(stock([regimen()])).not.toHaveProperty('left');
    expect(stock([regimen()])?.words).toContain('not counted');
    const taken = Array.from({ length: 4 }, (_, hour) =>
      entry('supplement-taken', { supplement: 'zinc', units: 1 }, '2027-03-01', `1${hour}:00`),
    );
    expect(
      stock([regimen(), entry('supplement-counted', { supplement: 'zinc', units: 2 }), ...taken]),
    ).toMatchObject({ left: 0, belowZero: true });
  });

  it("[HLT-45] today's dose that was taken is not counted twice", () => {
    const counted = entry('supplement-counted', { supplement: 'zinc', units: 3 });
    const today = entry(
      'supplement-taken',
      { supplement: 'zinc', units: 1, regimen: 'r' },
      '2027-03-02',
      '07:30',
    );
    expect(stock([regimen(), counted, today])).toMatchObject({ left: 2, runsOutOn: '2027-03-05' });
  });
});

describe('what the journal says of a day', () => {
  const frame = {
    date: '2027-03-02',
    events: { wake: '06:30', sleep: '22:30' },
    meals: [
      { slot: 'm1', at: '08:00' },
      { slot: 'm2', at: '13:00' },
    ],
  };

  it('[HLT-30] gives the doses that are due, what was taken, medicines and drinks', () => {
    const ledger = createLedger([
      zinc,
      regimen(),
      entry('medicine-declared', { medicine: 'l', name: 'Levothyroxine', at: ['06:30'], from: '2027-01-01' }),
      entry('water-drunk', { drink: 'coffee', millilitres: 200, caffeineMg: 90 }, '2027-03-02', '09:10'),
    ]);
    const request = scheduleRequestOf(ledger, frame);
    expect(request).toMatchObject({
      medicines: [{ name: 'Levothyroxine', at: '06:30' }],
      drinks: [{ drink: 'coffee', at: '09:10', caffeineMg: 90 }],
    });
    const answer = scheduleSupplements(request);
    expect(answer.ok && answer.value.items.map(({ at }) => at)).toEqual(['08:00']);
  });

  it('[HLT-30] a pause, a retired product and a day of the cadence that is not today leave nothing due', () => {
    const due = (...entries: Entry[]) =>
      scheduleRequestOf(createLedger([zinc, ...entries]), frame).doses.length;
    expect(due(regimen())).toBe(1);
    expect(due(regimen({ pauses: [{ from: '2027-03-02' }] }))).toBe(0);
    expect(due(regimen({ cadence: { of: 'weekdays', weekdays: [1] } }))).toBe(0);
    expect(due(regimen({ cadence: { of: 'weekdays', weekdays: [2] } }))).toBe(1);
    expect(due(regimen({ cadence: { of: 'rest days' } }))).toBe(1);
    expect(due(regimen(), entry('supplement-defined', { ...zinc.data, retired: true }))).toBe(0);
  });

  it('[HLT-36] taken with one tap it is done, skipped it needs a reason and is done too', () => {
    const done = (fact: Entry) => {
      const answer = scheduleSupplements(scheduleRequestOf(createLedger([zinc, regimen(), fact]), frame));
      return answer.ok ? answer.value.done : [];
    };
    expect(
      done(entry('supplement-taken', { supplement: 'zinc', units: 1, regimen: 'r' }, '2027-03-02', '08:01')),
    ).toEqual(['r']);
    expect(
      done(
        entry(
          'supplement-skipped',
          { supplement: 'zinc', regimen: 'r', reason: 'forgot the box' },
          '2027-03-02',
        ),
      ),
    ).toEqual(['r']);
    expect(
      createLedger([entry('supplement-skipped', { supplement: 'zinc', regimen: 'r' })]).problems,
    ).toHaveLength(1);
  });
});
