import { describe, expect, it } from 'vitest';
import { sources } from './sources.ts';
import { weightNoise } from './weight-noise.ts';

const valueOf = (key: string) => weightNoise.find((fact) => fact.key === key)?.value ?? Number.NaN;

describe('what moves the scale without tissue', () => {
  it('[EST-26] each fact once, each with a source that is in the list', () => {
    expect(new Set(weightNoise.map(({ key }) => key)).size).toBe(weightNoise.length);
    for (const { source } of weightNoise) expect(Object.keys(sources)).toContain(source);
  });

  it('[EST-26] the spread of a single reading follows from how often days differ by half a kilogram', () => {
    // 32 % of days beyond 0.5 kg: a normal difference with sd 0.503, so 0.36 kg for one reading.
    const perReading = 0.503 / Math.SQRT2;
    expect(valueOf('single-reading-sd')).toBeCloseTo(perReading, 2);
    // A normal would have 4.7 % of days beyond 1 kg; 6.2 % were seen: the tails are heavy.
    expect(valueOf('day-one-kg')).toBeGreaterThan(0.047);
  });
});
