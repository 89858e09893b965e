import type { Percent } from '../units/quantities.ts';
import { readTextTable, requiredNumber } from './text-table.ts';

const retainedNutrients = [
  'calcium',
  'iron',
  'magnesium',
  'phosphorus',
  'potassium',
  'sodium',
  'zinc',
  'copper',
  'vitamin C',
  'thiamin',
  'riboflavin',
  'niacin',
  'vitamin B6',
  'folate',
  'vitamin B12',
  'vitamin A',
  'choline',
] as const;
export type RetainedNutrient = (typeof retainedNutrients)[number];

export interface RetentionRow {
  /** Code of the preparation in the published table. */
  readonly code: string;
  readonly name: string;
  readonly source: 'usda-retention-2007';
  /** Percent of the raw amount kept, after the change of weight. Protein, fat, carbohydrate and energy have none. */
  readonly kept: Readonly<Record<RetainedNutrient, Percent>>;
}

/** Columns: code | preparation | percent kept, in the order of `retainedNutrients`. */
const rows = `
0751 | minced beef, browned then simmered, juices poured off | 80 100 65 65 55 55 100 95 80 45 85 55 35 65 60 75 90
0752 | minced beef, browned then simmered, juices kept | 100 100 100 100 100 100 100 100 85 60 100 90 50 70 75 80 90
0749 | minced beef, baked, juices poured off | 80 100 65 65 55 55 100 95 80 45 85 55 35 65 60 75 90
0770 | beef, reheated | 100 100 100 100 100 100 100 100 95 95 100 100 95 95 95 100 90
1851 | turkey, simmered, juices poured off | 85 95 65 70 55 70 100 95 80 55 95 60 50 60 50 75 70
0105 | eggs, hard-cooked | 100 100 100 100 100 100 100 100 80 85 95 95 95 75 85 100 80
0103 | eggs, fried or scrambled | 100 100 100 100 100 100 100 100 80 85 95 95 95 75 85 100 85
0352 | oats, rolled or quick, cooked | 100 95 100 95 95 100 100 95 80 80 90 90 90 70 100 90 100
0351 | oats, instant, cooked | 100 100 100 100 100 100 100 100 90 90 95 95 100 100 100 100 100
2301 | fish under 5 % fat, baked, juices poured off | 100 100 100 100 100 100 100 100 80 90 95 95 90 90 90 90 100
3301 | potatoes, baked in the skin | 100 100 100 100 100 100 100 100 80 85 95 95 95 90 100 100 100
`;

/** Nutrient retention factors of eleven preparations; source usda-retention-2007. */
export const retentionRows: readonly RetentionRow[] = readTextTable(rows, 3).map((cells) => {
  const [code = '', name = '', percents = ''] = cells;
  const values = percents.split(' ').map(requiredNumber);
  const kept = (nutrient: RetainedNutrient) =>
    requiredNumber(String(values[retainedNutrients.indexOf(nutrient)]));
  return {
    code,
    name,
    source: 'usda-retention-2007',
    kept: {
      calcium: kept('calcium'),
      iron: kept('iron'),
      magnesium: kept('magnesium'),
      phosphorus: kept('phosphorus'),
      potassium: kept('potassium'),
      sodium: kept('sodium'),
      zinc: kept('zinc'),
      copper: kept('copper'),
      'vitamin C': kept('vitamin C'),
      thiamin: kept('thiamin'),
      riboflavin: kept('riboflavin'),
      niacin: kept('niacin'),
      'vitamin B6': kept('vitamin B6'),
      folate: kept('folate'),
      'vitamin B12': kept('vitamin B12'),
      'vitamin A': kept('vitamin A'),
      choline: kept('choline'),
    },
  };
});

const byCode = new Map(retentionRows.map((row) => [row.code, row]));

/** Retention of a preparation by its code. */
export function retention(code: string): RetentionRow | undefined {
  return byCode.get(code);
}
