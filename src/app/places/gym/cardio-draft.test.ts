import { describe, expect, it } from 'vitest';
import { cardioEnergy } from '#core/cycle/cardio-energy.ts';
import { emptyCardio, readCardio } from './cardio-draft.ts';

describe('cardio as it is typed', () => {
  it('[GYM-90] keeps only the figures that belong to the chosen way', () => {
    const typed = { ...emptyCardio, speed: 5, gradePercent: 6, watts: 120, beforeFood: true };
    expect(readCardio(typed, 'km/h')).toEqual({
      ok: true,
      value: { activity: 'Treadmill walk', minutes: 30, beforeFood: true, speedKmh: 5, gradePercent: 6 },
    });
    expect(readCardio({ ...typed, way: 'bike' }, 'km/h')).toMatchObject({ value: { watts: 120 } });
  });

  it('[GYM-90] miles an hour come to the published energy of walking 3.0 mph at 12 % (acsm-2018: 28.9 mL/kg/min gross)', () => {
    const read = readCardio(
      { ...emptyCardio, minutes: 60, speed: 3, gradePercent: 12, beforeFood: false },
      'mph',
    );
    if (!read.ok) throw new Error(read.problem.message);
    // (28.906 - 3.5) x 80 kg / 1000 x 5 kcal x 60 min = 610; the example rounds a mile an hour to 26.8 m/min.
    expect(cardioEnergy(read.value, 80)?.netKcal).toBeCloseTo(610, -1);
  });

  it('[GYM-90] names what is missing', () => {
    const refusal = (change: object) => {
      const read = readCardio({ ...emptyCardio, beforeFood: true, ...change }, 'km/h');
      return read.ok ? undefined : read.problem.path;
    };
    expect(refusal({})).toBeUndefined();
    expect(refusal({ minutes: undefined })).toBe('minutes');
    expect(refusal({ beforeFood: undefined })).toBe('beforeFood');
    expect(refusal({ way: 'other', other: ' ' })).toBe('other');
  });
});
