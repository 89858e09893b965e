import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { carbohydrateBothWays } from './label-spread.ts';
import { foodFromLabel } from './food-from-label.ts';
import { printedInterval } from './label-rounding.ts';
import { labelAnswer } from './label-request.ts';
import { answerLabel, labelFaults } from './read-label.ts';

function answer(request: object) {
  const outcome = answerLabel(request);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  v.assert(labelAnswer, outcome.value);
  return outcome.value;
}

const made = (energyKcal: number, more: object = {}) => ({
  rules: 'us',
  servingG: 13,
  nutrients: { energyKcal, proteinG: 6, fatG: 1.5, carbohydrateG: 5, ...more },
});

describe('a label read back', () => {
  /** Source cfr-101-9, inverted by hand: half-open intervals of the true value per serving. */
  it('[BAT-41] American figures stand for these true values, the double-fed 50 kcal, 5 g fat and 140 mg among them', () => {
    const interval = (name: 'energyKcal' | 'fatG' | 'proteinG' | 'sodiumMg', printed: number) => {
      const { low, high } = printedInterval('us', name, printed);
      return [low, high];
    };
    expect([0, 5, 45, 50, 60, 130, 250].map((figure) => interval('energyKcal', figure))).toEqual([
      [0, 5],
      [5, 7.5],
      [42.5, 47.5],
      [47.5, 55],
      [55, 65],
      [125, 135],
      [245, 255],
    ]);
    expect([0, 0.5, 1.5, 4.5, 5, 6, 12].map((figure) => interval('fatG', figure))).toEqual([
      [0, 0.5],
      [0.5, 0.75],
      [1.25, 1.75],
      [4.25, 4.75],
      [4.75, 5.5],
      [5.5, 6.5],
      [11.5, 12.5],
    ]);
    expect([0, 1, 2, 26].map((figure) => interval('proteinG', figure))).toEqual([
      [0, 0.5],
      [1, 1.5],
      [1.5, 2.5],
      [25.5, 26.5],
    ]);
    expect([0, 5, 75, 140, 150, 480].map((figure) => interval('sodiumMg', figure))).toEqual([
      [0, 5],
      [5, 7.5],
      [72.5, 77.5],
      [137.5, 145],
      [145, 155],
      [475, 485],
    ]);
  });

  /** 4 kcal/g for protein and carbohydrate, 9 for fat: source eu-1169-2011, annex XIV. 9, 45 and 3 g make 243 kcal. */
  it('[BAT-71] a label that does not add up says what is printed and what its macros make', () => {
    const nutrients = { energyKcal: 28, proteinG: 9, carbohydrateG: 45, fatG: 3 };
    const faults = labelFaults({ rules: 'eu', servingG: 100, nutrients });
    expect(faults).toEqual([
      expect.stringMatching(/^28 kcal are printed; its macros make 24\d(\.\d)? to 24\d/),
    ]);
    expect(labelFaults({ rules: 'eu', servingG: 100, nutrients: { ...nutrients, energyKcal: 243 } })).toEqual(
      [],
    );
    const sugary = { ...nutrients, energyKcal: 243, sugarsG: 60 };
    expect(labelFaults({ rules: 'eu', servingG: 100, nutrients: sugary })).toEqual([
      expect.stringContaining('More sugars'),
    ]);
  });

  /** Source eu-rounding-2012. */
  it('[BAT-41] European figures stand for these true values; sodium is read as the salt it came from', () => {
    const interval = (name: 'energyKcal' | 'fatG' | 'saturatedFatG' | 'sodiumMg', printed: number) => {
      const { low, high } = printedInterval('eu', name, printed);
      return [Number(low.toFixed(4)), Number(high.toFixed(4))];
    };
    expect([0, 9.9, 10, 11].map((figure) => interval('fatG', figure))).toEqual([
      [0, 0.5],
      [9.85, 9.95],
      [9.95, 10.5],
      [10.5, 11.5],
    ]);
    expect(interval('saturatedFatG', 0.3)).toEqual([0.25, 0.35]);
    expect(interval('energyKcal', 244)).toEqual([243.5, 244.5]);
    // 1.2 g of salt is 1.15 to 1.25 g, 460 to 500 mg of sodium; 0.40 g is 0.395 to 0.405 g.
    expect(interval('sodiumMg', 480)).toEqual([460, 500]);
    expect(interval('sodiumMg', 160)).toEqual([158, 162]);
  });

  /** Made-up label, worked by hand from source cfr-101-9. */
  it('[BAT-42] 13 g with 50 kcal, 1.5 g fat, 5 g carbohydrate, 6 g protein adds up, though 57.5 would print as 60', () => {
    const { range, energyFromMacros, consistent, per100g, why } = answer(made(50));
    expect(range.energyKcal).toEqual([47.5, 55]);
    expect(energyFromMacros).toEqual([51.25, 63.75]);
    expect(consistent).toBe(true);
    expect(per100g.proteinG).toBeCloseTo(46.15, 2);
    expect(why.join(' ')).toContain('Per 100 g the protein is 40.7 to 52 g');
  });

  it('[BAT-43] a claim of 28 kcal for the same macros does not add up: said, and kept', () => {
    const { consistent, per100g, why } = answer(made(28));
    expect(consistent).toBe(false);
    expect(per100g.energyKcal).toBeCloseTo(215.38, 2);
    expect(why.join(' ')).toContain('22.8 kcal or more below what the macros allow');
    expect(why.join(' ')).toContain('prints no such figure: energy 28');
  });

  /** Source eu-1169-2011, Annex XIV: 20 g protein, 30 g carbohydrate, 10 g fat, 5 g fibre are 300 kcal. */
  it('[BAT-42] European fibre counts on top, American fibre inside: 300 kcal either way', () => {
    const nutrients = { energyKcal: 300, proteinG: 20, fatG: 10, carbohydrateG: 30, fibreG: 5 };
    const eu = answer({ rules: 'eu', servingG: 100, nutrients });
    const us = answer({ rules: 'us', servingG: 100, nutrients: { ...nutrients, carbohydrateG: 35 } });
    expect(eu.energyFromMacros).toEqual(
      [4 * 19.5 + 9 * 9.95 + 4 * 29.5 + 2 * 4.95, 4 * 20.5 + 9 * 10.5 + 4 * 30.5 + 2 * 5.05].map((kcal) =>
        expect.closeTo(kcal, 6),
      ),
    );
    // The least counts American fibre with 2, the most with 4: both are allowed.
    expect(us.energyFromMacros).toEqual([
      4 * 19.5 + 9 * 9.5 + 4 * 34.5 - 2 * 5.5,
      4 * 20.5 + 9 * 10.5 + 4 * 35.5,
    ]);
    expect([eu.consistent, us.consistent]).toEqual([true, true]);
  });

  it('[BAT-43] an American label by plain 4, 4 and 9 is no fault, nor one that leaves the fibre at 2', () => {
    const bar = (energyKcal: number) => ({
      rules: 'us',
      servingG: 60,
      nutrients: { energyKcal, proteinG: 20, fatG: 7, carbohydrateG: 25, fibreG: 10 },
    });
    expect([220, 240, 180, 270].map((kcal) => answer(bar(kcal)).consistent)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it('[BAT-43] fibre that is not printed is not known, and named where it would explain the energy', () => {
    const { consistent, why } = answer({
      rules: 'eu',
      servingG: 100,
      nutrients: { energyKcal: 244, proteinG: 9, fatG: 3.3, carbohydrateG: 41 },
    });
    expect(consistent).toBe(false);
    expect(why.join(' ')).toContain('Fibre is not printed and not known; 5.6 g of it or more would explain');
  });

  it('[BAT-43] more sugars than carbohydrate does not add up', () => {
    const { consistent, why } = answer(made(50, { sugarsG: 9 }));
    expect(consistent).toBe(false);
    expect(why.join(' ')).toContain('More sugars (at least 8.5 g) than carbohydrate (under 5.5 g)');
  });

  it('[BAT-44] per 100 g is the printed figure over the serving; what is not printed is absent', () => {
    expect(answer(made(50, { sodiumMg: 65 })).per100g).toEqual({
      energyKcal: 384.6154,
      proteinG: 46.1538,
      fatG: 11.5385,
      carbohydrateG: 38.4615,
      sodiumMg: 500,
    });
  });

  it('[BAT-45] refuses no serving, 120 g of macros in 100 g, unknown rules and unknown fields', () => {
    const problem = (request: object) => {
      const outcome = answerLabel(request);
      return outcome.ok ? 'answered' : `${outcome.problem.code} ${outcome.problem.path}`;
    };
    const heavy = { energyKcal: 500, proteinG: 60, fatG: 20, carbohydrateG: 40 };
    expect([
      problem({ ...made(50), servingG: 0 }),
      problem({ rules: 'us', servingG: 100, nutrients: heavy }),
      problem({ ...made(50), rules: 'uk' }),
      problem(made(50, { fiberG: 2 })),
      problem(made(-5)),
      problem({ rules: 'us', servingG: 13 }),
    ]).toEqual([
      'kitchen/wrong-value servingG',
      'kitchen/heavier-than-its-serving nutrients',
      'kitchen/wrong-value rules',
      'kitchen/unknown-field nutrients.fiberG',
      'kitchen/wrong-value nutrients.energyKcal',
      'kitchen/missing-field nutrients',
    ]);
  });

  it('[BAT-46] becomes an own food per 100 g with the fibre in its carbohydrate, label and uncertainty kept', () => {
    const label = {
      rules: 'eu' as const,
      servingG: 100,
      nutrients: { energyKcal: 300, proteinG: 20, fatG: 10, carbohydrateG: 30, fibreG: 5 },
    };
    const food = foodFromLabel({ food: 'own:bar', name: 'bar', state: 'as-is' }, label);
    expect(food.ok && food.value.data).toEqual({
      food: 'own:bar',
      name: 'bar',
      state: 'as-is',
      per100g: { energyKcal: 300, proteinG: 20, fatG: 10, carbohydrateG: 35, fibreG: 5 },
      label,
      basis: 'label',
    });
    // 19.5 to 20.5 g of protein, anything in between as likely: half a gram over the root of three (source jcgm-100).
    expect(food.ok && food.value.spread.proteinG).toBeCloseTo(0.5 / Math.sqrt(3), 6);
    expect(food.ok && food.value.why.join(' ')).toContain('leaves the fibre out');
  });

  it('[BAT-46] refuses energy above pure fat: kilojoules in the place of kilocalories', () => {
    const nutrients = { energyKcal: 1255, proteinG: 20, fatG: 10, carbohydrateG: 30 };
    const food = foodFromLabel(
      { food: 'own:bar', name: 'bar', state: 'as-is' },
      { rules: 'eu', servingG: 100, nutrients },
    );
    expect(food.ok ? undefined : food.problem.code).toBe('kitchen/more-energy-than-fat');
  });
});

describe('carbohydrate by both rules', () => {
  const nutrients = { energyKcal: 120, proteinG: 5, fatG: 2, carbohydrateG: 20, fibreG: 3 };

  it('[BAT-47] American carbohydrate holds its fibre, European does not (sources cfr-101-9, eu-1169-2011)', () => {
    expect(carbohydrateBothWays({ rules: 'us', servingG: 30, nutrients })).toEqual({
      withFibreG: 20,
      withoutFibreG: 17,
    });
    expect(carbohydrateBothWays({ rules: 'eu', servingG: 30, nutrients })).toEqual({
      withFibreG: 23,
      withoutFibreG: 20,
    });
  });

  it('[BAT-47] without a fibre figure only the label’s own is known', () => {
    const { fibreG: _, ...rest } = nutrients;
    expect(carbohydrateBothWays({ rules: 'eu', servingG: 30, nutrients: rest })).toEqual({
      withoutFibreG: 20,
    });
  });
});
