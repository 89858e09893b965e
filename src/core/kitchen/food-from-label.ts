import type { DataOf } from '../journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { figure } from './figure.ts';
import type { LabelAnswer, LabelRequest } from './label-request.ts';
import { labelSpread, totalCarbohydrateG } from './label-spread.ts';
import { roundNutrients, scaleNutrients, type Spread } from './nutrients.ts';
import { readLabel } from './read-label.ts';

/** The most any food holds: pure fish oil, 902 kcal per 100 g by its specific factor. */
const MOST_KCAL_PER_100G = 905;

export type FoodIdentity = Pick<
  DataOf<'food-defined'>,
  'food' | 'name' | 'state' | 'unit' | 'aisle' | 'storage'
>;

export interface FoodFromLabel {
  /** To be written as the fact "food-defined". */
  readonly data: DataOf<'food-defined'>;
  /** Standard uncertainty per 100 g that rounding leaves. */
  readonly spread: Spread;
  readonly reading: LabelAnswer;
  readonly why: readonly string[];
}

/**
 * An own food from its label (BAT-46): per 100 g, carbohydrate with the fibre in it as in the food tables, the label kept as
 * printed. A label that does not add up is said and kept; a food that weighs less than its parts is refused.
 */
export function foodFromLabel(identity: FoodIdentity, label: LabelRequest): Outcome<FoodFromLabel> {
  const reading = readLabel(label);
  if (!reading.ok) return reading;
  const printed = { ...label.nutrients, carbohydrateG: totalCarbohydrateG(label) };
  const per100g = roundNutrients(scaleNutrients(printed, 100 / label.servingG));
  if (per100g.energyKcal > MOST_KCAL_PER_100G) {
    return refused(
      'kitchen/more-energy-than-fat',
      'label.nutrients.energyKcal',
      `${figure(per100g.energyKcal)} kcal in 100 g is more than pure fat holds.`,
      'Check the serving size and whether the energy is in kcal, not kJ.',
    );
  }
  const why = [...reading.value.why];
  if (label.rules === 'eu' && (label.nutrients.fibreG ?? 0) > 0) {
    why.push(
      `European carbohydrate leaves the fibre out: ${figure(label.nutrients.carbohydrateG)} g and ${figure(label.nutrients.fibreG ?? 0)} g of fibre count as ${figure(printed.carbohydrateG)} g, as in the food tables.`,
    );
  }
  return answered({
    data: {
      ...identity,
      per100g: withinAWhole(per100g),
      label: { rules: label.rules, servingG: label.servingG, nutrients: label.nutrients },
      basis: 'label',
    },
    spread: labelSpread(label),
    reading: reading.value,
    why,
  });
}

/** Rounding may lift a part a hair over 100 g per 100 g; the journal holds no such food. */
function withinAWhole(per100g: FoodFromLabel['data']['per100g']): FoodFromLabel['data']['per100g'] {
  const capped = { ...per100g };
  for (const name of ['proteinG', 'fatG', 'carbohydrateG', 'fibreG', 'sugarsG', 'saturatedFatG'] as const) {
    const value = capped[name];
    if (value !== undefined) capped[name] = Math.min(100, value);
  }
  return capped;
}
