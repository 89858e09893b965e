import { describe, expect, it } from 'vitest';
import { heldAgainstPlan, pointOn } from './held-against-plan.ts';

const line = [
  { date: '2027-03-01', massKg: 85, fatKg: 13, bodyFatPercent: 15.29 },
  { date: '2027-03-08', massKg: 84.3, fatKg: 12.44, bodyFatPercent: 14.76 },
];

describe('[CRS-14] planned and actual', () => {
  it('[CRS-14] reads the line between its points and not beyond them', () => {
    expect(pointOn(line, '2027-03-01')).toEqual(line[0]);
    expect(pointOn(line, '2027-03-04')).toMatchObject({ massKg: 84.7, fatKg: 12.76 });
    expect(pointOn(line, '2027-02-28')).toBeUndefined();
    expect(pointOn(line, '2027-03-09')).toBeUndefined();
  });

  it('[CRS-14] says how far ahead, and whether that is more than noise', () => {
    const day = (date: string, mean: number) => ({
      date,
      massKg: { mean, sd: 0.2 },
      fatKg: { mean: 12, sd: 1 },
    });
    expect(
      heldAgainstPlan(line, [day('2027-03-04', 84.5), day('2027-03-08', 83.9), day('2027-04-01', 80)]),
    ).toEqual([
      {
        date: '2027-03-04',
        plannedMassKg: 84.7,
        massKg: 84.5,
        massAheadKg: 0.2,
        plannedFatKg: 12.76,
        fatKg: 12,
        fatAheadKg: 0.76,
        bodyFatPercent: 14.2,
        beyondNoise: false,
      },
      expect.objectContaining({ date: '2027-03-08', massAheadKg: 0.4, beyondNoise: true }),
    ]);
  });
});
