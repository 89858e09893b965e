import type { SourceKey } from './sources.ts';

/**
 * Tolerable upper intake levels and comparable figures for adults of 19 years and more, not pregnant, per day, as the
 * US (NASEM) and the EU (EFSA) set them, side by side. An upper level is for habitual intake. What counts towards it
 * matters more than the number: food, or only what was added, or one chemical form.
 */
export type MassUnit = 'g' | 'mg' | 'ug';
export type Counted =
  /** Food, fortified food and supplements. */
  | 'all sources'
  /** Fortified food and supplements. */
  | 'added forms'
  | 'supplements only';

export interface UpperLimit {
  readonly perDay: number;
  readonly counted: Counted;
  /** Only these forms count; absent: every form. */
  readonly forms?: readonly string[];
  /** What the figure is: a level set by the body, or something that is often taken for one. */
  readonly basis: 'upper level' | 'safe level' | 'reference intake' | 'dose of concern';
  readonly year?: number;
  readonly source: SourceKey;
  readonly evidence: 'seen' | 'from memory';
  readonly words?: string;
}

export interface NutrientLimits {
  readonly key: string;
  readonly name: string;
  readonly unit: MassUnit;
  readonly us: readonly UpperLimit[];
  readonly eu: readonly UpperLimit[];
  readonly caution?: string;
}

type Extra = Partial<Pick<UpperLimit, 'forms' | 'basis' | 'year' | 'evidence' | 'words' | 'source'>>;

const us = (perDay: number, counted: Counted = 'all sources', extra: Extra = {}): UpperLimit => ({
  perDay,
  counted,
  basis: 'upper level',
  source: 'nasem-dri',
  evidence: 'seen',
  ...extra,
});
const eu = (perDay: number, counted: Counted, year: number, extra: Extra = {}): UpperLimit => ({
  perDay,
  counted,
  basis: 'upper level',
  year,
  source: 'efsa-ul',
  evidence: 'seen',
  ...extra,
});
const noLevel: readonly UpperLimit[] = [];

function row(
  key: string,
  name: string,
  unit: MassUnit,
  usLimits: readonly UpperLimit[],
  euLimits: readonly UpperLimit[],
  caution?: string,
): NutrientLimits {
  return { key, name, unit, us: usLimits, eu: euLimits, ...(caution === undefined ? {} : { caution }) };
}

const preformed = ['retinol'];
const vitamins: readonly NutrientLimits[] = [
  row(
    'vitaminA',
    'Vitamin A, preformed',
    'ug',
    [us(3000, 'all sources', { forms: preformed })],
    [eu(3000, 'all sources', 2024, { forms: preformed })],
    'Harms the unborn child and the liver in excess; carotenoids do not count.',
  ),
  row(
    'vitaminC',
    'Vitamin C',
    'mg',
    [us(2000)],
    noLevel,
    'Loose stools and more oxalate in urine; very high doses disturb some glucose meters (from memory).',
  ),
  row(
    'vitaminD',
    'Vitamin D',
    'ug',
    [us(100)],
    [eu(100, 'all sources', 2023)],
    'Too much raises calcium: follow 25-hydroxyvitamin D and calcium. Tables before 2011 print 50.',
  ),
  row(
    'vitaminE',
    'Vitamin E',
    'mg',
    [us(1000, 'added forms')],
    [eu(300, 'all sources', 2024)],
    'Impairs clotting and adds to anticoagulants.',
  ),
  row(
    'vitaminK',
    'Vitamin K',
    'ug',
    noLevel,
    noLevel,
    'Works against warfarin-type medicines: never start or stop without the prescriber.',
  ),
  row('thiamin', 'Thiamin (B1)', 'mg', noLevel, noLevel),
  row('riboflavin', 'Riboflavin (B2)', 'mg', noLevel, noLevel, 'Colours urine yellow.'),
  row(
    'niacin',
    'Niacin (B3)',
    'mg',
    [us(35, 'added forms')],
    [
      eu(10, 'added forms', 2002, { forms: ['nicotinic acid'], words: 'nicotinic acid' }),
      eu(900, 'added forms', 2002, { forms: ['nicotinamide'], words: 'nicotinamide' }),
    ],
    'Flushing; gram doses harm the liver and raise glucose and uric acid.',
  ),
  row('pantothenicAcid', 'Pantothenic acid (B5)', 'mg', noLevel, noLevel),
  row(
    'vitaminB6',
    'Vitamin B6',
    'mg',
    [us(100)],
    [eu(12, 'all sources', 2023, { words: 'the older 25 is superseded' })],
    'Damages sensory nerves in excess.',
  ),
  row(
    'biotin',
    'Biotin',
    'ug',
    noLevel,
    noLevel,
    'Falsifies immunoassays: see the pause before a blood draw. Enough is 30 ug; hair and nail products hold milligrams.',
  ),
  row(
    'folate',
    'Folic acid',
    'ug',
    [us(1000, 'added forms')],
    [eu(1000, 'added forms', 2023)],
    'Can hide a lack of vitamin B12.',
  ),
  row('vitaminB12', 'Vitamin B12', 'ug', noLevel, noLevel),
  row('choline', 'Choline', 'mg', [us(3500)], noLevel, 'Low blood pressure, fishy body odour.'),
  row(
    'betaCarotene',
    'Beta-carotene',
    'mg',
    noLevel,
    noLevel,
    'Supplements are not for smokers: more lung cancer in trials.',
  ),
];

