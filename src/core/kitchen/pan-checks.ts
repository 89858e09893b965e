import type { SourceKey } from '../tables/sources.ts';
import { roundTo } from '../units/rounding.ts';
import type { PanCheck } from './batch-request.ts';
import { waterPer100g, type Pan, type PanIngredient } from './pan.ts';
import { listsItsWater, yieldBounds, type YieldBounds } from './yield-bounds.ts';

/** What the whole pan may come to, in grams, from the bounds of its ingredients. */
export interface PanBounds {
  readonly lowG: number;
  readonly highG: number;
  readonly mostG: number;
  readonly source: SourceKey;
}

export function panBounds(ingredients: readonly PanIngredient[]): PanBounds {
  const waterIsListed = listsItsWater(ingredients);
  const bounds = ingredients.map((one) => ({ rawG: one.rawG, of: yieldBounds(one, waterIsListed) }));
  const sum = (edge: 'low' | 'high' | 'most') =>
    bounds.reduce((total, { rawG, of }) => total + rawG * of[edge], 0);
  return { lowG: sum('low'), highG: sum('high'), mostG: sum('most'), source: sourceOf(bounds) };
}

/** The source of the heaviest ingredient whose yield is published; else common practice. */
function sourceOf(bounds: readonly { rawG: number; of: YieldBounds }[]): SourceKey {
  const published = bounds.filter(({ of }) => of.source !== 'common-practice');
  return published.sort((a, b) => b.rawG - a.rawG)[0]?.of.source ?? 'common-practice';
}

/** The three things held against the scale: yield, container, water. None of them refuses; what cannot be was refused before. */
export function panChecks(pan: Pan, rawG: number, cookedG: number): PanCheck[] {
  const bounds = panBounds(pan.ingredients);
  const rawWaterG = pan.ingredients.reduce((sum, one) => sum + (one.rawG * waterPer100g(one)) / 100, 0);
  // Fat that was weighed as it left is not water; what else left is.
  const waterChangeG = cookedG + pan.drainedFatG - rawG;
  const mostGainG = Math.max(0, bounds.highG - rawG);
  const ratio = (grams: number) => roundTo(grams / rawG, 4);
  return [
    {
      kind: 'joint-yield',
      ok: cookedG >= bounds.lowG && cookedG <= bounds.highG,
      expected: [ratio(bounds.lowG), ratio(bounds.highG)],
      found: ratio(cookedG),
      source: bounds.source,
    },
    {
      kind: 'gross-over-container',
      ok: pan.cookedGrossG > pan.containerG,
      expected: [roundTo(pan.containerG, 3), roundTo(pan.containerG + bounds.mostG, 3)],
      found: roundTo(pan.cookedGrossG, 3),
      source: 'common-practice',
    },
    {
      kind: 'water-change',
      ok: waterChangeG >= -rawWaterG && waterChangeG <= mostGainG,
      expected: [roundTo(-rawWaterG, 3), roundTo(mostGainG, 3)],
      found: roundTo(waterChangeG, 3),
      source: 'common-practice',
    },
  ];
}
