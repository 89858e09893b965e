import { describe, expect, it } from 'vitest';
import { stepped } from './stepper-field.tsx';

describe('[LOOK-02] steps land on multiples of themselves', () => {
  it.each([
    [174, 5, 0, 175],
    [174, -5, 0, 170],
    [175, 5, 0, 180],
    [175, -5, 0, 170],
    [0.3, 0.1, 1, 0.4],
    [0.3, -0.1, 1, 0.2],
    [62.5, 1.25, 2, 63.75],
    [0, -1, 0, -1],
  ])('[LOOK-02] %d by %d (%d decimals) is %d', (value, step, decimals, next) => {
    expect(stepped(value, step, decimals)).toBe(next);
  });
});
