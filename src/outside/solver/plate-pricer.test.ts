import { describe, expect, it } from 'vitest';
import { randomStream } from '#core/random/random-stream.ts';
import { PlateGrams } from './plate-grams.ts';
import { plateModel } from './plate-model.ts';
import { PlatePricer } from './plate-pricer.ts';
import { plateProblemOf } from '../../../test/simulation/plate-problems.ts';

/** Every set of at most `most` of these choices, one of a kin. */
function subsets(choices: readonly number[], most: number, kin: (c: number) => number): number[][] {
  const [first, ...others] = choices;
  if (first === undefined || most === 0) return [[]];
  const free = others.filter((c) => kin(c) !== kin(first));
  return [...subsets(others, most, kin), ...subsets(free, most - 1, kin).map((set) => [first, ...set])];
}

describe('plates priced one by one', () => {
  it.each([1, 2, 3, 4, 5, 6])(
    '[DAY-22] seed %i: the tree finds what looking at every plate finds',
    (seed) => {
      const problem = plateProblemOf(seed, { meals: 2, foods: 7 });
      const model = plateModel(problem);
      const chance = randomStream(seed, 'prices');
      const prices = Float64Array.from({ length: model.joint.rows }, (_, row) =>
        model.joint.withinSlopes(row, 6 * chance.uniform() - 3),
      );
      const grams = new PlateGrams(model, 0);
      grams.setPrices(prices);
      const all = subsets(
        [...model.choices.keys()],
        problem.maxFoodsPerMeal,
        (c) => model.choices[c]?.kin ?? -1,
      )
        .map((choices) => grams.cost(choices))
        .sort((a, b) => a - b);
      const found = new PlatePricer(model, 0).price(prices, { slack: 4, most: 50, mostWork: 1e9 }, []);
      const within = all.filter((cost) => cost < (all[0] ?? 0) + 4).slice(0, 50);
      expect(found.complete).toBe(true);
      expect(found.plates.length).toBe(within.length);
      found.plates.forEach(({ value }, place) => {
        expect(value).toBeCloseTo(within[place] ?? Number.NaN, 6);
      });
    },
  );

  it('[DAY-22] a search that was cut short proves less, not more', () => {
    const model = plateModel(plateProblemOf(7, { meals: 2, foods: 20 }));
    const prices = new Float64Array(model.joint.rows);
    const whole = new PlatePricer(model, 0).price(prices, { slack: 0, most: 1, mostWork: 1e9 }, []);
    const cut = new PlatePricer(model, 0).price(prices, { slack: 0, most: 1, mostWork: 10 }, []);
    expect(whole.complete).toBe(true);
    expect(cut.complete).toBe(false);
    expect(cut.least).toBeLessThanOrEqual(whole.least);
  });
});
