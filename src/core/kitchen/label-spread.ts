import type { Grams } from '../units/quantities.ts';
import type { LabelRequest } from './label-request.ts';
import { servingInterval } from './label-rounding.ts';
import { labelRanges } from './read-label.ts';
import { nutrientNames, type NutrientName, type Spread } from './nutrients.ts';

/** Half-width to standard uncertainty of a value known only to lie between two bounds (source jcgm-100, 4.3.7). */
export const RECTANGULAR = 1 / Math.sqrt(3);

/** Standard uncertainty per 100 g that the rounding of a label leaves, the serving's own rounding included. */
export function labelSpread(label: LabelRequest): Spread {
  const serving = servingInterval(label.rules, label.servingG);
  const ranges = labelRanges(label);
  const spread: { [Name in NutrientName]?: number } = {};
  for (const name of nutrientNames) {
    const range = ranges[name];
    if (!range) continue;
    const halfWidth = (range.high / serving.low - range.low / serving.high) / 2;
    spread[name] = halfWidth * 100 * RECTANGULAR;
  }
  return spread;
}

/** Carbohydrate of the food tables holds the fibre; a European label leaves it out (BAT-46). */
export function totalCarbohydrateG(label: LabelRequest): Grams {
  const { carbohydrateG, fibreG = 0 } = label.nutrients;
  return label.rules === 'eu' ? carbohydrateG + fibreG : carbohydrateG;
}

/**
 * Carbohydrate of a serving as both rules print it (BAT-47): the American with its fibre, the European without. Without a fibre
 * figure only the label's own is known.
 */
export function carbohydrateBothWays(label: LabelRequest): {
  readonly withFibreG?: Grams;
  readonly withoutFibreG?: Grams;
} {
  const { carbohydrateG, fibreG } = label.nutrients;
  if (label.rules === 'eu') {
    return {
      withoutFibreG: carbohydrateG,
      ...(fibreG !== undefined && { withFibreG: carbohydrateG + fibreG }),
    };
  }
  return {
    withFibreG: carbohydrateG,
    ...(fibreG !== undefined && { withoutFibreG: Math.max(0, carbohydrateG - fibreG) }),
  };
}
