import { describe, expect, it } from 'vitest';
import { adultEnergyBaseline } from '#core/science/adult-energy-baseline.ts';
import { levelDay, simulateAdultEnergy } from '#core/science/simulate-adult-energy.ts';
import { randomStream } from '#core/random/random-stream.ts';
import { toKilojoules } from '#core/units/energy.ts';
import { simulateCohort } from './athlete-simulator.ts';
import { type AthleteWorld, ordinaryWorld, wideWorld } from './athlete-world.ts';
import { livedDay, newBody } from './simulated-body.ts';

/** A world without chance in the body: the published model alone. */
const calm: AthleteWorld = {
  ...ordinaryWorld,
  activityFactor: [1.7, 1.7],
  partition: [1, 1],
  wobbleSdKcal: [0, 0],
  adaptationShare: [0.14, 0.14],
  cardioKept: [1, 1],
  gutSdKg: [0, 0],
  waterAnswer: [1, 1],
  cycleKg: [0, 0],
};
const start = { male: true, heightCm: 178, age: 30, massKg: 90, fatShare: 0.15 };

describe('the simulated body', () => {
  it('[EST-09] without chance it is the published model (hall-2011), though written and stepped apart', () => {
    const stream = randomStream(1, 'calm');
    const body = newBody(calm, stream, start);
    const answer = adultEnergyBaseline({
      sex: 'male',
      massKg: 90,
      heightCm: 178,
      age: 30,
      activityLevel: 1.7,
      fatKg: 13.5,
    });
    if (!answer.studied) throw new Error('outside');
    const intakeKcal = body.baselineKcal - 600;
    const carbohydrate = 0.4 * body.baselineKcal;
    const published = simulateAdultEnergy(answer.value, {
      days: 112,
      dayAt: () => ({
        ...levelDay(answer.value),
        intakeKj: toKilojoules(intakeKcal),
        baselineCarbohydrateKj: toKilojoules(body.traits.baselineCarbohydrateKcal),
        carbohydrateRatio: carbohydrate / body.traits.baselineCarbohydrateKcal,
      }),
    });
    let massKg = 0;
    for (let day = 0; day < 112; day++)
      massKg = livedDay(
        body,
        {
          energyKcal: intakeKcal,
          proteinG: 180,
          carbohydrateG: carbohydrate / 4,
          sodiumMg: 4200,
          cardioKcal: 0,
        },
        stream,
      ).after.massKg;
    expect(Math.abs(massKg - (published.at(-1)?.massKg ?? 0))).toBeLessThan(0.15);
    expect(Math.abs(body.fatKg - (published.at(-1)?.fatKg ?? 0))).toBeLessThan(0.1);
  });

  it('[EST-09] the same seed gives the same athletes, another seed others', () => {
    expect(simulateCohort(wideWorld, 3, 4)).toEqual(simulateCohort(wideWorld, 3, 4));
    expect(simulateCohort(wideWorld, 3, 1)).not.toEqual(simulateCohort(wideWorld, 4, 1));
  });

  it('[EST-09] the wide world holds every kind of hole and habit', () => {
    const cohort = simulateCohort(wideWorld, 5, 40);
    const all = cohort.flatMap(({ request }) => request.days);
    expect(new Set(cohort.map(({ request }) => request.athlete.sex)).size).toBe(2);
    expect(all.some(({ weightKg }) => weightKg === undefined)).toBe(true);
    expect(all.some(({ intake }) => intake === undefined)).toBe(true);
    expect(all.some(({ intake }) => intake && intake.sodiumMg === undefined)).toBe(true);
    expect(new Set(all.flatMap(({ bodyFat }) => (bodyFat ? [bodyFat.method] : []))).size).toBeGreaterThan(2);
    const gains = ({ truth }: (typeof cohort)[number]) =>
      (truth.at(-1)?.massKg ?? 0) > Math.min(...truth.map(({ massKg }) => massKg)) + 1;
    expect(cohort.some(gains)).toBe(true);
  });
});
