import { describe, expect, it } from 'vitest';
import { answerEstimate } from './estimate.ts';

const athlete = { sex: 'male', heightCm: 178, age: 30 };
const intake = { energyKcal: 2400, proteinG: 180, carbohydrateG: 250, fatG: 70 };
const rows = [
  { date: '2027-01-04', weightKg: 85, intake },
  { date: '2027-01-05', weightKg: 84.9, intake },
];

function problemOf(request: unknown) {
  const outcome = answerEstimate(request);
  if (outcome.ok) throw new Error('answered');
  return outcome.problem;
}

describe('requests that cannot be answered', () => {
  it('[EST-08] a date on two rows', () => {
    expect(problemOf({ athlete, days: [...rows, { date: '2027-01-05', weightKg: 85 }] })).toEqual({
      code: 'body/date-twice',
      path: 'days.2.date',
      message: '2027-01-05 stands on two rows.',
      remedy: 'Put all of one day on one row.',
    });
  });

  it('[EST-08] dates out of order', () => {
    expect(problemOf({ athlete, days: rows.toReversed() })).toEqual({
      code: 'body/dates-out-of-order',
      path: 'days.1.date',
      message: '2027-01-04 comes after 2027-01-05, though it is the earlier date.',
      remedy: 'Order the rows by date, oldest first.',
    });
  });

  it('[EST-03] a day confirmed as whole without an intake', () => {
    expect(problemOf({ athlete, days: [...rows, { date: '2027-01-06', confirmed: true }] })).toEqual({
      code: 'body/nothing-confirmed',
      path: 'days.2.confirmed',
      message: '2027-01-06 is confirmed as whole, but holds no intake.',
      remedy: 'Write the intake of the day (0 for a fast), or leave "confirmed" out.',
    });
  });

  it('[EST-08] a year mistyped', () => {
    expect(problemOf({ athlete, days: [...rows, { date: '2072-01-06' }] })).toMatchObject({
      code: 'body/gap-too-long',
      path: 'days.2.date',
    });
  });

  it('[EST-08] asOf before the log, or long after it', () => {
    expect(problemOf({ athlete, days: rows, asOf: '2027-01-03' })).toMatchObject({
      code: 'body/as-of-before-log',
      path: 'asOf',
      message: '"asOf" is 2027-01-03, before the first row, 2027-01-04.',
    });
    expect(problemOf({ athlete, days: rows, asOf: '2027-06-01' })).toMatchObject({
      code: 'body/as-of-in-future',
      path: 'asOf',
      message: '"asOf" is 2027-06-01, 147 days after the last row, 2027-01-05.',
    });
  });

  it('[EST-08] unknown fields by name, a date that is none, a body fat of 80 %, a minor', () => {
    expect(problemOf({ athlete, days: [{ ...rows[0], weigthKg: 85 }] })).toMatchObject({
      code: 'body/unknown-field',
      path: 'days.0.weigthKg',
    });
    expect(problemOf({ athlete, days: [{ date: '2027-02-30' }] })).toMatchObject({ path: 'days.0.date' });
    expect(
      problemOf({ athlete, days: [{ ...rows[0], bodyFat: { percent: 80, method: 'dxa' } }] }),
    ).toMatchObject({ path: 'days.0.bodyFat.percent', remedy: 'Make it percent from 1 to 70.' });
    expect(problemOf({ athlete: { ...athlete, age: 17 }, days: rows })).toMatchObject({
      path: 'athlete.age',
      remedy: 'Make it years: this tool plans for adults only from 18 to 100.',
    });
    expect(problemOf({ athlete, days: [] })).toMatchObject({ path: 'days' });
  });

  it('[EST-05] a method nobody knows', () => {
    expect(
      problemOf({ athlete, days: [{ ...rows[0], bodyFat: { percent: 14, method: 'moon' } }] }),
    ).toMatchObject({
      code: 'body/unknown-method',
      path: 'days.0.bodyFat.method',
      message: '"moon" is not a method of measuring body fat that is known here.',
    });
  });
});
