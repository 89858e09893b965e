import { describe, expect, it } from 'vitest';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { adoptedCourse, preparationStart, showsFrom, stretchesOf } from './read-course.ts';

let count = 0;
function entry(kind: string, data: Entry['data'], day = '2027-01-10'): Entry {
  count += 1;
  const number = String(count).padStart(4, '0');
  return {
    id: `e${number}`,
    stamp: `2027-01-10T08:00:00.000Z-${number}-a`,
    device: 'a',
    kind,
    day,
    at: `${day}T08:00:00+00:00`,
    zone: 'UTC',
    data,
  };
}

describe('[CRS-19] the course read from the journal', () => {
  it('[CRS-19] shows ahead in order of date, the newest version of each, withdrawn ones left out', () => {
    const ledger = createLedger([
      entry('show-set', { show: 'b', name: 'B', date: '2027-06-12', target: { massMaxKg: 80 } }),
      entry('show-set', { show: 'a', name: 'A', date: '2027-05-01', target: { bodyFatPercentMax: 8 } }),
      entry('show-set', { show: 'c', name: 'C', date: '2027-05-20', target: {} }),
      entry('show-set', { show: 'c', name: 'C', date: '2027-05-20', target: {}, withdrawn: true }),
      entry('show-set', { show: 'd', name: 'D', date: '2027-01-01', target: {} }),
      entry('show-set', {
        show: 'b',
        name: 'B',
        date: '2027-06-19',
        class: { name: 'under 78', massMaxKg: 78, massMinKg: 70 },
        target: { massMaxKg: 80, massMinKg: 74 },
      }),
    ]);
    expect(showsFrom(ledger, '2027-02-01').map(({ show, date, target }) => ({ show, date, target }))).toEqual(
      [
        { show: 'a', date: '2027-05-01', target: { bodyFatPercent: { max: 8 } } },
        { show: 'b', date: '2027-06-19', target: { massKg: { max: 78, min: 74 } } },
      ],
    );
  });

  it('[CRS-19] stretches not cancelled, the adopted course, the start of the preparation', () => {
    const course = {
      show: 'a',
      from: '2027-02-01',
      energyKcal: 2300,
      cardioKcal: 200,
      trainingDays: 4,
      higherCarbohydrateDays: 1,
      line: [{ date: '2027-02-01', massKg: 85, fatKg: 13, bodyFatPercent: 15.3 }],
      probability: 0.72,
      why: [],
    };
    const ledger = createLedger([
      entry('stretch-planned', { stretch: 'x', type: 'diet break', from: '2027-03-01', until: '2027-03-07' }),
      entry('stretch-planned', { stretch: 'y', type: 'travel', from: '2027-02-01', until: '2027-02-03' }),
      entry('stretch-planned', {
        stretch: 'y',
        type: 'travel',
        from: '2027-02-01',
        until: '2027-02-03',
        cancelled: true,
      }),
      entry('course-adopted', { ...course, energyKcal: 2400 }),
      entry('course-adopted', course),
      entry('preparation-begun', { show: 'a', from: '2027-01-15' }),
    ]);
    expect(stretchesOf(ledger).map(({ type, from }) => ({ type, from }))).toEqual([
      { type: 'diet break', from: '2027-03-01' },
    ]);
    expect(adoptedCourse(ledger, 'a')).toEqual(course);
    expect(adoptedCourse(ledger, 'b')).toBeUndefined();
    expect(preparationStart(ledger, 'a')).toBe('2027-01-15');
  });
});
