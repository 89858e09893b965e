import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toKilocalories } from '#core/units/energy.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { fatEnergyDraw } from './fat-energy-draw.ts';
import {
  energyDensityKjPerKg,
  energyShareOfMassShare,
  FORBES_ENERGY_KG,
  forbesCurveKg,
  forbesEnergyShare,
  forbesMassShare,
} from './energy-partition.ts';
import { finitePartition } from './finite-partition.ts';
import { lambertW, lambertWOfExp } from './lambert-w.ts';
import { linearBalance } from './linear-energy-balance.ts';
import type { Studied } from './studied-range.ts';

function valueOf<Value>(answer: Studied<Value>): Value {
  if (!answer.studied) throw new Error(`outside: ${answer.outside.quantity}`);
  return answer.value;
}

describe('the Forbes partition (Forbes 1987; Hall 2007, 2008)', () => {
  it('[EST-21] the lean share of a small change', () => {
    const printed = [
      [4, 0.722],
      [6, 0.634],
      [8, 0.565],
      [10, 0.51],
      [15, 0.409],
      [20, 0.342],
      [30, 0.257],
    ] as const;
    for (const [fatKg, share] of printed) expect(forbesMassShare(fatKg)).toBeCloseTo(share, 3);
    expect(FORBES_ENERGY_KG).toBeCloseTo(2.001, 4);
  });

  it('[EST-21] the curve itself: 10, 20, 30 kg of fat with 38.15, 45.36, 49.57 kg fat-free', () => {
    expect(valueOf(forbesCurveKg(10))).toBeCloseTo(38.15, 2);
    expect(valueOf(forbesCurveKg(20))).toBeCloseTo(45.36, 2);
    expect(valueOf(forbesCurveKg(30))).toBeCloseTo(49.57, 2);
    expect(forbesCurveKg(2).studied).toBe(false);
  });

  it('[EST-21] finite changes by the Lambert W function', () => {
    // Fi, dBW, F after, lean share, MJ/kg, kcal/kg
    const rows = [
      [30, -1, 29.2598, 0.2598, 31.21, 7460],
      [30, -10, 22.8372, 0.2837, 30.45, 7278],
      [15, -5, 12.1724, 0.4345, 25.64, 6128],
      [10, -5, 7.7077, 0.5415, 22.22, 5312],
      [4, -1, 3.7292, 0.7292, 16.24, 3881],
      [20, 5, 23.3773, 0.3245, 29.15, 6966],
      [40, -30, 18.1934, 0.2731, 30.79, 7358],
    ] as const;
    for (const [fat, change, after, share, megajoule, kcal] of rows) {
      const answer = valueOf(finitePartition(fat, change));
      expect(answer.fatAfterKg).toBeCloseTo(after, 4);
      expect(answer.leanShare).toBeCloseTo(share, 4);
      expect(answer.energyDensityKjPerKg / 1000).toBeCloseTo(megajoule, 1.9);
      expect(Math.abs(toKilocalories(answer.energyDensityKjPerKg) - kcal)).toBeLessThan(1);
    }
  });

  it('[EST-21] 7700 kcal per kg fits from about 30 kg of fat on and asks too much of leaner people (hall-2008)', () => {
    const density = (fatKg: number) =>
      toKilocalories(valueOf(finitePartition(fatKg, -1)).energyDensityKjPerKg);
    expect(density(35)).toBeGreaterThan(7600);
    expect(density(35)).toBeLessThan(7800);
    expect(density(12)).toBeLessThan(6000);
  });

  it('[EST-21] a chosen lean share gives its energy density', () => {
    const rows = [
      [0, 39.5, 0],
      [0.1, 36.31, 0.0209],
      [0.2, 33.12, 0.0459],
      [0.229, 32.2, 0.0541],
      [0.3, 29.93, 0.0762],
      [0.4, 26.74, 0.1137],
      [0.5, 23.55, 0.1614],
    ] as const;
    for (const [share, density, energy] of rows) {
      expect(energyDensityKjPerKg(share) / 1000).toBeCloseTo(density, 1.9);
      expect(energyShareOfMassShare(share)).toBeCloseTo(energy, 3.8);
    }
    expect(toKilocalories(energyDensityKjPerKg(0.229))).toBeCloseTo(7694, -1);
  });

  it('[EST-21] small steps and one large step of the partition meet, and gain undoes loss', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 60, noNaN: true }),
        fc.double({ min: -8, max: 8, noNaN: true }),
        (fatKg, change) => {
          const whole = valueOf(finitePartition(fatKg, change));
          const half = valueOf(finitePartition(fatKg, change / 2));
          if (half.fatAfterKg < 3 || whole.fatAfterKg < 3) return;
          expect(valueOf(finitePartition(half.fatAfterKg, change / 2)).fatAfterKg).toBeCloseTo(
            whole.fatAfterKg,
            9,
          );
          expect(valueOf(finitePartition(whole.fatAfterKg, -change)).fatAfterKg).toBeCloseTo(fatKg, 9);
          // The invariant of the curve: lean moves by 10.4 ln(F after / F before).
          const curve = ADULT_ENERGY.forbesKg * Math.log(whole.fatAfterKg / fatKg);
          expect(whole.leanChangeKg).toBeCloseTo(curve, 9);
        },
      ),
      { seed: 20270108, numRuns: 300 },
    );
  });

  it('[EST-21] energy share and mass share of the curve agree', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 80, noNaN: true }), (fatKg) => {
        expect(energyShareOfMassShare(forbesMassShare(fatKg))).toBeCloseTo(forbesEnergyShare(fatKg), 12);
      }),
      { seed: 20270109 },
    );
  });
});

