import { describe, expect, it } from 'vitest';
import { writeNumber } from './write-number.ts';

describe('[LOOK-01] numbers as written', () => {
  it.each([
    [212, 0, '212'],
    [81.45, 1, '81.5'],
    [81, 1, '81.0'],
    [-0.62, 2, '−0.62'],
    [-0.001, 1, '0.0'],
    [2680, 0, '2680'],
    [12_500, 0, '12\u2009500'],
    [1_234_567.8, 1, '1\u2009234\u2009567.8'],
  ])('[LOOK-01] %d with %d decimals is "%s"', (value, decimals, text) => {
    expect(writeNumber(value, decimals, false)).toBe(text);
  });

  it('[LOOK-01] a difference has its sign, nothing has none', () => {
    expect(writeNumber(2.5, 1, true)).toBe('+2.5');
    expect(writeNumber(-2.5, 1, true)).toBe('−2.5');
    expect(writeNumber(0.01, 1, true)).toBe('0.0');
  });
});
