import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldText, readNumber } from './read-number.ts';

const grams = { label: 'Raw weight', unit: 'g', decimals: 0 };
const kilograms = { label: 'Body mass', unit: 'kg', decimals: 2 };

describe('[LOOK-02] numbers as typed', () => {
  it.each([
    ['680', 680],
    [' 680 ', 680],
    ['1 250', 1250],
    ['+5', 5],
    ['-3', -3],
    ['\u22123', -3],
    ['12,0', 12],
    ['007', 7],
  ])('[LOOK-02] "%s" in whole grams is %d', (typed, value) => {
    expect(readNumber(typed, grams)).toEqual({ text: typed, value });
  });

  it.each([
    ['81,4', 81.4],
    ['81.45', 81.45],
    ['.5', 0.5],
    ['80.', 80],
    ['-0', 0],
  ])('[LOOK-02] "%s" in kilograms is %d, by point or comma', (typed, value) => {
    expect(readNumber(typed, kilograms)).toEqual({ text: typed, value });
  });

  it('[LOOK-02] nothing typed is absent, not zero', () => {
    expect(readNumber('  ', grams)).toEqual({ text: '  ' });
  });

  it('[LOOK-02] what can be read two ways is asked back, with the way to type it', () => {
    const reading = readNumber('1,250', grams);
    expect(reading.value).toBeUndefined();
    expect(reading.problem).toBe(
      'Raw weight: "1,250" can be read two ways. For the thousands type 1250, without a sign between.',
    );
  });

  it.each(['abc', '12g', '1,2,3', '.', '1.2.3', '--3'])('[LOOK-04] "%s" is kept, with a remedy', (typed) => {
    const reading = readNumber(typed, grams);
    expect(reading.text).toBe(typed);
    expect(reading.value).toBeUndefined();
    expect(reading.problem).toMatch(/^Raw weight: .* is not a number\. Type digits, such as 250\.$/);
  });

  it('[LOOK-04] limits are named with their unit', () => {
    expect(readNumber('-1', { ...grams, min: 0 }).problem).toBe('Raw weight: the least is 0 g.');
    expect(readNumber('30000', { ...grams, max: 20000 }).problem).toBe('Raw weight: the most is 20000 g.');
  });

  it('[LOOK-04] more decimals than the scale has are said', () => {
    expect(readNumber('81.4567', kilograms).problem).toBe(
      'Body mass: at most 2 decimals. Leave out the rest.',
    );
    expect(readNumber('12.5', grams).problem).toContain('whole numbers only');
  });

  it('[LOOK-02] what a field shows reads back as the same number', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e7, max: 1e7 }), fc.integer({ min: 0, max: 3 }), (whole, decimals) => {
        const value = whole / 10 ** decimals;
        expect(readNumber(fieldText(value, decimals), { ...kilograms, decimals }).value).toBe(value + 0);
      }),
      { seed: 20270301 },
    );
  });
});
