import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedInterval, type LabelRules } from './label-rounding.ts';
import { answerLabel } from './read-label.ts';

const runs = { seed: 20_270_302, numRuns: 1000 };

/** Forward rounding as source cfr-101-9 words it, written apart from the inverse. */
const american = {
  energyKcal: (x: number) => (x < 5 ? 0 : x <= 50 ? 5 * Math.round(x / 5) : 10 * Math.round(x / 10)),
  fatG: (x: number) => (x < 0.5 ? 0 : x < 5 ? Math.round(x * 2) / 2 : Math.round(x)),
  grams: (x: number) => (x < 0.5 ? 0 : x < 1 ? 0.7 : Math.round(x)),
  milligrams: (x: number) => (x < 5 ? 0 : x <= 140 ? 5 * Math.round(x / 5) : 10 * Math.round(x / 10)),
};

/** Source eu-rounding-2012. */
const european = {
  energyKcal: (x: number) => Math.round(x),
  grams: (x: number) => (x <= 0.5 ? 0 : x < 10 ? Math.round(x * 10) / 10 : Math.round(x)),
  saturates: (x: number) => (x <= 0.1 ? 0 : x < 10 ? Math.round(x * 10) / 10 : Math.round(x)),
};

const food = fc.record({
  proteinG: fc.double({ min: 0, max: 40, noNaN: true }),
  fatG: fc.double({ min: 0, max: 30, noNaN: true }),
  starchG: fc.double({ min: 0, max: 25, noNaN: true }),
  fibreG: fc.double({ min: 0, max: 4, noNaN: true }),
});

describe('labels of foods that are known', () => {
  it('[BAT-41] the true value lies in the range of what it prints, for every American and European rule', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 900, noNaN: true }), (x) => {
        const prints: [LabelRules, Parameters<typeof printedInterval>[1], number][] = [
          ['us', 'energyKcal', american.energyKcal(x)],
          ['us', 'fatG', american.fatG(x)],
          ['us', 'saturatedFatG', american.fatG(x)],
          ['us', 'carbohydrateG', american.grams(x)],
          ['us', 'sodiumMg', american.milligrams(x)],
          ['eu', 'energyKcal', european.energyKcal(x)],
          ['eu', 'proteinG', european.grams(x)],
          ['eu', 'saturatedFatG', european.saturates(x)],
        ];
        for (const [rules, name, printed] of prints) {
          const { low, high, printable } = printedInterval(rules, name, printed);
          expect({ rules, name, x, printable, inside: low <= x + 1e-9 && x <= high + 1e-9 }).toMatchObject({
            printable: true,
            inside: true,
          });
        }
      }),
      runs,
    );
  });

  it('[BAT-41] nothing outside the range prints the figure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 300, noNaN: true }), (x) => {
        const printed = american.energyKcal(x);
        const { low, high } = printedInterval('us', 'energyKcal', printed);
        expect(american.energyKcal(high + 1e-6)).not.toBe(printed);
        expect(low === 0 || american.energyKcal(low - 1e-6) !== printed).toBe(true);
      }),
      runs,
    );
  });

  it('[BAT-43] an honest label adds up, its energy range holds the truth, and a third more energy does not', () => {
    fc.assert(
      fc.property(food, fc.constantFrom<LabelRules>('us', 'eu'), (true_, rules) => {
        const { proteinG, fatG, starchG, fibreG } = true_;
        const energyKcal = 4 * proteinG + 9 * fatG + 4 * starchG + 2 * fibreG;
        fc.pre(energyKcal > 80);
        const round = rules === 'us' ? american.grams : european.grams;
        const roundFat = rules === 'us' ? american.fatG : european.grams;
        const roundEnergy = rules === 'us' ? american.energyKcal : european.energyKcal;
        const nutrients = {
          energyKcal: roundEnergy(energyKcal),
          proteinG: round(proteinG),
          fatG: roundFat(fatG),
          carbohydrateG: round(rules === 'us' ? starchG + fibreG : starchG),
          fibreG: round(fibreG),
        };
        const read = (kcal: number) =>
          answerLabel({ rules, servingG: 100, nutrients: { ...nutrients, energyKcal: kcal } });
        const [honest, false_] = [read(nutrients.energyKcal), read(roundEnergy(energyKcal * 1.33 + 20))];
        expect(honest.ok && honest.value.consistent).toBe(true);
        expect(false_.ok && false_.value.consistent).toBe(false);
        const [low, high] = honest.ok ? honest.value.energyFromMacros : [Number.NaN, Number.NaN];
        expect(low).toBeLessThanOrEqual(energyKcal + 1e-6);
        expect(high).toBeGreaterThanOrEqual(energyKcal - 1e-6);
      }),
      runs,
    );
  });
});
