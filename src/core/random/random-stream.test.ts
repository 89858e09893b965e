import { describe, expect, it } from 'vitest';
import { randomStream } from './random-stream.ts';

describe('seeded chance', () => {
  it('[GND-06] the stream of a seed and purpose never changes between versions', () => {
    const stream = randomStream(42, 'golden');
    const first = Array.from({ length: 4 }, () => stream.integer(1_000_000));
    expect(first).toEqual(GOLDEN);
  });

  it('[GND-06] another purpose is another stream', () => {
    const [a, b] = [randomStream(1, 'a'), randomStream(1, 'b')];
    const draws = Array.from({ length: 50 }, () => a.uniform() === b.uniform());
    expect(draws.every((same) => !same)).toBe(true);
  });

  it('[GND-07] uniform and normal have the moments of their distribution', () => {
    const stream = randomStream(7, 'moments');
    const n = 40_000;
    const uniform = Array.from({ length: n }, () => stream.uniform());
    const normal = Array.from({ length: n }, () => stream.normal());
    const mean = (x: number[]) => x.reduce((s, value) => s + value, 0) / n;
    const moment = (x: number[], k: number) => mean(x.map((value) => value ** k));
    // Tolerances are four standard errors of the known moments (uniform variance 1/12; normal 1, kurtosis 3).
    expect(Math.abs(mean(uniform) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / n));
    expect(Math.abs(mean(normal))).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(moment(normal, 2) - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
    expect(Math.abs(moment(normal, 4) - 3)).toBeLessThan(4 * Math.sqrt(96 / n));
  });
});

const GOLDEN = [60376, 700395, 22276, 57198];
