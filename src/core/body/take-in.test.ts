import { describe, expect, it } from 'vitest';
import { hypothesesFor } from './hypothesis.ts';
import { startMember } from './member.ts';
import { STATE } from './state-layout.ts';
import { massRow, takeInBodyFat, takeInWeight } from './take-in.ts';
import { meanAlong } from './gaussian.ts';
import { takeInStrength } from './take-in-strength.ts';

const athlete = { sex: 'male', heightCm: 178, age: 30 } as const;
const uses = { methods: [], cycle: false, creatine: false, otherScale: false };
const mass = massRow(0, 0);

function memberAt(massKg: number) {
  const hypothesis = hypothesesFor(athlete, false).find(({ firstReadingStray }) => !firstReadingStray);
  if (!hypothesis) throw new Error('no hypothesis');
  return startMember(athlete, hypothesis, { meanKg: massKg, sdKg: 0.3 }, uses);
}
const reading = (weightKg: number) => ({ weightKg, mass, weekday: 0, travelling: false, first: false });

describe('hypotheses', () => {
  it('[EST-12] their priors add to one, whether or not the time of weighing is told', () => {
    for (const told of [athlete, { ...athlete, weighed: 'before-food' as const }]) {
      const sum = hypothesesFor(told, false).reduce((total, { prior }) => total + prior, 0);
      expect(sum).toBeCloseTo(1, 12);
    }
  });
});

describe('taking a weigh-in in', () => {
  it('[EST-07] an ordinary reading pulls by its share of what is known; a stray one hardly', () => {
    const near = memberAt(85);
    expect(takeInWeight(near, reading(85.4)).ordinary).toBeGreaterThan(0.95);
    expect(meanAlong(near.belief, mass)).toBeGreaterThan(85.1);
    const far = memberAt(85);
    expect(takeInWeight(far, reading(88.5)).ordinary).toBeLessThan(0.05);
    expect(meanAlong(far.belief, mass)).toBeLessThan(85.6);
  });

  it('[EST-07] strays on one side are counted, and forgotten by an ordinary reading', () => {
    const member = memberAt(85);
    takeInWeight(member, reading(88.5));
    takeInWeight(member, reading(88.4));
    expect(member.straysInARow).toBe(2);
    takeInWeight(member, reading(85.2));
    expect(member.straysInARow).toBe(0);
    takeInWeight(member, reading(81.5));
    expect(member.straysInARow).toBe(-1);
  });
});

describe('taking body fat in', () => {
  it('[EST-05] the bias of the method keeps most of the doubt about the level of fat', () => {
    const member = memberAt(85);
    const { covariance, size } = member.belief;
    covariance[STATE.firstMethod * size + STATE.firstMethod] = 2.6 ** 2;
    const before = Math.sqrt(covariance[STATE.fat * size + STATE.fat] ?? 0);
    for (let i = 0; i < 20; i++) takeInBodyFat(member, 12, mass, STATE.firstMethod, 0.8);
    const after = Math.sqrt(covariance[STATE.fat * size + STATE.fat] ?? 0);
    expect(after).toBeLessThan(before);
    expect((100 * after) / 85).toBeGreaterThan(2);
  });
});

describe('taking strength in', () => {
  it('[EST-06] says nothing where nothing was lost', () => {
    const member = memberAt(85);
    const before = member.belief.mean[STATE.partition] ?? 0;
    takeInStrength(member, { strengthKept: 0.9, sd: 0.02 });
    expect(member.belief.mean[STATE.partition]).toBeCloseTo(before, 6);
  });
});
