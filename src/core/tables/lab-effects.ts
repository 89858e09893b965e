import type { SourceKey } from './sources.ts';

/** What a substance taken does to a laboratory value, truly or only in the assay. */
export interface LabEffect {
  readonly substance: string;
  readonly analyte: string;
  readonly moves: 'up' | 'down';
  readonly words: string;
  readonly source: SourceKey;
}

function effects(
  substance: string,
  moves: LabEffect['moves'],
  analytes: readonly string[],
  words: string,
  source: SourceKey,
): LabEffect[] {
  return analytes.map((analyte) => ({ substance, analyte, moves, words, source }));
}

export const labEffects: readonly LabEffect[] = [
  ...effects(
    'creatine',
    'up',
    ['creatinine'],
    'Creatine raises creatinine without harm to the kidney.',
    'vilar-neto-2020',
  ),
  ...effects(
    'creatine',
    'down',
    ['egfrCr2021'],
    'Creatine lowers the filtration computed from creatinine; cystatin C is not moved by it.',
    'vilar-neto-2020',
  ),
  ...effects(
    'niacin',
    'up',
    ['glucose', 'uricAcid', 'alt', 'ast'],
    'Gram doses of niacin raise glucose, uric acid and liver enzymes.',
    'nasem-dri',
  ),
  ...effects('iodine', 'up', ['tsh'], 'Much iodine can push TSH either way.', 'ata-2013'),
  ...effects('kelp', 'up', ['tsh'], 'The iodine of kelp can push TSH either way.', 'ata-2013'),
  ...effects(
    'ashwagandha',
    'up',
    ['alt', 'ast', 'bilirubin', 'alp'],
    'Ashwagandha has injured livers: stop it and show this value to a physician.',
    'bjornsson-2020',
  ),
  ...effects(
    'ashwagandha',
    'up',
    ['ft4', 'ft3'],
    'Ashwagandha raises thyroid hormones (from memory).',
    'nccih',
  ),
  ...effects(
    'greenTea',
    'up',
    ['alt', 'ast'],
    'Green-tea extract raises liver enzymes from 800 mg of EGCG a day.',
    'efsa-catechins-2018',
  ),
  ...effects(
    'egcg',
    'up',
    ['alt', 'ast'],
    'Catechins raise liver enzymes from 800 mg a day.',
    'efsa-catechins-2018',
  ),
  ...effects(
    'curcumin',
    'up',
    ['alt', 'ast'],
    'Curcumin has rarely injured livers (from memory).',
    'nih-ods',
  ),
  ...effects(
    'berberine',
    'down',
    ['glucose', 'ldlCalc', 'cholesterol'],
    'Berberine lowers glucose and cholesterol as a medicine does.',
    'anses-berberine-2019',
  ),
  ...effects(
    'redYeastRice',
    'up',
    ['ck', 'alt', 'ast'],
    'Red yeast rice is a statin in effect: muscle and liver enzymes (from memory).',
    'eu-2022-860',
  ),
  ...effects(
    'statin',
    'up',
    ['ck', 'alt', 'ast'],
    'Statins raise muscle and liver enzymes in some (from memory).',
    'drug-labels',
  ),
  ...effects('licorice', 'down', ['potassium'], 'Licorice lowers potassium (from memory).', 'scf-2003'),
  ...effects(
    'potassium',
    'up',
    ['potassium'],
    'A potassium salt raises it: stop it and show this value to a physician.',
    'sturmi-1995',
  ),
  ...effects(
    'diuretic',
    'down',
    ['potassium', 'sodium', 'magnesium'],
    'Diuretics take salts with the water: say openly what was taken.',
    'sturmi-1995',
  ),
  ...effects(
    'diuretic',
    'up',
    ['uricAcid', 'bun', 'creatinine'],
    'Diuretics thicken the blood: say openly what was taken.',
    'sturmi-1995',
  ),
  ...effects('vitaminD', 'up', ['calcium', 'vitD'], 'Much vitamin D raises calcium.', 'iom-2011-vitamin-d'),
  ...effects(
    'calcium',
    'up',
    ['calcium'],
    'Calcium taken on the morning of the draw shows.',
    'draw-practice',
  ),
  ...effects(
    'zinc',
    'down',
    ['alp'],
    'Alkaline phosphatase is low when zinc is; long zinc use lowers copper (from memory).',
    'nih-ods',
  ),
  ...effects(
    'iron',
    'up',
    ['iron', 'tsat'],
    'Iron taken within a day of the draw shows (from memory).',
    'draw-practice',
  ),
  ...effects('wheyProtein', 'up', ['bun'], 'Much protein raises urea.', 'lugaresi-2013'),
  ...effects(
    'anabolicSteroid',
    'down',
    ['lh', 'fsh', 'shbg', 'hdl'],
    'Androgens lower LH, FSH, SHBG and HDL: say openly what was taken.',
    'wada-list',
  ),
  ...effects(
    'anabolicSteroid',
    'up',
    ['hct', 'hgb', 'alt', 'ast'],
    'Androgens raise red cells and liver enzymes: say openly what was taken.',
    'wada-list',
  ),
  ...effects(
    'levothyroxine',
    'up',
    ['ft4'],
    'Levothyroxine swallowed before the draw shows in free T4 for hours (from memory).',
    'drug-labels',
  ),
];

/**
 * Which way biotin bends an immunoassay: a sandwich assay reads falsely low, a competitive one falsely high. Which
 * laboratory's method is meant only the laboratory knows.
 */
export const biotinBends: Readonly<Record<string, 'low' | 'high'>> = {
  tsh: 'low',
  lh: 'low',
  fsh: 'low',
  prolactin: 'low',
  psa: 'low',
  ferritin: 'low',
  insulin: 'low',
  ft4: 'high',
  ft3: 'high',
  t3: 'high',
  testosterone: 'high',
  estradiol: 'high',
  cortisol: 'high',
  vitD: 'high',
};

/** Days' intake of biotin below this leaves assays alone: it is many times the adequate intake of 0.03 mg. */
export const BIOTIN_HARMLESS_MG_PER_DAY = 0.15;
/** Common advice for the pause; no time is guaranteed (from memory). */
export const BIOTIN_PAUSE_HOURS = 72;
