import { safeParse } from 'valibot';
import { describe, expect, it, vi } from 'vitest';
import { ordinaryWorld } from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { answerEstimate } from '#core/body/estimate.ts';
import { courseAnswer } from './course-answer.ts';
import { course } from './course.ts';

vi.setConfig({ testTimeout: 30_000 });

const [athlete] = simulateCohort(ordinaryWorld, 11, 1);
const rows = athlete?.request.days ?? [];
const last = rows.at(-1)?.date ?? '';
const asOf = rows.at(-29)?.date ?? '';
const request = {
  ...athlete?.request,
  asOf,
  show: { date: last },
  target: { bodyFatPercent: { max: 12 } },
};

const codeOf = (input: unknown) => {
  const outcome = course(input);
  return outcome.ok ? 'answered' : `${outcome.problem.code} at ${outcome.problem.path}`;
};

describe('the door', () => {
  it("[CRS-01] answers a request of the contract with the contract's answer", () => {
    const outcome = course(request);
    expect(outcome.ok).toBe(true);
    const answer = outcome.ok ? outcome.value : undefined;
    expect(safeParse(courseAnswer, answer).issues).toBeUndefined();
    expect(answer?.arrival.massKg.mean).toBeGreaterThan(40);
  });

  it('[CRS-02] lands where the estimate itself foretells the date, mean and interval', () => {
    const { show: _show, target: _target, ...rest } = request;
    const estimated = answerEstimate(rest);
    const foretold = estimated.ok ? estimated.value.forecast.at(-1) : undefined;
    const landed = course(request);
    const { massKg, fatKg } = landed.ok ? landed.value.arrival : { massKg: undefined, fatKg: undefined };
    expect(foretold?.date).toBe(last);
    for (const [ours, theirs] of [
      [massKg, foretold?.massKg],
      [fatKg, foretold?.fatKg],
    ] as const) {
      expect(Math.abs((ours?.mean ?? 0) - (theirs?.mean ?? 99))).toBeLessThan(0.1);
      const width = (spread: typeof ours) => (spread?.q95 ?? 0) - (spread?.q05 ?? 0);
      expect(width(ours) / width(theirs)).toBeGreaterThan(0.85);
      expect(width(ours) / width(theirs)).toBeLessThan(1.15);
    }
  });

  it('[CRS-05] a weight typed in pounds is left out, and asked about', () => {
    const doubted = rows.map((row, i) =>
      i === 20 ? { ...row, weightKg: 2.2046 * (rows[19]?.weightKg ?? 80) } : row,
    );
    const outcome = course({ ...request, days: doubted });
    expect(outcome.ok && outcome.value.why.at(-1)).toMatch(/typed in pounds\? Say so or correct it\.$/);
    const plain = course(request);
    const mean = (of: typeof plain) => (of.ok ? of.value.arrival.massKg.mean : Number.NaN);
    expect(Math.abs(mean(outcome) - mean(plain))).toBeLessThan(0.3);
  });

  it('[CRS-03] same request and seed, same bytes', () => {
    expect(JSON.stringify(course(request))).toBe(JSON.stringify(course(structuredClone(request))));
  });

  it('[CRS-04] weights and body fat after asOf are not looked at', () => {
    const changed = rows.map((row) =>
      row.date > asOf ? { ...row, weightKg: 120, bodyFat: undefined } : row,
    );
    expect(course({ ...request, days: changed.map((row) => JSON.parse(JSON.stringify(row))) })).toEqual(
      course(request),
    );
  });

  it('[CRS-03] less planned food is never a heavier or fatter landing', () => {
    const landings = [0.85, 1, 1.15].map((factor) => {
      const days = rows.map((row) =>
        row.date > asOf && row.intake
          ? { ...row, intake: { ...row.intake, energyKcal: factor * row.intake.energyKcal } }
          : row,
      );
      const outcome = course({ ...request, days });
      return outcome.ok ? outcome.value.arrival : undefined;
    });
    const masses = landings.map((arrival) => arrival?.massKg.mean ?? 0);
    const fats = landings.map((arrival) => arrival?.fatKg.q95 ?? 0);
    expect(masses).toEqual(masses.toSorted((a, b) => a - b));
    expect(fats).toEqual(fats.toSorted((a, b) => a - b));
  });

  it('[CRS-05] two days of data: wide, not refused', () => {
    const outcome = course({
      ...request,
      asOf: undefined,
      days: rows.slice(0, 2),
      show: { date: rows[60]?.date },
    });
    const answer = outcome.ok ? outcome.value : undefined;
    expect(answer?.verdict).toBe('too little evidence');
    expect(answer?.corrections).toEqual([]);
    expect((answer?.arrival.massKg.q95 ?? 0) - (answer?.arrival.massKg.q05 ?? 0)).toBeGreaterThan(5);
  });

  it('[CRS-05] one bare date is answered from what is believed of anyone that tall', () => {
    const outcome = course({
      athlete: request.athlete,
      days: [{ date: '2027-01-04' }],
      show: { date: '2027-03-01' },
      target: { massKg: { max: 80 } },
    });
    expect(outcome.ok && outcome.value.verdict).toBe('too little evidence');
  });

  it('[CRS-21] what cannot be plotted is a problem each, with its place', () => {
    expect([
      codeOf({ ...request, show: { date: '2026-12-31' } }),
      codeOf({ ...request, show: { date: '2029-01-01' } }),
      codeOf({ ...request, target: {} }),
      codeOf({ ...request, target: { massKg: {} } }),
      codeOf({ ...request, target: { massKg: { min: 90, max: 80 } } }),
      codeOf({ ...request, days: rows.toReversed() }),
      codeOf({ ...request, athlete: { ...athlete?.request.athlete, age: 16 } }),
      codeOf({ ...request, limits: { lossPerWeek: 1 } }),
      codeOf({ ...request, show: { day: last } }),
      codeOf({ ...request, targets: {} }),
      codeOf({ ...request, seed: -1 }),
      codeOf({ ...request, target: { bodyFatPercent: { max: 90 } } }),
      codeOf('course'),
    ]).toEqual([
      'course/show-is-over at show.date',
      'course/show-too-far at show.date',
      'course/no-target at target',
      'course/no-target at target',
      'course/target-crossed at target.massKg',
      'body/dates-out-of-order at days.1.date',
      'course/wrong-value at athlete.age',
      'course/unknown-field at limits.lossPerWeek',
      'course/unknown-field at show.day',
      'course/unknown-field at targets',
      'course/wrong-value at seed',
      'course/wrong-value at target.bodyFatPercent.max',
      'course/wrong-value at ',
    ]);
  });

  it('[CRS-21] the sentence says what happened and how to mend it', () => {
    const outcome = course({ ...request, show: { date: '2026-12-31' } });
    expect(!outcome.ok && outcome.problem).toEqual({
      code: 'course/show-is-over',
      path: 'show.date',
      message: `The show on 2026-12-31 is before ${asOf}, the last day known.`,
      remedy: 'Give the next show, or an asOf before the show.',
    });
  });

  it('[CRS-21] a show on the last day known is answered from what is known', () => {
    const outcome = course({ ...request, show: { date: asOf } });
    expect(outcome.ok && outcome.value.corrections).toEqual([]);
  });

  it('[CRS-04] a log that stopped weeks ago goes on as before, and says so', () => {
    const days = rows.filter(({ date }) => date <= asOf);
    const later = course({ ...request, days, asOf: rows.at(-15)?.date });
    expect(later.ok && later.value.verdict).toBe('too little evidence');
    expect(later.ok && later.value.why.some((words) => words.startsWith('The last weigh-in is 1'))).toBe(
      true,
    );
  });
});