const adi = 'older level; since 2022 an acceptable intake of 0.07 mg per kg body mass applies (from memory)';
const minerals: readonly NutrientLimits[] = [
  row(
    'calcium',
    'Calcium',
    'mg',
    [us(2500)],
    [eu(2500, 'all sources', 2012)],
    'Too much raises blood calcium and makes stones; it blocks iron and levothyroxine. At most 500 mg a dose is taken up well.',
  ),
  row('phosphorus', 'Phosphorus', 'mg', [us(4000)], noLevel),
  row(
    'magnesium',
    'Magnesium',
    'mg',
    [us(350, 'supplements only')],
    [eu(250, 'supplements only', 2001)],
    'Diarrhoea; dangerous in kidney failure. Magnesium in food does not count.',
  ),
  row(
    'iron',
    'Iron',
    'mg',
    [us(45)],
    [eu(40, 'all sources', 2024, { basis: 'safe level' })],
    'Not without a ferritin value; harmful in iron overload; keep from children: an overdose kills.',
  ),
  row('zinc', 'Zinc', 'mg', [us(40)], [eu(25, 'all sources', 2002)], 'Copper deficiency with long use.'),
  row('copper', 'Copper', 'mg', [us(10)], [eu(5, 'all sources', 2022, { words: adi })], 'Liver.'),
  row(
    'iodine',
    'Iodine',
    'ug',
    [us(1100)],
    [eu(600, 'all sources', 2002)],
    'Over- and underactive thyroid; supplements above 500 ug a day are advised against.',
  ),
  row(
    'selenium',
    'Selenium',
    'ug',
    [us(400)],
    [eu(255, 'all sources', 2023, { evidence: 'from memory', words: '300 before' })],
    'Hair and nail loss; Brazil nuts vary widely.',
  ),
  row(
    'chromium',
    'Chromium (III)',
    'ug',
    noLevel,
    noLevel,
    'Adds to medicines that lower glucose (from memory).',
  ),
  row(
    'manganese',
    'Manganese',
    'mg',
    [us(11)],
    [eu(8, 'all sources', 2023, { basis: 'safe level', evidence: 'from memory' })],
    'Nerve damage in excess.',
  ),
  row('molybdenum', 'Molybdenum', 'ug', [us(2000)], [eu(600, 'all sources', 2000)]),
  row(
    'boron',
    'Boron',
    'mg',
    [us(20, 'all sources', { evidence: 'from memory' })],
    [eu(10, 'all sources', 2004)],
  ),
  row('fluoride', 'Fluoride', 'mg', [us(10)], [eu(7, 'all sources', 2005)]),
  row('nickel', 'Nickel', 'mg', [us(1, 'all sources', { evidence: 'from memory' })], noLevel),
  row(
    'vanadium',
    'Vanadium',
    'mg',
    [us(1.8, 'all sources', { evidence: 'from memory' })],
    noLevel,
    'Kidney; sold as a glucose agent.',
  ),
  row(
    'sodium',
    'Sodium',
    'mg',
    [us(2300, 'all sources', { basis: 'reference intake', words: 'reduce above, for chronic disease' })],
    [eu(2000, 'all sources', 2019, { basis: 'reference intake', evidence: 'from memory' })],
    'People who sweat much are outside both definitions.',
  ),
  row(
    'potassium',
    'Potassium',
    'mg',
    noLevel,
    noLevel,
    'A single large dose of a salt can stop the heart, more so with kidney disease or medicines that hold potassium.',
  ),
];

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

export const upperLimits: readonly NutrientLimits[] = [...vitamins, ...minerals, ...others];

/** Levels that change with age: calcium 2000 mg from 51 years, phosphorus 3000 mg above 70 (US). */
export const usLimitByAge: Readonly<Record<string, { readonly fromAge: number; readonly perDay: number }>> = {
  calcium: { fromAge: 51, perDay: 2000 },
  phosphorus: { fromAge: 71, perDay: 3000 },
};

/** EU acceptable daily intake of copper, mg per kg body mass (2022, from memory). */
export const COPPER_ADI_MG_PER_KG = 0.07;
