import { describe, expect, it } from 'vitest';
import { meetingAt } from './target.ts';
import type { Run } from './run-paths.ts';

const run: Run = {
  paths: 4,
  looks: [-1, 6],
  massKg: Float64Array.of(80, 80, 80, 80, 78, 79, 80, 81),
  fatKg: Float64Array.of(8, 8, 8, 8, 6, 7, 8.2, 8),
  tissueKg: new Float64Array(8),
};

describe('meetingAt', () => {
  it('[CRS-01] counts the paths that meet every bound given, and to which side the others miss', () => {
    expect(meetingAt(run, 1, { bodyFatPercent: { max: 10 } })).toEqual({
      probability: 0.75,
      tooMuch: 0.25,
      tooLittle: 0,
    });
    expect(meetingAt(run, 1, { massKg: { max: 80, min: 79 } })).toEqual({
      probability: 0.5,
      tooMuch: 0.25,
      tooLittle: 0.25,
    });
    expect(meetingAt(run, 1, { bodyFatPercent: { max: 9 }, massKg: { min: 79 } })).toEqual({
      probability: 0.25,
      tooMuch: 0.5,
      tooLittle: 0.25,
    });
    expect(meetingAt(run, 0, { massKg: { max: 80 } }).probability).toBe(1);
  });
});
