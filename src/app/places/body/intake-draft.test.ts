import { describe, expect, it } from 'vitest';
import { settledDay, type IntakeDraft } from './intake-draft.ts';
import { oddBodyFat } from './odd-body-fat.ts';

const settle = (typed: Partial<IntakeDraft>) => settledDay({ day: '2027-03-01', ...typed }, '2027-03-04');
const problemOf = (typed: Partial<IntakeDraft>) => {
  const settled = settle(typed);
  return settled.ok ? undefined : settled.problem.path;
};

describe('[RUN-24] a day of food as it is settled', () => {
  it('[RUN-24] each answer becomes its own fact; a fast is not an unlogged day', () => {
    expect(settle({ was: 'all meals logged' })).toMatchObject({
      value: { kind: 'day-closed', data: { complete: true } },
    });
    expect(settle({ was: 'not logged' })).toMatchObject({
      value: { kind: 'day-closed', data: { complete: false } },
    });
    expect(settle({ was: 'a fast' })).toMatchObject({ value: { data: { energyKcal: 0, fasted: true } } });
  });

  it('[RUN-24] a total needs energy or all three macros, and hardly any is asked about', () => {
    expect(settle({ was: 'a total', proteinG: 140, carbohydrateG: 200, fatG: 50 })).toMatchObject({
      value: { day: '2027-03-01', data: { of: '2027-03-01', energyKcal: 1810 } },
    });
    expect(problemOf({ was: 'a total' })).toBe('energyKcal');
    expect(problemOf({ was: 'a total', proteinG: 140 })).toBe('energyKcal');
    expect(problemOf({ was: 'a total', energyKcal: 0 })).toBe('energyKcal');
  });

  it('[RUN-24] a day ahead, or nothing said, is no answer', () => {
    expect(problemOf({ was: 'a fast', day: '2027-03-05' })).toBe('day');
    expect(problemOf({})).toBe('was');
  });
});

describe('[RUN-28] a body fat that few bodies have', () => {
  it('[RUN-28] 3 % and 80 % are asked back, 12 % is not', () => {
    expect(oddBodyFat(3, 'male')).toContain('see a doctor');
    expect(oddBodyFat(8, 'female')).toContain('8 %');
    expect(oddBodyFat(80, 'male')).toContain('slip');
    expect(oddBodyFat(12, 'male')).toBeUndefined();
  });
});
