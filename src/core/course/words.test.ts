import { describe, expect, it } from 'vitest';
import { changeWords, percentWords, spanWords, targetWords } from './words.ts';

describe('words of the course', () => {
  it('[CRS-01] a chance that is not certain is never written as none or all', () => {
    expect([0, 0.001, 0.274, 0.996, 1].map(percentWords)).toEqual([
      '0 %',
      'under 1 %',
      '27 %',
      'over 99 %',
      '100 %',
    ]);
  });

  it('[CRS-01] names every bound of the target', () => {
    expect(targetWords({ bodyFatPercent: { max: 8 } })).toBe('at most 8 % body fat');
    expect(targetWords({ bodyFatPercent: { max: 8 }, massKg: { max: 80, min: 76 } })).toBe(
      'at most 8 % body fat, at most 80 kg and at least 76 kg',
    );
  });

  it('[CRS-01] says a change the way it is done', () => {
    expect(changeWords({ energyKcal: -100, cardioKcal: 50 })).toBe(
      '100 kcal less food and 50 kcal more cardio a day',
    );
    expect(changeWords({ energyKcal: 75 })).toBe('75 kcal more food a day');
    expect(changeWords({})).toBe('no change');
  });

  it('[CRS-01] counts in weeks from two weeks on', () => {
    expect([0, 1, 13, 14, 59].map(spanWords)).toEqual(['0 days', '1 day', '13 days', '2 weeks', '8.4 weeks']);
  });
});
