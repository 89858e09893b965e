import { describe, expect, it } from 'vitest';
import type { Entry } from '../journal/entry.ts';
import { createLedger } from '../journal/ledger.ts';
import { shapeOfDay } from './shape-of-day.ts';
import { targetsOfDay } from './targets-of-day.ts';

let count = 0;
function entry(kind: string, day: string, data: Entry['data']): Entry {
  count += 1;
  const stamp = `2027-01-01T00:00:00.000Z-${count.toString(16).padStart(4, '0')}-test`;
  return {
    id: `e${count}`,
    stamp,
    device: 'test',
    kind,
    day,
    at: `${day}T08:00:00+00:00`,
    zone: 'UTC',
    data,
  };
}

const usual = { scope: { of: 'usual', weekdays: [1, 2, 3, 4, 5] }, wake: '06:30', sleep: '22:30' };
const macros = { proteinG: 200, carbohydrateG: 180, fatG: 55, basis: 'entered' };

describe('the shape of a day', () => {
  it('[RUN-01] what was said for the day goes before what is usual, and nothing is guessed', () => {
    const ledger = createLedger([
      entry('day-shaped', '2027-03-01', usual),
      entry('day-shaped', '2027-03-03', {
        scope: { of: 'day' },
        wake: '09:00',
        sleep: '24:30',
        training: { start: '16:00', minutes: 90 },
      }),
    ]);
    expect(shapeOfDay(ledger, '2027-03-02')).toMatchObject({
      wake: 390,
      sleep: 1350,
      said: 'as usual',
      dayKind: 'rest',
    });
    expect(shapeOfDay(ledger, '2027-03-03')).toMatchObject({
      wake: 540,
      sleep: 1470,
      said: 'for this day',
      dayKind: 'training',
    });
    expect(shapeOfDay(ledger, '2027-03-06'), 'a Saturday').toBeUndefined();
    expect(shapeOfDay(ledger, '2027-02-26'), 'before it was said').toBeUndefined();
  });

  it('[RUN-02] what was decided for named days stands against a course set since, not against a later hand', () => {
    const all = { ...macros, from: '2027-03-01', dayKind: 'every' } as const;
    const stretch = { ...all, from: '2027-03-09', until: '2027-03-10', carbohydrateG: 400 };
    const onTheNinth = (...later: readonly Record<string, unknown>[]) =>
      targetsOfDay(
        createLedger([all, stretch, ...later].map((data) => entry('target-set', '2027-03-08', data))),
        '2027-03-09',
        'rest',
      )?.data.carbohydrateG;
    const course = { ...all, from: '2027-03-09', basis: 'course', carbohydrateG: 150 };
    expect(onTheNinth(course)).toBe(400);
    expect(onTheNinth(course, { ...course, carbohydrateG: 140 })).toBe(400);
    expect(onTheNinth({ ...course, basis: 'entered', carbohydrateG: 160 })).toBe(160);
    expect(onTheNinth({ ...stretch, basis: 'course', carbohydrateG: 500 })).toBe(500);
  });

  it('[RUN-02] the targets set last count, for every day or for this kind of day', () => {
    const ledger = createLedger([
      entry('target-set', '2027-03-01', { ...macros, from: '2027-03-01', dayKind: 'every' }),
      entry('target-set', '2027-03-01', {
        ...macros,
        from: '2027-03-01',
        dayKind: 'rest',
        carbohydrateG: 120,
      }),
      entry('target-set', '2027-03-08', {
        ...macros,
        from: '2027-03-08',
        dayKind: 'every',
        carbohydrateG: 160,
      }),
      entry('target-set', '2027-03-09', {
        ...macros,
        from: '2027-03-09',
        until: '2027-03-09',
        dayKind: 'every',
        carbohydrateG: 400,
      }),
    ]);
    const carbohydrate = (day: string, kind: 'training' | 'rest') =>
      targetsOfDay(ledger, day, kind)?.data.carbohydrateG;
    expect(carbohydrate('2027-03-02', 'rest')).toBe(120);
    expect(carbohydrate('2027-03-02', 'training')).toBe(180);
    expect(carbohydrate('2027-03-08', 'rest')).toBe(160);
    expect(carbohydrate('2027-03-09', 'rest')).toBe(400);
    expect(carbohydrate('2027-03-10', 'rest')).toBe(160);
    expect(targetsOfDay(ledger, '2027-02-01', 'rest')).toBeUndefined();
  });
});
