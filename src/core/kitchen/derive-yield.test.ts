import { describe, expect, it } from 'vitest';
import { tableFood } from '../tables/foods.ts';
import { rawCookedPairs } from '../tables/raw-cooked-pairs.ts';
import type { TableFood } from '../tables/table-food.ts';
import { yieldRow, yieldRows, yieldRowsFor } from '../tables/yields.ts';
import { deriveYield, rawEquivalent } from './derive-yield.ts';

const food = (ndb: string): TableFood => {
  const found = tableFood(ndb.startsWith('usda') ? ndb : `usda-sr28:${ndb}`);
  if (!found) throw new Error(`no food ${ndb}`);
  return found;
};

describe('yields', () => {
  it('[BAT-08] 56 published rows, 86 worked out from samples, 18 ratios of legumes, each under a name of its own', () => {
    const count = (basis: readonly string[]) => yieldRows.filter((row) => basis.includes(row.basis)).length;
    expect([count(['published']), count(['protein', 'dry-matter']), count(['legume-ratio'])]).toEqual([
      56, 86, 18,
    ]);
    expect(new Set(yieldRows.map((row) => row.form)).size).toBe(yieldRows.length);
    expect(yieldRow('23575')?.form).toBe('beef-mince-12-22-crumbles');
    expect(yieldRow('no-such-form')).toBeUndefined();
    expect(yieldRowsFor('usda-sr28:23572')[0]?.basis).toBe('published');
  });

  /** Source usda-yields-2014: definitions of moisture and fat change in percent of raw weight. */
  it('[BAT-08] 100 and moisture and fat change are the yield within 1.65 points for every minced-meat row', () => {
    const minced = yieldRows.filter((row) => row.basis === 'published' && row.form.includes('-mince-'));
    expect(minced.length).toBeGreaterThan(15);
    const off = minced.filter(
      ({ percent, moistureChange, fatChange }) =>
        Math.abs(100 + (moistureChange ?? Number.NaN) + (fatChange ?? Number.NaN) - percent) > 1.65,
    );
    expect(off.map((row) => row.form)).toEqual([]);
  });

  it('[BAT-08] every worked-out row of two bundled foods comes out again', () => {
    let checked = 0;
    for (const row of yieldRows.filter(({ basis }) => basis === 'protein' || basis === 'dry-matter')) {
      const [raw, cooked] = [tableFood(row.rawFoods[0] ?? ''), tableFood(`usda-sr28:${row.ndb}`)];
      if (!raw || !cooked) continue;
      const derived = deriveYield(raw, cooked);
      expect(derived.ok && Math.abs(derived.value.percent - row.percent)).toBeLessThan(0.11);
      checked += 1;
    }
    expect(checked).toBe(60);
  });

  /** Two independent ways to one figure: sources usda-sr28 (protein of raw and cooked samples) and usda-yields-2014 (weighed). */
  it('[BAT-15] protein-conservation yields agree with the 2014 table within 4 points, 7 for 70/30', () => {
    const compared = rawCookedPairs.flatMap((pair) => {
      const cooked = food(pair.cooked);
      const published = yieldRows.find((row) => row.basis === 'published' && row.ndb === cooked.ndb);
      const derived = deriveYield(food(pair.raw), cooked);
      if (!published || !derived.ok) return [];
      const tolerance = cooked.ndb === '13494' ? 7 : 4;
      return [
        { form: published.form, within: Math.abs(derived.value.percent - published.percent) <= tolerance },
      ];
    });
    expect(compared.length).toBeGreaterThanOrEqual(9);
    expect(compared.filter(({ within }) => !within)).toEqual([]);
  });

  it('[BAT-15] boiled broccoli and onion sauteed in fat are refused as yields, each for its reason', () => {
    const broccoli = deriveYield(food('11090'), food('11091'));
    const onion = deriveYield(food('11282'), food('11286'));
    expect(broccoli.ok ? undefined : broccoli.problem.message).toBe(
      '"broccoli, boiled, drained" is not "broccoli, raw" cooked as it is: it would weigh 118.5 % of its raw weight without any water added.',
    );
    expect(onion.ok ? undefined : onion.problem.message).toContain('it gained 12.4 g of fat per 100 g raw');
    const refused = rawCookedPairs.filter(({ conserved }) => conserved === 'none');
    expect(refused).toHaveLength(15);
    expect(refused.filter((pair) => deriveYield(food(pair.raw), food(pair.cooked)).ok)).toEqual([]);
  });

  it('[BAT-15] a cooked weight goes back to the raw one: 163 g of roasted chicken breast is 225 g raw', () => {
    expect(rawEquivalent('usda-sr28:05064', 163.1)).toEqual({
      food: 'usda-sr28:05062',
      grams: expect.closeTo(224.9, 1),
    });
    expect(rawEquivalent('usda-sr28:20045', 280)?.grams).toBeCloseTo(100, 0);
    expect(rawEquivalent('usda-sr28:11091', 100)).toBeUndefined();
    expect(rawEquivalent('usda-sr28:04053', 10)).toBeUndefined();
  });
});
