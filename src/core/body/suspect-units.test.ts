import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import { suspectUnits } from './suspect-units.ts';

const log = (weights: readonly (number | undefined)[]) =>
  weights.map((weightKg, i) => ({
    date: addDays('2027-01-04', i),
    ...(weightKg === undefined ? {} : { weightKg }),
  }));

describe('weights that cannot be what they say', () => {
  it('[EST-60] a reading in pounds among kilograms is named with what it would be, and is contradicted', () => {
    expect(suspectUnits(log([84.8, 85, 187.2, 84.9]), 178)).toEqual([
      {
        index: 2,
        date: '2027-01-06',
        weightKg: 187.2,
        reason: 'pounds',
        asPoundsKg: 84.9,
        contradicted: true,
      },
    ]);
  });

  it('[EST-60] the first reading too: what comes after it tells', () => {
    expect(suspectUnits(log([187.2, 84.9, 85.1, 84.7]), 178)).toMatchObject([
      { index: 0, reason: 'pounds', contradicted: true },
    ]);
  });

  it('[EST-60] a log wholly in pounds is asked about and left as it stands', () => {
    const doubts = suspectUnits(log([187, 186.5, 186.8]), 178);
    expect(doubts).toHaveLength(3);
    for (const doubt of doubts) expect(doubt).toMatchObject({ reason: 'pounds', contradicted: false });
  });

  it('[EST-60] digits turned round are a slip', () => {
    expect(suspectUnits(log([84.8, 85, 58, 84.9]), 178)).toMatchObject([
      { index: 2, reason: 'slip', contradicted: true },
    ]);
  });

  it('[EST-60] shoes, a salty day, a heavy athlete and weeks of change are no matter', () => {
    expect(suspectUnits(log([84.8, 87.9, 85, 82.1]), 178)).toEqual([]);
    expect(suspectUnits(log([128, 128.4]), 190)).toEqual([]);
    expect(suspectUnits(log(Array.from({ length: 120 }, (_, i) => 95 - 0.12 * i)), 182)).toEqual([]);
    expect(suspectUnits(log([undefined, 85]), 178)).toEqual([]);
  });
});
