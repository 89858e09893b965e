import { describe, expect, it } from 'vitest';
import { narrow, openLimit, type Limit } from './limit.ts';
import { settle } from './settle.ts';

const floorAt = (value: number): Limit =>
  narrow(openLimit('Daily energy', 'kcal', 'floor'), {
    limit: 'intake',
    value,
    source: 'jensen-2014',
    words: 'The floor speaks.',
  });
const ceilingAt = (value: number): Limit =>
  narrow(openLimit('Daily energy', 'kcal', 'ceiling'), {
    limit: 'own',
    value,
    source: 'common-practice',
    words: 'The ceiling speaks.',
  });

describe('settle', () => {
  it('[LIM-03] moves a wanted value to the safe side of the limit and says which reason moved it', () => {
    const low = settle(1400, { floor: floorAt(1626), ceiling: ceilingAt(2999) }, 25);
    expect(low).toMatchObject({
      ok: true,
      value: { wanted: 1400, value: 1650, movedBy: { limit: 'intake' } },
    });
    const high = settle(3200, { floor: floorAt(1626), ceiling: ceilingAt(2999) }, 25);
    expect(high).toMatchObject({ ok: true, value: { value: 2975, movedBy: { limit: 'own' } } });
  });

  it('[LIM-03] a value inside stays inside after rounding', () => {
    const answer = settle(1630, { floor: floorAt(1626), ceiling: ceilingAt(2999) }, 25);
    expect(answer).toMatchObject({ ok: true, value: { value: 1650 } });
    expect(answer.ok && answer.value.movedBy).toBeUndefined();
    expect(
      settle(-3, { floor: openLimit('Change', 'kcal', 'floor', -100), ceiling: ceilingAt(100) }, 25),
    ).toMatchObject({ ok: true, value: { value: 0 } });
  });

  it('[LIM-04] a floor above its ceiling is a refusal that names both', () => {
    expect(settle(1700, { floor: floorAt(1800), ceiling: ceilingAt(1700) }, 25)).toEqual({
      ok: false,
      problem: {
        code: 'limits/floor-above-ceiling',
        path: 'Daily energy',
        message:
          'No daily energy keeps both limits: at least 1800 and at most 1700 kcal. The floor speaks. The ceiling speaks.',
        remedy:
          'Give one of the two more room: a later date, a milder target, less cardio, or an own limit taken back.',
      },
    });
  });

  it('[LIM-04] a limit without a reason is still named by its number', () => {
    const open = openLimit('Daily energy', 'kcal', 'floor', 2000);
    const answer = settle(1700, { floor: open, ceiling: ceilingAt(1700) }, 25);
    expect(!answer.ok && answer.problem.message).toContain('Daily energy: 2000 kcal.');
  });
});
