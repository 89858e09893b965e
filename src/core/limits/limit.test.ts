import { describe, expect, it } from 'vitest';
import {
  keeps,
  narrow,
  onSafeStep,
  openLimit,
  stepAtOrAbove,
  stepAtOrBelow,
  type LimitReason,
} from './limit.ts';

const reason = (value: number, limit = 'test'): LimitReason => ({
  limit,
  value,
  source: 'common-practice',
  words: `${limit} says ${value}.`,
});

describe('[LIM-01] a limit remembers', () => {
  it('[LIM-01] keeps the original, the present, every tighter reason and the tightest', () => {
    let floor = openLimit('Daily energy', 'kcal', 'floor', 1000);
    for (const value of [900, 1500, 1200, 1800]) floor = narrow(floor, reason(value));
    expect(floor.original).toBe(1000);
    expect(floor.present).toBe(1800);
    expect(floor.reasons.map((r) => r.value)).toEqual([1500, 1200, 1800]);
    expect(floor.tightest?.value).toBe(1800);
  });

  it('[LIM-01] a ceiling only falls, and of two equal reasons the first stays the tightest', () => {
    let ceiling = openLimit('Cardio', 'kcal', 'ceiling');
    for (const [value, name] of [
      [300, 'first'],
      [300, 'second'],
      [400, 'third'],
    ] as const)
      ceiling = narrow(ceiling, reason(value, name));
    expect(ceiling.present).toBe(300);
    expect(ceiling.tightest?.limit).toBe('first');
    expect(ceiling.reasons).toHaveLength(3);
  });

  it('[LIM-01] a reason without a number is a fault of ours', () => {
    expect(() => narrow(openLimit('Fat', 'g', 'floor'), reason(Number.NaN))).toThrow('Fat');
  });

  it('[LIM-01] says what keeps it', () => {
    const floor = narrow(openLimit('Fat', 'g', 'floor'), reason(40));
    const ceiling = narrow(openLimit('Loss', '%', 'ceiling'), reason(1));
    expect([keeps(floor, 40), keeps(floor, 39.9), keeps(ceiling, 1), keeps(ceiling, 1.01)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
});

describe('[LIM-03] rounding to the safe side', () => {
  it('[LIM-03] a floor rounds up and a ceiling down where the limit is not on the grid', () => {
    expect(onSafeStep(narrow(openLimit('Daily energy', 'kcal', 'floor'), reason(1626)), 25)).toBe(1650);
    expect(onSafeStep(narrow(openLimit('Cardio', 'kcal', 'ceiling'), reason(274)), 25)).toBe(250);
  });

  it('[LIM-03] a value on the grid stays, also on decimal grids', () => {
    expect(stepAtOrAbove(1650, 25)).toBe(1650);
    expect(stepAtOrAbove(0.3, 0.1)).toBe(0.3);
    expect(stepAtOrBelow(0.7, 0.1)).toBe(0.7);
    expect(Object.is(stepAtOrAbove(-0.01, 1), 0)).toBe(true);
    expect(stepAtOrBelow(Number.POSITIVE_INFINITY, 25)).toBe(Number.POSITIVE_INFINITY);
  });
});
