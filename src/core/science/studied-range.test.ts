import { describe, expect, it } from 'vitest';
import { sentenceOfOutside, withinStudied } from './studied-range.ts';

describe('what lies outside a studied range', () => {
  it('[EST-25] is answered with the quantity, what was found, and the nearest edge, in a plain sentence', () => {
    const answer = withinStudied([{ quantity: 'ageYears', found: 80, low: 19, high: 78 }], () => 1);
    if (answer.studied) throw new Error('80 is above 78');
    expect(sentenceOfOutside(answer.outside)).toBe(
      'ageYears 80 is outside the studied range of 19 to 78; the nearest edge is 78.',
    );
  });

  it('[EST-25] edges belong to the range, what is not a number lies in none, and nothing is evaluated outside', () => {
    const ask = (found: number) =>
      withinStudied([{ quantity: 'q', found, low: 1, high: 2 }], () => {
        if (found < 1 || found > 2 || Number.isNaN(found)) throw new Error('evaluated outside');
        return found;
      });
    expect(ask(1)).toEqual({ studied: true, value: 1 });
    expect(ask(2)).toEqual({ studied: true, value: 2 });
    expect(ask(Number.NaN).studied).toBe(false);
    expect(ask(0.999)).toMatchObject({ studied: false, outside: { nearest: 1 } });
  });
});
