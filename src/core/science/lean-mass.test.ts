import { describe, expect, it } from 'vitest';
import { energyAvailability } from './energy-availability.ts';
import { fatFreeMassIndex } from './fat-free-mass-index.ts';
import { fatFromIndex } from './fat-from-index.ts';

describe('fat-free mass index (Kouri 1995)', () => {
  it('[EST-23] worked values, with the 6.3 of the abstract', () => {
    const rows = [
      [90 * 0.85, 178, 24.145, 24.271],
      [76 * 0.95, 178, 22.788, 22.914],
      [100 * 0.9, 190, 24.931, 24.301],
    ] as const;
    for (const [fatFree, height, index, normalized] of rows) {
      const answer = fatFreeMassIndex(fatFree, height);
      expect(answer.index).toBeCloseTo(index, 3);
      expect(answer.normalized).toBeCloseTo(normalized, 3);
    }
  });
});

describe('energy availability', () => {
  it('[EST-23] the woman of Halliday 2016 in weeks 1, 10 and 20 (X11)', () => {
    expect(Math.abs(energyAvailability(1798, 484, 46.6) - 28.2)).toBeLessThan(0.05);
    expect(Math.abs(energyAvailability(1541, 459, 46.6) - 23.2)).toBeLessThan(0.05);
    expect(Math.abs(energyAvailability(1712, 440, 46.6) - 27.3)).toBeLessThan(0.05);
  });

  it('[EST-23] worked by hand', () => {
    expect(energyAvailability(2400, 400, 75)).toBeCloseTo(26.67, 2);
    expect(energyAvailability(2000, 300, 70)).toBeCloseTo(24.29, 2);
  });
});

describe('fat from body-mass index (Jackson 2002)', () => {
  it('[EST-25] outside the ages and sizes studied there is no answer', () => {
    const man = { sex: 'male', massKg: 100, heightCm: 180, age: 35 } as const;
    expect(fatFromIndex(man)).toMatchObject({ studied: true });
    expect(fatFromIndex({ ...man, massKg: 45 })).toMatchObject({
      studied: false,
      outside: { quantity: 'bodyMassIndex' },
    });
  });
});
