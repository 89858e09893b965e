import { householdMeasures, type HouseholdMeasure } from '../tables/household-measures.ts';
import type { Grams } from '../units/quantities.ts';
import type { CatalogueFood } from './catalogue-food.ts';

/** A way to say how much of a food, besides grams and ounces. */
export interface AmountChoice {
  readonly name: string;
  /** Weight of one of it. */
  readonly grams: Grams;
  /** Weighed for this food, or worked out from another measure's volume. */
  readonly basis: 'measured' | 'volume';
}

/** Words of the food table for a volume; "cup, chopped" is another thing than a cup. */
const volumes: readonly (readonly [word: string, measure: HouseholdMeasure])[] = [
  ['cup', 'cup'],
  ['cup (8 fl oz)', 'cup'],
  ['fl oz', 'fluid-ounce'],
  ['tbsp', 'tablespoon'],
  ['tsp', 'teaspoon'],
];

/**
 * Household measures of a food (BAT-01): those weighed for it, and the metric cup, spoons and 100 mL by the density that one of
 * its volumes gives. A food without a plain volume has none worked out.
 */
export function amountChoices(food: CatalogueFood): readonly AmountChoice[] {
  const measured = food.measures.map(({ amount, unit, grams }) => ({
    name: unit,
    grams: grams / amount,
    basis: 'measured' as const,
  }));
  const density = gramsPerMillilitre(food);
  if (density === undefined) return measured;
  const names = new Set(measured.map((choice) => choice.name));
  const metric = (['metric-cup', 'metric-tablespoon', 'metric-teaspoon'] as const).map((key) => ({
    name: householdMeasures[key].name,
    grams: householdMeasures[key].millilitres * density,
    basis: 'volume' as const,
  }));
  const worked = [...metric, { name: '100 mL', grams: 100 * density, basis: 'volume' as const }];
  return [...measured, ...worked.filter((choice) => !names.has(choice.name))];
}

/** The largest plain volume weighed for it says most about its density. */
function gramsPerMillilitre(food: CatalogueFood): number | undefined {
  for (const [word, measure] of volumes) {
    const found = food.measures.find(({ unit }) => unit === word);
    if (found) return found.grams / found.amount / householdMeasures[measure].millilitres;
  }
  return undefined;
}
