import { describe, expect, it } from 'vitest';
import { ramp } from './ramp.ts';
import type { RampAnswer } from './ramp-request.ts';

const HALL = [25, 20, 15, 10, 5, 2.5, 1.25].map((kg) => ({ kg, count: 6 }));
const BAR = { emptyKg: 20, sides: 2 };
/** Pounds as stamped, in kilograms to the exact pound. */
const pounds = (lb: number) => lb * 0.45359237;

function answerTo(request: object): RampAnswer {
  const outcome = ramp({ implement: BAR, plates: HALL, ...request });
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

function problemOf(request: object) {
  const outcome = ramp({ implement: BAR, plates: HALL, topSet: { loadKg: 100, reps: 5 }, ...request });
  return outcome.ok ? undefined : outcome.problem;
}

describe('the top set', () => {
  it('[GYM-02] is loaded exactly where the plates allow it', () => {
    const { sets, errorKg, why } = answerTo({ topSet: { loadKg: 102.5, reps: 8 } });
    expect(sets).toHaveLength(5);
    expect(sets.at(-1)).toMatchObject({ loadKg: 102.5, reps: 8 });
    expect(errorKg).toBe(0);
    expect(why[0]).toBe('102.5 kg can be loaded exactly.');
  });

  it('[GYM-02] is the nearest weight that can be loaded, the lower of two equally near', () => {
    expect(answerTo({ topSet: { loadKg: 101, reps: 5 } })).toMatchObject({ errorKg: -1 });
    expect(answerTo({ topSet: { loadKg: 101.3, reps: 5 } }).errorKg).toBeCloseTo(1.2, 12);
    expect(answerTo({ topSet: { loadKg: 101.25, reps: 5 } })).toMatchObject({ errorKg: -1.25 });
  });

  it('[GYM-02] with a bar heavier than what is wanted is the bar alone, and that is said', () => {
    const { sets, errorKg, plateMoves, why } = answerTo({ topSet: { loadKg: 15, reps: 10 } });
    expect(sets.map(({ loadKg, perSide }) => [loadKg, perSide])).toEqual(Array(5).fill([20, []]));
    expect([errorKg, plateMoves]).toEqual([5, 0]);
    expect(why[0]).toBe(
      'Empty, the implement weighs 20 kg, more than the 15 kg wanted: every set is with it empty.',
    );
  });

  it('[GYM-02] with plates that cannot reach it is as near as they come', () => {
    const { sets, errorKg, why } = answerTo({
      topSet: { loadKg: 100, reps: 5 },
      plates: [{ kg: 10, count: 3 }],
    });
    expect(sets.at(-1)).toMatchObject({ loadKg: 40, perSide: [10] });
    expect(errorKg).toBe(-60);
    expect(why[0]).toBe('100 kg cannot be loaded with these plates; 40 kg is the nearest, 60 kg below.');
    expect(why[1]).toBe('Two sides need pairs: of 10 kg one plate is left over.');
  });

  it('[GYM-01] in kilograms and pounds mixed is summed without the dust of fractions', () => {
    const { sets, errorKg } = answerTo({
      topSet: { loadKg: 20 + 2 * (pounds(45) + 20), reps: 5 },
      plates: [
        { kg: pounds(45), count: 2 },
        { kg: 20, count: 2 },
        { kg: pounds(2.5), count: 4 },
      ],
    });
    expect(errorKg).toBe(0);
    expect(sets.at(-1)?.loadKg).toBe(100.8233133);
    expect(sets.at(-1)?.perSide).toEqual(expect.arrayContaining([pounds(45), 20]));
  });
});

describe('the way up', () => {
  it('[GYM-04] on one side counts each plate once, on two sides twice', () => {
    const plates = [{ kg: 10, count: 4 }];
    const oneSide = answerTo({
      topSet: { loadKg: 20, reps: 5 },
      implement: { emptyKg: 0, sides: 1 },
      plates,
      warmUps: 0,
    });
    const twoSides = answerTo({
      topSet: { loadKg: 40, reps: 5 },
      implement: { emptyKg: 0, sides: 2 },
      plates,
      warmUps: 0,
    });
    expect([oneSide.plateMoves, twoSides.plateMoves]).toEqual([2, 4]);
  });

  it('[GYM-03] a mass that stands in two rows is one pile, so that single plates make a pair', () => {
    const plates = [
      { kg: 20, count: 1 },
      { kg: 20, count: 1 },
    ];
    expect(answerTo({ topSet: { loadKg: 60, reps: 5 }, plates }).sets.at(-1)?.perSide).toEqual([20]);
  });

  it('[GYM-07] warm-ups of one to ten start light, end below the top set, and ask fewer repetitions as they rise', () => {
    for (let warmUps = 0; warmUps <= 10; warmUps++) {
      const { sets } = answerTo({ topSet: { loadKg: 180, reps: 6 }, warmUps });
      expect(sets).toHaveLength(warmUps + 1);
      const reps = sets.slice(0, -1).map((set) => set.reps);
      expect(reps).toEqual(reps.toSorted((a, b) => b - a));
      for (const set of sets.slice(0, -1)) expect(set.loadKg).toBeLessThan(180);
      if (warmUps > 1) expect(sets[0]?.loadKg).toBeLessThanOrEqual(0.55 * 180);
      if (warmUps > 1) expect(sets.at(-2)?.loadKg).toBeGreaterThan(0.7 * 180);
    }
  });

  it('[GYM-05] the same request gives the same answer', () => {
    const request = { topSet: { loadKg: 141.7, reps: 3 }, warmUps: 6 };
    expect(answerTo(request)).toEqual(answerTo(request));
  });
});

describe('requests that cannot be answered', () => {
  it.each([
    [{ topSet: { loadKg: 1000, reps: 5 } }, 'gym/wrong-value', 'topSet.loadKg'],
    [{ topSet: { loadKg: 100, reps: -5 } }, 'gym/wrong-value', 'topSet.reps'],
    [{ topSet: { loadKg: 100 } }, 'gym/missing-field', 'topSet.reps'],
    [{ implement: { emptyKg: 20, sides: 3 } }, 'gym/wrong-value', 'implement.sides'],
    [{ plates: [{ kg: 20, count: 2.5 }] }, 'gym/wrong-value', 'plates.0.count'],
    [{ warmups: 3 }, 'gym/unknown-field', 'warmups'],
    [{ warmUps: 30 }, 'gym/wrong-value', 'warmUps'],
  ])('[GYM-06] %j names what does not fit', (request, code, path) => {
    expect(problemOf(request)).toMatchObject({ code, path });
  });

  it('[GYM-06] a pile of plates of every mass there is is refused, not waited for', () => {
    const plates = Array.from({ length: 24 }, (_, i) => ({ kg: 1 + Math.sqrt(i + 2) / 1.7, count: 200 }));
    expect(problemOf({ plates, topSet: { loadKg: 700, reps: 5 } })).toMatchObject({
      code: 'gym/too-many-plates',
      path: 'plates',
    });
  });
});