describe('the Lambert W function (corless-1996)', () => {
  it('[EST-21] known values: W(0) = 0, W(1) = 0.5671432904, W(e) = 1', () => {
    expect(lambertW(0)).toBe(0);
    expect(lambertW(1)).toBeCloseTo(0.567143290409784, 13);
    expect(lambertW(Math.E)).toBeCloseTo(1, 13);
    expect(() => lambertW(-1)).toThrow(RangeError);
  });

  it('[EST-21] w exp(w) gives x back, in the logarithm too', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 600, noNaN: true }), (y) => {
        const w = lambertWOfExp(y);
        expect(w + Math.log(w)).toBeCloseTo(y, 9);
      }),
      { seed: 20270110, numRuns: 500 },
    );
  });
});

describe('the linear form (polidori-2016)', () => {
  it('[EST-21] coefficients as worked from the printed parameters', () => {
    const rows = [
      [30, 10, 0.3467, 23.74, 10048, 423, 293],
      [30, 7, 0.3467, 19.79, 10048, 508, 352],
      [15, 10, 0.6933, 27.5, 8538, 310, 215],
      [8, 10, 1.3, 31.35, 6990, 223, 155],
    ] as const;
    for (const [fat, delta, alpha, epsilon, rho, tau, half] of rows) {
      const at = linearBalance(fat, delta);
      expect(at.alpha).toBeCloseTo(alpha, 4);
      expect(at.epsilon).toBeCloseTo(epsilon, 1.9);
      expect(at.rho).toBeCloseTo(rho, -0.3);
      expect(at.timeConstantDays).toBeCloseTo(tau, -0.3);
      expect(at.halfTimeDays).toBeCloseTo(half, -0.3);
    }
  });

  it('[EST-21] about 24 kcal a day for each kg lost, the same number as 100 kJ (Polidori 2016)', () => {
    expect(linearBalance(30, 10).epsilon).toBeCloseTo(toKilocalories(100), 0);
  });
});

describe('how much a fat store yields in a day (alpert-2005)', () => {
  it('[EST-21] 290 kJ per kg: 277, 554, 908, 1386 kcal at 4, 8, 13.1, 20 kg', () => {
    const printed = [
      [4, 277],
      [8, 554],
      [13.1, 908],
      [20, 1386],
    ] as const;
    for (const [fat, kcal] of printed) expect(fatEnergyDraw(fat).middleKcal).toBeCloseTo(kcal, -0.3);
    expect(fatEnergyDraw(8).lowKcal).toBeCloseTo(388, -0.3);
  });
});
