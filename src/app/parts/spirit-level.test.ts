import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bubblePlace, levelWords } from './spirit-level.tsx';

describe('[LOOK-10] the spirit level', () => {
  it('[LOOK-10] says how much and to which side', () => {
    expect(levelWords(0, 'g', 5, 0)).toBe('on target');
    expect(levelWords(-5, 'g', 5, 0)).toBe('on target');
    expect(levelWords(-12, 'g', 5, 0)).toBe('12 g short');
    expect(levelWords(8.4, 'g', 5, 1)).toBe('8.4 g over');
  });

  it('[LOOK-10] bubble and words agree, and more is never nearer to the middle', () => {
    const amount = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(amount, amount, (one, other) => {
        const [near, far] = [
          Math.min(Math.abs(one), Math.abs(other)),
          Math.max(Math.abs(one), Math.abs(other)),
        ];
        const place = bubblePlace(one, 5, 40);
        expect(Math.abs(place)).toBeLessThanOrEqual(1);
        expect(Math.abs(place) < 0.2).toBe(levelWords(one, 'g', 5, 0) === 'on target');
        expect(bubblePlace(far, 5, 40)).toBeGreaterThanOrEqual(bubblePlace(near, 5, 40));
        expect(bubblePlace(-one, 5, 40)).toBe(0 - place);
      }),
      { seed: 20270301 },
    );
  });
});
