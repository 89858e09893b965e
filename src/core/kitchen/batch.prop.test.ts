import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tableFoods } from '../tables/foods.ts';
import { answerBatch } from './answer-batch.ts';
import { nutrientNames, type NutrientName } from './nutrients.ts';
import { splitAsGiven, splitEqually } from './split-portions.ts';

const runs = { seed: 20_270_301, numRuns: 300 };

const raw = tableFoods.filter((food) => food.state === 'raw' && food.waterG > 50);
const pan = fc.record({
  foods: fc.array(fc.record({ food: fc.constantFrom(...raw), rawG: fc.integer({ min: 20, max: 2000 }) }), {
    minLength: 1,
    maxLength: 6,
  }),
  keptWater: fc.double({ min: 0.2, max: 1, noNaN: true }),
  drainedShare: fc.double({ min: 0, max: 1, noNaN: true }),
  containerG: fc.integer({ min: 0, max: 3000 }),
  portions: fc.integer({ min: 1, max: 12 }),
  scaleStepG: fc.constantFrom(0.1, 0.5, 1, 2, 5),
});

type MadePan = typeof pan extends fc.Arbitrary<infer Made> ? Made : never;

/** A pan that could be: water leaves, some fat is poured off and weighed. */
function requestOf(made: MadePan) {
  const total = (of: (food: (typeof raw)[number]) => number) =>
    made.foods.reduce((sum, { food, rawG }) => sum + (of(food) * rawG) / 100, 0);
  const drainedFatG = total((food) => food.per100g.fatG) * made.drainedShare;
  const rawG = made.foods.reduce((sum, one) => sum + one.rawG, 0);
  const cookedG = rawG - total((food) => food.waterG) * (1 - made.keptWater) - drainedFatG;
  return {
    ingredients: made.foods.map(({ food, rawG: grams }, index) => ({
      name: `${index} ${food.name}`,
      rawG: grams,
      per100g: food.per100g,
    })),
    cookedGrossG: cookedG + made.containerG,
    containerG: made.containerG,
    drainedFatG,
    portions: made.portions,
    scaleStepG: made.scaleStepG,
  };
}

const isMultiple = (grams: number, stepG: number) =>
  Math.abs(grams / stepG - Math.round(grams / stepG)) < 1e-6;

describe('a pan, whatever is in it', () => {
  it('[BAT-11] nutrients are conserved over the portions, but for drained fat and what is under a scale step', () => {
    fc.assert(
      fc.property(pan, (made) => {
        const request = requestOf(made);
        const outcome = answerBatch(request);
        fc.pre(outcome.ok);
        const { cookedG, perPortion, per100gCooked } = outcome.value;
        const packed = perPortion.reduce((sum, portion) => sum + portion.grams, 0) / cookedG;
        const drained = new Map<NutrientName, number>([
          ['fatG', request.drainedFatG],
          ['energyKcal', 9 * request.drainedFatG],
        ]);
        const near = (a: number, b: number) => Math.abs(a - b) < 0.05 || (Number.isNaN(a) && Number.isNaN(b));
        const conserved = nutrientNames
          .filter((name) => name !== 'saturatedFatG')
          .every((name) => {
            const parts = request.ingredients.map(
              ({ rawG, per100g }) => ((per100g[name] ?? Number.NaN) * rawG) / 100,
            );
            const putIn = Math.max(0, parts.reduce((sum, part) => sum + part, 0) - (drained.get(name) ?? 0));
            const kept = perPortion.reduce(
              (sum, portion) => sum + (portion.nutrients[name] ?? Number.NaN),
              0,
            );
            const per100g = per100gCooked[name] ?? Number.NaN;
            return near(kept, putIn * packed) && near(per100g, (putIn / cookedG) * 100);
          });
        expect(conserved).toBe(true);
      }),
      runs,
    );
  });

  it('[BAT-20] portions are multiples of the step, never outweigh the pan, leave less than a step, and are as equal as can be', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        fc.constantFrom(0.1, 0.5, 1, 2, 5, 10),
        (cookedG, count, stepG) => {
          const split = splitEqually(cookedG, count, stepG);
          expect(split.ok).toBe(Math.floor(cookedG / stepG + 1e-9) >= count);
          if (!split.ok) return;
          const { portionsG } = split.value;
          const leftG = cookedG - portionsG.reduce((total, grams) => total + grams, 0);
          const spreadG = Math.max(...portionsG) - Math.min(...portionsG);
          expect(
            portionsG.length === count &&
              leftG > -1e-6 &&
              leftG < stepG + 1e-6 &&
              spreadG < stepG + 1e-6 &&
              portionsG.every((grams) => isMultiple(grams, stepG)),
          ).toBe(true);
        },
      ),
      runs,
    );
  });

  it('[BAT-21] given weights stay within a step of what was asked and never pass the pan by more than a step', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 900, noNaN: true }), { minLength: 1, maxLength: 20 }),
        fc.constantFrom(0.1, 0.5, 1),
        fc.double({ min: -0.5, max: 300, noNaN: true }),
        (weightsG, stepG, moreSteps) => {
          const cookedG = weightsG.reduce((sum, grams) => sum + grams, 0) + moreSteps * stepG;
          const split = splitAsGiven(cookedG, weightsG, stepG);
          expect(split.ok || split.problem.code === 'kitchen/portions-too-small').toBe(true);
          if (!split.ok) return;
          const { portionsG, restG } = split.value;
          const sum = portionsG.reduce((total, grams) => total + grams, 0);
          expect(
            Math.abs(sum + restG - cookedG) < 1e-4 &&
              sum <= cookedG + stepG + 1e-6 &&
              portionsG.every((grams, index) => Math.abs(grams - (weightsG[index] ?? 0)) <= stepG + 1e-6),
          ).toBe(true);
        },
      ),
      runs,
    );
  });

  it('[BAT-10] the container never matters: tare and gross moved together answer the same', () => {
    fc.assert(
      fc.property(pan, fc.integer({ min: 1, max: 500 }), (made, moreG) => {
        const request = requestOf(made);
        const heavier = {
          ...request,
          containerG: request.containerG + moreG,
          cookedGrossG: request.cookedGrossG + moreG,
        };
        const [one, other] = [answerBatch(request), answerBatch(heavier)];
        fc.pre(one.ok && other.ok);
        expect(
          Math.abs(other.value.cookedG - one.value.cookedG) < 1e-5 &&
            JSON.stringify(other.value.portionsG) === JSON.stringify(one.value.portionsG),
        ).toBe(true);
      }),
      runs,
    );
  });
});
