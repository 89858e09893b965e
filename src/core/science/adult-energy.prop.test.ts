import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adultEnergyBaseline } from './adult-energy-baseline.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { adultEnergyRates } from './adult-energy-balance.ts';
import { changedDay, levelDay, simulateAdultEnergy } from './simulate-adult-energy.ts';

const people = fc.record({
  sex: fc.constantFrom('male' as const, 'female' as const),
  massKg: fc.double({ min: 55, max: 110, noNaN: true }),
  heightCm: fc.double({ min: 155, max: 195, noNaN: true }),
  age: fc.integer({ min: 18, max: 60 }),
  activityLevel: fc.double({ min: 1.4, max: 2.2, noNaN: true }),
  fatKg: fc.double({ min: 7, max: 25, noNaN: true }),
});

function baselineOf(person: Parameters<typeof adultEnergyBaseline>[0]) {
  const answer = adultEnergyBaseline(person);
  if (!answer.studied) throw new Error('outside');
  return answer.value;
}

describe('the dynamic model, whoever is asked about', () => {
  it('[EST-21] energy is conserved: eaten less spent is what fat, lean and glycogen hold more', () => {
    fc.assert(
      fc.property(people, fc.double({ min: -4000, max: 4000, noNaN: true }), (person, change) => {
        const baseline = baselineOf(person);
        const day = changedDay(baseline, change);
        const course = simulateAdultEnergy(baseline, { days: 20, dayAt: () => day, stepsPerDay: 16 });
        const [first, last] = [course[0], course.at(-1)];
        if (!first || !last) throw new Error('no course');
        let balance = 0;
        for (let d = 0; d < 20; d++) {
          const [a, b] = [course[d], course[d + 1]];
          if (a && b) balance += day.intakeKj - (a.spentKj + b.spentKj) / 2;
        }
        const stored =
          ADULT_ENERGY.fatDensityKjPerKg * (last.fatKg - first.fatKg) +
          ADULT_ENERGY.leanDensityKjPerKg * (last.leanKg - first.leanKg) +
          ADULT_ENERGY.glycogenDensityKjPerKg * (last.glycogenKg - first.glycogenKg);
        // The trapezoid over whole days misses some of the first day's glycogen transient.
        expect(Math.abs(balance - stored)).toBeLessThan(
          0.01 * Math.abs(stored) + 0.06 * Math.abs(change) + 5,
        );
      }),
      { seed: 20270104, numRuns: 20 },
    );
  });

  it('[EST-21] at each moment intake less expenditure is the rate of stored energy, exactly', () => {
    fc.assert(
      fc.property(
        people,
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        (person, change, carbohydrateRatio) => {
          const baseline = baselineOf(person);
          const day = { ...changedDay(baseline, change), carbohydrateRatio };
          const state = { ...baseline, adaptationKj: 0.1 * change };
          const rates = adultEnergyRates(baseline, state, day);
          const stored =
            ADULT_ENERGY.fatDensityKjPerKg * rates.fatKg +
            ADULT_ENERGY.leanDensityKjPerKg * rates.leanKg +
            ADULT_ENERGY.glycogenDensityKjPerKg * rates.glycogenKg;
          expect(day.intakeKj - rates.spentKj).toBeCloseTo(stored, 6);
        },
      ),
      { seed: 20270105, numRuns: 200 },
    );
  });

  it('[EST-21] lean follows 10.4 ln F along the whole course (the Forbes invariant)', () => {
    fc.assert(
      fc.property(people, fc.double({ min: -3000, max: 3000, noNaN: true }), (person, change) => {
        const baseline = baselineOf(person);
        const day = changedDay(baseline, change);
        for (const at of simulateAdultEnergy(baseline, { days: 60, dayAt: () => day })) {
          const curve = ADULT_ENERGY.forbesKg * Math.log(at.fatKg / baseline.fatKg);
          expect(at.leanKg - baseline.leanKg).toBeCloseTo(curve, 6);
        }
      }),
      { seed: 20270106, numRuns: 20 },
    );
  });

  it('[EST-21] nothing moves where nothing changes, and the step does not matter', () => {
    fc.assert(
      fc.property(people, (person) => {
        const baseline = baselineOf(person);
        const still = simulateAdultEnergy(baseline, { days: 30, dayAt: () => levelDay(baseline) });
        expect(still.at(-1)?.massKg).toBeCloseTo(person.massKg, 8);
        const day = changedDay(baseline, -2000);
        const massBy = (stepsPerDay: number) =>
          simulateAdultEnergy(baseline, { days: 30, dayAt: () => day, stepsPerDay }).at(-1)?.massKg ?? 0;
        expect(massBy(1)).toBeCloseTo(massBy(20), 3);
      }),
      { seed: 20270107, numRuns: 20 },
    );
  });
});
