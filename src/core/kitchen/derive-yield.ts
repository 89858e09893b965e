import { answered, refused, type Outcome } from '../problems/problem.ts';
import { tableFood } from '../tables/foods.ts';
import { rawCookedPairs, type RawCookedPair } from '../tables/raw-cooked-pairs.ts';
import type { TableFood } from '../tables/table-food.ts';
import type { Grams, Percent } from '../units/quantities.ts';
import { figure } from './figure.ts';

export interface DerivedYield {
  readonly percent: Percent;
  /** Grams of fat gained (or lost, below zero) by what 100 g raw come to. */
  readonly fatChangeG: Grams;
  readonly conserved: 'protein' | 'dry-matter';
}

/** A pan neither makes protein nor fat; samples differ by a little. Common practice, no source. */
const MOST_GAIN_G = 3;

/**
 * Cooked to raw weight of two table foods, from what stays the same between them (BAT-15): protein when cooked dry, dry matter
 * where water is taken up. Refuses samples that are no pair: fat was added, or protein and salts leached into the water, so
 * that the figures say more cooked than raw.
 */
export function deriveYield(raw: TableFood, cooked: TableFood): Outcome<DerivedYield> {
  const pair = rawCookedPairs.find((one) => one.raw === raw.id && one.cooked === cooked.id);
  const plausible = takesUpWater(raw) || raw.storage === 'fresh-produce' ? 'dry-matter' : 'protein';
  const conserved = pair && pair.conserved !== 'none' ? pair.conserved : plausible;
  const ratio = ratioOf(raw, cooked, conserved);
  const byProtein = ratioOf(raw, cooked, 'protein');
  const gainedG = (yieldRatio: number) => cooked.per100g.fatG * yieldRatio - raw.per100g.fatG;
  const mostGainedG = Math.max(gainedG(ratio), gainedG(byProtein));
  if (mostGainedG > MOST_GAIN_G) {
    return noPair(raw, cooked, `it gained ${figure(mostGainedG)} g of fat per 100 g raw`);
  }
  const most = Math.max(ratio, byProtein);
  if (!takesUpWater(raw) && most > 1) {
    return noPair(
      raw,
      cooked,
      `it would weigh ${figure(most * 100)} % of its raw weight without any water added`,
    );
  }
  if (pair?.conserved === 'none') {
    return noPair(raw, cooked, 'what leached into the water, or another sample, hides the change of weight');
  }
  return answered({ percent: ratio * 100, fatChangeG: gainedG(ratio), conserved });
}

function ratioOf(raw: TableFood, cooked: TableFood, conserved: 'protein' | 'dry-matter'): number {
  return conserved === 'protein'
    ? raw.per100g.proteinG / cooked.per100g.proteinG
    : (100 - raw.waterG) / (100 - cooked.waterG);
}

function takesUpWater(food: TableFood): boolean {
  return food.state === 'dry' || food.storage === 'dry-pulse';
}

function noPair(raw: TableFood, cooked: TableFood, reason: string): Outcome<DerivedYield> {
  return refused(
    'kitchen/no-yield-pair',
    cooked.id,
    `"${cooked.name}" is not "${raw.name}" cooked as it is: ${reason}.`,
    'Weigh your own pan; take no yield from these two.',
  );
}

const pairsByCooked = new Map<string, RawCookedPair>();
for (const pair of rawCookedPairs) if (!pairsByCooked.has(pair.cooked)) pairsByCooked.set(pair.cooked, pair);

/**
 * Raw weight behind so many grams of a cooked table food, such as 225 g of raw chicken behind 163 g roasted: for shopping and
 * for the pan. Undefined where no pair of samples gives it.
 */
export function rawEquivalent(
  cookedId: string,
  cookedG: Grams,
): { readonly food: string; readonly grams: Grams } | undefined {
  const pair = pairsByCooked.get(cookedId);
  if (!pair || pair.conserved === 'none') return undefined;
  const [raw, cooked] = [tableFood(pair.raw), tableFood(pair.cooked)];
  if (!raw || !cooked) return undefined;
  return { food: raw.id, grams: cookedG / ratioOf(raw, cooked, pair.conserved) };
}
