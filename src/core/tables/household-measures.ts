import type { Millilitres } from '../units/quantities.ts';

/**
 * Volumes of kitchen measures. The customary ones follow from the inch of 25.4 mm: a gallon is 231 cubic inches,
 * a cup a sixteenth of it. How much a cup of a food weighs stands with the food (`measures`), never here.
 */
export const householdMeasures = {
  cup: { name: 'cup', millilitres: 236.5882365 },
  tablespoon: { name: 'tablespoon', millilitres: 14.78676478125 },
  teaspoon: { name: 'teaspoon', millilitres: 4.92892159375 },
  'fluid-ounce': { name: 'fluid ounce', millilitres: 29.5735295625 },
  'metric-cup': { name: 'metric cup', millilitres: 250 },
  'metric-tablespoon': { name: 'metric tablespoon', millilitres: 15 },
  'metric-teaspoon': { name: 'metric teaspoon', millilitres: 5 },
} as const satisfies Record<string, { name: string; millilitres: Millilitres }>;

export type HouseholdMeasure = keyof typeof householdMeasures;
