import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { createLedger } from './ledger.ts';
import { prepDayOf, wakeAndSleep } from './prep-day.ts';

const shaped = (wake: string, sleep: string, scope: object, day = '2027-01-01') =>
  oneEntry({ kind: 'day-shaped', day, data: { scope, wake, sleep } });
const everyDay = { of: 'usual', weekdays: [1, 2, 3, 4, 5, 6, 7] };
const ate = (at: string, day: string) =>
  oneEntry({ kind: 'meal-skipped', day, at, data: { slot: 'meal-5' } });

describe('the prep day', () => {
  // 2027-03-02 is a Tuesday.
  test.each([
    ['00:05', 5, '2027-03-01'],
    ['02:59', 179, '2027-03-01'],
    ['03:00', 180, '2027-03-02'],
    ['12:00', 720, '2027-03-02'],
    ['23:59', 1439, '2027-03-02'],
  ])('[JRN-20] at %s with nothing known it changes in the middle of an assumed night', (_, minutes, day) => {
    expect(prepDayOf('2027-03-02', minutes, createLedger())).toBe(day);
  });

  test('[JRN-20] late sleepers: the middle of the night moves with them', () => {
    const ledger = createLedger([shaped('10:00', '26:00', everyDay)]);
    expect(prepDayOf('2027-03-02', 5 * 60 + 59, ledger)).toBe('2027-03-01');
    expect(prepDayOf('2027-03-02', 6 * 60, ledger)).toBe('2027-03-02');
  });

  test('[JRN-20] night shift: sleep at 09:00, waking at 17:00', () => {
    const ledger = createLedger([shaped('17:00', '33:00', everyDay)]);
    expect(prepDayOf('2027-03-02', 8 * 60, ledger)).toBe('2027-03-01');
    expect(prepDayOf('2027-03-02', 11 * 60, ledger)).toBe('2027-03-01');
    expect(prepDayOf('2027-03-02', 17 * 60, ledger)).toBe('2027-03-02');
  });

  test('[JRN-20] someone still writing has not gone to bed, up to the time of waking', () => {
    const ledger = createLedger([ate('2027-03-02T02:40:00+00:00', '2027-03-01')]);
    expect(prepDayOf('2027-03-02', 4 * 60, ledger)).toBe('2027-03-01');
    expect(prepDayOf('2027-03-02', 4 * 60 + 11, ledger)).toBe('2027-03-02');
    const upAllNight = createLedger([ate('2027-03-02T06:40:00+00:00', '2027-03-01')]);
    expect(prepDayOf('2027-03-02', 7 * 60, upAllNight)).toBe('2027-03-02');
  });

  test('[JRN-20] someone already weighed has begun the day, in the middle of the night too', () => {
    const weighed = oneEntry({ day: '2027-03-02', at: '2027-03-02T02:15:00+00:00' });
    expect(prepDayOf('2027-03-02', 140, createLedger([weighed]))).toBe('2027-03-02');
    expect(prepDayOf('2027-03-02', 130, createLedger([weighed]))).toBe('2027-03-01');
  });

  test('[JRN-20] a day shaped for itself goes before the usual one, the later before the earlier', () => {
    const ledger = createLedger([
      shaped('06:00', '22:00', { of: 'usual', weekdays: [2] }),
      shaped('06:30', '22:00', { of: 'usual', weekdays: [2] }, '2027-02-01'),
      shaped('08:00', '24:30', { of: 'day' }, '2027-03-02'),
    ]);
    expect(wakeAndSleep(ledger, '2027-03-02')).toEqual({ wake: 480, sleep: 1470 });
    expect(wakeAndSleep(ledger, '2027-03-09')).toEqual({ wake: 390, sleep: 1320 });
    expect(wakeAndSleep(ledger, '2027-03-10')).toEqual({ wake: 420, sleep: 1380 });
  });
});
