import type { KilocaloriesPerDay, Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { narrow, openLimit, stepAtOrAbove, type Limit } from './limit.ts';
import { narrowByOwn, type OwnLimits } from './own-limits.ts';
import { publishedLimits } from './published-limits.ts';

/** Least protein a day, grams, from fat-free mass (LIM-12). */
export function proteinFloor(leanKg: Kilograms, own: OwnLimits = {}): Limit {
  const { limit, minGPerKgLean, source } = publishedLimits.protein;
  const value = minGPerKgLean * leanKg;
  const floor = narrow(openLimit('Protein', 'g', 'floor'), {
    limit,
    value,
    source,
    words: `At least ${stepAtOrAbove(value, 1)} g of protein a day: ${minGPerKgLean} g for each of ${roundTo(leanKg, 1)} kg of fat-free mass.`,
  });
  return narrowByOwn(
    floor,
    own.proteinG?.min,
    (grams) => `At least ${grams} g of protein a day: your own limit.`,
  );
}

/** Least fat a day, grams, from body mass and, where the day's energy is known, from its share (LIM-13). */
export function fatFloor(massKg: Kilograms, own: OwnLimits = {}, energyKcal?: KilocaloriesPerDay): Limit {
  const { limit, minGPerKg, source, minEnergyShare, shareSource } = publishedLimits.fat;
  const byMass = minGPerKg * massKg;
  let floor = narrow(openLimit('Fat', 'g', 'floor'), {
    limit,
    value: byMass,
    source,
    words: `At least ${stepAtOrAbove(byMass, 1)} g of fat a day: ${minGPerKg} g for each of ${roundTo(massKg, 1)} kg of body mass.`,
  });
  if (energyKcal !== undefined) {
    const byShare = (minEnergyShare * energyKcal) / 9;
    floor = narrow(floor, {
      limit,
      value: byShare,
      source: shareSource,
      words: `At least ${stepAtOrAbove(byShare, 1)} g of fat a day: ${100 * minEnergyShare} % of ${roundTo(energyKcal, 0)} kcal.`,
    });
  }
  return narrowByOwn(floor, own.fatG?.min, (grams) => `At least ${grams} g of fat a day: your own limit.`);
}
