import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactly, knownNutrients, nutrientsOf, sumNutrients } from './nutrients.ts';

const oats = { energyKcal: 379, proteinG: 13.15, fatG: 6.52, carbohydrateG: 67.7, fibreG: 10.1, sodiumMg: 6 };
const honey = { energyKcal: 304, proteinG: 0.3, fatG: 0, carbohydrateG: 82.4, sodiumMg: 4 };

describe('nutrients of an amount', () => {
  it('[BAT-02] scale with the grams; unknown stays unknown', () => {
    expect(nutrientsOf(oats, 50)).toEqual({
      energyKcal: 189.5,
      proteinG: 6.575,
      fatG: 3.26,
      carbohydrateG: 33.85,
      fibreG: 5.05,
      sodiumMg: 3,
    });
  });

  it('[BAT-24] a sum with an unknown part is "at least" what the others hold, and leaves it out when asked for the known', () => {
    const sum = sumNutrients([exactly(oats, 'oats'), exactly(honey, 'honey')]);
    expect(sum.nutrients.fibreG).toBe(10.1);
    expect(sum.atLeast).toEqual(['fibreG', 'sugarsG', 'saturatedFatG', 'potassiumMg']);
    expect(sum.nutrients).not.toHaveProperty('sugarsG');
    expect(knownNutrients(sum)).toEqual({
      energyKcal: 683,
      proteinG: expect.closeTo(13.45, 9),
      fatG: 6.52,
      carbohydrateG: expect.closeTo(150.1, 9),
      sodiumMg: 10,
    });
  });

  it('[BAT-24] a lower bound stays one through further sums; nothing at all is known to be nothing', () => {
    const inner = { ...sumNutrients([exactly(oats, 'a'), exactly(honey, 'b')]), origin: 'pan' };
    expect(sumNutrients([inner, exactly(oats, 'a')]).atLeast).toContain('fibreG');
    expect(sumNutrients([]).atLeast).toEqual([]);
    expect(sumNutrients([]).nutrients.fibreG).toBe(0);
  });

  /** Source jcgm-100, 5.1.2: independent parts by the root of the sum of squares, the same food straight. */
  it('[BAT-24] uncertainty of one food adds straight, of different foods in quadrature', () => {
    const part = (origin: string, proteinG: number) => ({ ...exactly(oats, origin), spread: { proteinG } });
    expect(sumNutrients([part('a', 3), part('b', 4)]).spread.proteinG).toBe(5);
    expect(sumNutrients([part('a', 3), part('a', 4)]).spread.proteinG).toBe(7);
  });

  it('[BAT-24] the order of the parts does not matter', () => {
    const part = fc.record({
      energyKcal: fc.integer({ min: 0, max: 500 }),
      proteinG: fc.integer({ min: 0, max: 50 }),
      fatG: fc.integer({ min: 0, max: 50 }),
      carbohydrateG: fc.integer({ min: 0, max: 50 }),
    });
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), (parts) => {
        const amounts = parts.map((nutrients, index) => exactly(nutrients, String(index)));
        expect(sumNutrients(amounts.toReversed()).nutrients).toEqual(sumNutrients(amounts).nutrients);
      }),
      { seed: 5 },
    );
  });
});
