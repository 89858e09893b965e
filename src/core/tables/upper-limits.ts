import { mineralLimits } from './mineral-limits.ts';
import { eu, noLevel, row, us, type NutrientLimits } from './upper-limit.ts';
import { vitaminLimits } from './vitamin-limits.ts';

const others: readonly NutrientLimits[] = [
  row(
    'caffeine',
    'Caffeine',
    'mg',
    [us(400, 'all sources', { basis: 'reference intake', source: 'fda-caffeine', evidence: 'from memory' })],
    [
      eu(400, 'all sources', 2015, {
        basis: 'safe level',
        source: 'efsa-caffeine-2015',
        words: 'habitual; 200 mg a dose; 200 mg a day in pregnancy',
      }),
    ],
    '100 mg near bedtime can delay sleep.',
  ),
  row(
    'egcg',
    'Green-tea catechins (EGCG)',
    'mg',
    noLevel,
    [
      eu(800, 'supplements only', 2018, {
        basis: 'dose of concern',
        source: 'efsa-catechins-2018',
        words:
          'liver enzymes rose from here on; no safe dose below it could be set; brewed tea is not of concern',
      }),
    ],
    'Never on an empty stomach (from memory); stop with dark urine or yellow skin.',
  ),
];

export const upperLimits: readonly NutrientLimits[] = [...vitaminLimits, ...mineralLimits, ...others];

/** Levels that change with age: calcium 2000 mg from 51 years, phosphorus 3000 mg above 70 (US). */
export const usLimitByAge: Readonly<Record<string, { readonly fromAge: number; readonly perDay: number }>> = {
  calcium: { fromAge: 51, perDay: 2000 },
  phosphorus: { fromAge: 71, perDay: 3000 },
};

/** EU acceptable daily intake of copper, mg per kg body mass (2022, from memory). */
export const COPPER_ADI_MG_PER_KG = 0.07;
