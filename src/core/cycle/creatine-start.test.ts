import { describe, expect, it } from 'vitest';
import { datedEntry } from '../../../test/journal/dated-entry.ts';
import { createLedger } from '../journal/ledger.ts';
import { bodyLog } from './body-log.ts';

const who = datedEntry('athlete-described', {
  sex: 'female',
  heightCm: 168,
  birthYear: 1996,
  units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
  cautionsRead: [],
});
const weighed = (day: string) => datedEntry('body-weighed', { massKg: 64 }, day, '07:00');
const powder = datedEntry('supplement-defined', {
  supplement: 'white-powder',
  name: 'White powder',
  unit: 'scoop',
  perUnits: 1,
  contents: [{ of: 'Creatine monohydrate', amount: 5, unit: 'g' }],
});
const taken = (day: string) =>
  datedEntry('supplement-taken', { supplement: 'white-powder', units: 1 }, day, '09:00');

const daily = (from: string) =>
  datedEntry('regimen-set', {
    regimen: 'r',
    supplement: 'white-powder',
    units: 1,
    tie: { to: 'first meal' },
    cadence: { of: 'every day' },
    from,
  });

function creatineFrom(...entries: readonly ReturnType<typeof datedEntry>[]) {
  const log = bodyLog(createLedger([who, powder, ...entries]), '2027-04-10', () => undefined);
  if (!log.ok) throw new Error(log.problem.message);
  return log.value.athlete.creatineFrom;
}

describe('a start of creatine seen in the journal', () => {
  it('[RUN-29] a first dose two weeks after the first weigh-in or later is a start', () => {
    expect(creatineFrom(weighed('2027-03-01'), taken('2027-03-20'), taken('2027-03-21'))).toBe('2027-03-20');
    expect(creatineFrom(weighed('2027-03-01'), taken('2027-03-15'))).toBe('2027-03-15');
  });

  it('[RUN-29] a dose as the journal begins, none, or one still to come is no start', () => {
    expect(creatineFrom(weighed('2027-03-01'), taken('2027-03-14'), taken('2027-03-20'))).toBeUndefined();
    expect(creatineFrom(weighed('2027-03-01'))).toBeUndefined();
    expect(creatineFrom(weighed('2027-03-01'), daily('2027-03-02'), taken('2027-03-20'))).toBeUndefined();
    expect(creatineFrom(weighed('2027-03-01'), daily('2027-03-18'), taken('2027-03-20'))).toBe('2027-03-18');
    expect(creatineFrom(weighed('2027-03-01'), taken('2027-04-11'))).toBeUndefined();
  });
});

describe('what was eaten, as the estimate is told', () => {
  const intakeOn = (entry: ReturnType<typeof datedEntry>) => {
    const log = bodyLog(createLedger([who, weighed('2027-03-01'), entry]), '2027-03-02', () => undefined);
    return log.ok ? log.value.days[0] : undefined;
  };

  it('[RUN-20] a fast that was said to be one stands; an empty day that was closed is left unclear', () => {
    const fast = datedEntry(
      'intake-totalled',
      { of: '2027-03-01', energyKcal: 0, fasted: true },
      '2027-03-02',
    );
    expect(intakeOn(fast)).toMatchObject({ intake: { energyKcal: 0 }, confirmed: true });
    const empty = intakeOn(datedEntry('day-closed', { complete: true }));
    expect(empty).toMatchObject({ intake: { energyKcal: 0 } });
    expect(empty).not.toHaveProperty('confirmed');
  });
});
