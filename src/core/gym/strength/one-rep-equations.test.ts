import { describe, expect, it } from 'vitest';
import { repetitionPercents } from '#core/tables/repetition-percents.ts';
import { estimateOneRep, oneRepEquations, oneRepFromFive } from './one-rep-equations.ts';
import { curveOf, curveSlope, repetitionsAt } from './repetition-curve.ts';

/** Arithmetic of the printed formulas at 100 kg (formulas from memory; names and Epley = Brzycki at ten confirmed). */
const AT_100_KG: Record<string, readonly number[]> = {
  Epley: [110, 116.67, 126.67, 133.33, 140, 150],
  Brzycki: [105.88, 112.5, 124.14, 133.33, 144, 163.64],
  Lombardi: [111.61, 117.46, 123.11, 125.89, 128.21, 131.1],
  Wathan: [108.98, 116.58, 127.67, 134.75, 141.5, 150.91],
  Mayhew: [113.99, 119.01, 126.29, 130.93, 135.4, 141.72],
  "O'Conner": [107.5, 112.5, 120, 125, 130, 137.5],
  Lander: [107.2, 113.71, 125.11, 134.07, 144.41, 163.31],
};

describe('one-repetition equations', () => {
  it.each(oneRepEquations)(
    '[GYM-20] $name answers as printed at 3, 5, 8, 10, 12 and 15 repetitions',
    (equation) => {
      const answers = [3, 5, 8, 10, 12, 15].map((reps) => equation.oneRepKg(100, reps));
      for (const [i, expected] of (AT_100_KG[equation.name] ?? []).entries()) {
        expect(answers[i]).toBeCloseTo(expected, 2);
      }
      expect(AT_100_KG[equation.name]).toHaveLength(6);
    },
  );

  it('[GYM-20] one repetition is the maximum itself, by every equation', () => {
    const estimate = estimateOneRep(120, 1);
    expect(estimate.studied && estimate.value.answers.every(({ oneRepKg }) => oneRepKg === 120)).toBe(true);
  });

  it('[GYM-20] answers the spread of all equations: at 100 kg for 5 from 112.5 to 119.0 kg', () => {
    const estimate = estimateOneRep(100, 5);
    if (!estimate.studied) throw new Error('5 repetitions are studied');
    expect(estimate.value.lowKg).toBeCloseTo(112.5, 2);
    expect(estimate.value.medianKg).toBeCloseTo(116.58, 2);
    expect(estimate.value.highKg).toBeCloseTo(119.01, 2);
  });

  it('[GYM-21] beyond ten repetitions there is no number, only the edge (Reynolds 2006: ten at most)', () => {
    expect(estimateOneRep(100, 12)).toEqual({
      studied: false,
      outside: { quantity: 'repsToFailure', found: 12, low: 1, high: 10, nearest: 10 },
    });
    expect(estimateOneRep(100, 0)).toMatchObject({ studied: false });
  });

  it('[GYM-20] five-repetition regressions: leg press 200 kg gives 233.65, chest press 100 kg 113.77 (Reynolds 2006)', () => {
    expect(oneRepFromFive('leg press', 200)).toEqual({ oneRepKg: 200 * 1.097 + 14.2546, errorKg: 16.16 });
    expect(oneRepFromFive('leg press', 200).oneRepKg).toBeCloseTo(233.65, 2);
    expect(oneRepFromFive('chest press', 100).oneRepKg).toBeCloseTo(113.77, 2);
  });
});

describe('the curve of the running estimate', () => {
  it('[GYM-22] with a bend of 1.1 lies within 2.5 points of the printed table up to ten repetitions (Baechle)', () => {
    for (const { reps, percent } of repetitionPercents.filter((row) => row.reps <= 10)) {
      expect(Math.abs(100 * Math.exp(-1.1 * curveOf(reps)) - percent)).toBeLessThan(2.5);
    }
  });

  it('[GYM-22] beyond ten, where the prints differ, lies within 2.5 points of one of them', () => {
    for (const { reps, percent, otherPrint = percent } of repetitionPercents.filter((row) => row.reps > 10)) {
      const ours = 100 * Math.exp(-1.1 * curveOf(reps));
      expect(Math.min(Math.abs(ours - percent), Math.abs(ours - otherPrint))).toBeLessThan(2.5);
    }
  });

  it('[GYM-22] turns back into repetitions, and its slope is its derivative', () => {
    for (const reps of [0, 1, 4.5, 10, 25]) {
      expect(repetitionsAt(curveOf(reps))).toBeCloseTo(reps, 9);
      expect(curveSlope(reps)).toBeCloseTo((curveOf(reps + 1e-6) - curveOf(reps - 1e-6)) / 2e-6, 6);
    }
  });
});
