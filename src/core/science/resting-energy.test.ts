import { describe, expect, it } from 'vitest';
import { restingCunningham1980, restingCunningham1991, restingMifflinLean } from './resting-energy-lean.ts';
import { restingTenHaafLean, restingTenHaafWeight } from './resting-energy-ten-haaf.ts';
import type { Studied } from './studied-range.ts';

function valueOf(answer: Studied<number>): number {
  if (!answer.studied) throw new Error(`outside: ${answer.outside.quantity}`);
  return answer.value;
}

describe('resting energy from lean mass', () => {
  it('[EST-22] worked values at 65 and 76.5 kg fat-free (Cunningham 1980, 1991; ten Haaf and Weijs 2014)', () => {
    expect(valueOf(restingCunningham1980(65))).toBe(1930);
    expect(valueOf(restingCunningham1991(65))).toBeCloseTo(1774, 6);
    expect(valueOf(restingTenHaafLean(65, 30))).toBeCloseTo(1964.4, 1);
    expect(valueOf(restingCunningham1980(76.5))).toBe(2183);
    expect(valueOf(restingCunningham1991(76.5))).toBeCloseTo(2022.4, 6);
    expect(valueOf(restingTenHaafLean(76.5, 30))).toBeCloseTo(2226.2, 1);
    expect(valueOf(restingMifflinLean(65))).toBeCloseTo(1693.5, 6);
  });

  it('[EST-22] a textbook example: 82 kg at 15 % fat, fat-free rounded to 70 kg, is 2040 kcal', () => {
    expect(valueOf(restingCunningham1980(70))).toBe(2040);
  });

  it('[EST-22] ten Haaf by weight: a man of 90 kg and a woman of 60 kg', () => {
    const man = { sex: 'male', massKg: 90, heightCm: 178, age: 30 } as const;
    const woman = { sex: 'female', massKg: 60, heightCm: 165, age: 28 } as const;
    expect(valueOf(restingTenHaafWeight(man))).toBeCloseTo(2096.8, 1);
    expect(valueOf(restingTenHaafWeight(woman))).toBeCloseTo(1487.6, 1);
  });

  it('[EST-25] outside their people the equations say so and name the nearest edge', () => {
    expect(restingTenHaafLean(70, 40)).toEqual({
      studied: false,
      outside: { quantity: 'ageYears', found: 40, low: 18, high: 35, nearest: 35 },
    });
    expect(restingCunningham1980(20)).toMatchObject({ studied: false, outside: { nearest: 30 } });
  });
});
