import type { DataOf } from '../journal/kinds/registry.ts';
import { girthsToDensity } from '../science/girths-to-density.ts';
import { siri } from '../science/siri.ts';
import { skinfoldFourSites } from '../science/skinfold-four-sites.ts';
import { skinfoldSevenSites } from '../science/skinfold-seven-sites.ts';
import { skinfoldThreeSites } from '../science/skinfold-three-sites.ts';
import { sentenceOfOutside, type Studied } from '../science/studied-range.ts';
import type { Centimetres, Millimetres, Percent, Years } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';

export type FoldEquation = NonNullable<DataOf<'folds-measured'>['equation']>;
export type FoldSite = keyof DataOf<'folds-measured'>['sites'];

export interface Measured {
  readonly sex: 'male' | 'female';
  readonly age: Years;
  readonly heightCm: Centimetres;
}

/** What folds or girths come to, or why they do not. */
export type FatReading =
  | { readonly percent: Percent; readonly by: string; readonly source: string }
  | { readonly lacking: string };

const SEVEN: readonly FoldSite[] = [
  'chest',
  'midaxillary',
  'triceps',
  'subscapular',
  'abdomen',
  'suprailiac',
  'thigh',
];
const FOUR: readonly FoldSite[] = ['biceps', 'triceps', 'subscapular', 'suprailiac'];
const THREE = {
  male: ['chest', 'abdomen', 'thigh'],
  female: ['triceps', 'suprailiac', 'thigh'],
} as const satisfies Record<Measured['sex'], readonly FoldSite[]>;

/** The sites an equation sums. */
export function foldSitesOf(equation: FoldEquation, sex: Measured['sex']): readonly FoldSite[] {
  if (equation === 'jackson-pollock-7') return SEVEN;
  return equation === 'durnin-womersley' ? FOUR : THREE[sex];
}

/** Sum of the sites of an equation, each the mean of its readings; undefined where one is missing. */
export function foldSumMm(
  { sites }: Pick<DataOf<'folds-measured'>, 'sites'>,
  equation: FoldEquation,
  sex: Measured['sex'],
): Millimetres | undefined {
  let sum = 0;
  for (const site of foldSitesOf(equation, sex)) {
    const readings = sites[site];
    if (readings === undefined || readings.length === 0) return undefined;
    sum += readings.reduce((total, one) => total + one, 0) / readings.length;
  }
  return sum;
}

/** Percent fat of skinfolds by their equation and Siri's, or what is lacking (RUN-22). */
export function fatOfFolds(folds: DataOf<'folds-measured'>, who: Measured): FatReading {
  const equation =
    folds.equation ??
    (['jackson-pollock-7', 'durnin-womersley', 'jackson-pollock-3'] as const).find(
      (one) => foldSumMm(folds, one, who.sex) !== undefined,
    );
  const sumMm = equation && foldSumMm(folds, equation, who.sex);
  if (equation === undefined || sumMm === undefined)
    return { lacking: 'The sites measured make up no published equation; their sum still shows a trend.' };
  const sum = { sex: who.sex, age: who.age, sumMm };
  if (equation === 'durnin-womersley')
    return percentOf(skinfoldFourSites(sum), 'four folds', 'durnin-womersley-1974');
  const source = who.sex === 'male' ? 'jackson-pollock-1978' : 'jackson-pollock-1980';
  return equation === 'jackson-pollock-7'
    ? percentOf(skinfoldSevenSites(sum), 'seven folds', source)
    : percentOf(skinfoldThreeSites(sum), 'three folds', source);
}

/** Percent fat of tape by the published equation and Siri's, or what is lacking. */
export function fatOfGirths({ sites }: DataOf<'girths-measured'>, who: Measured): FatReading {
  const waistCm = who.sex === 'male' ? (sites.abdomen ?? sites.waist) : sites.waist;
  const { neck: neckCm, hip: hipCm } = sites;
  if (neckCm === undefined || waistCm === undefined || (who.sex === 'female' && hipCm === undefined))
    return {
      lacking:
        who.sex === 'male'
          ? 'Neck and abdomen would give a figure for body fat.'
          : 'Neck, waist and hip would give a figure for body fat.',
    };
  const girths = {
    sex: who.sex,
    heightCm: who.heightCm,
    neckCm,
    waistCm,
    ...(hipCm !== undefined && { hipCm }),
  };
  return percentOf(girthsToDensity(girths), 'tape', 'hodgdon-beckett-1984');
}

function percentOf(density: Studied<number>, by: string, source: string): FatReading {
  if (!density.studied) return { lacking: sentenceOfOutside(density.outside) };
  const percent = siri(density.value);
  if (!percent.studied) return { lacking: sentenceOfOutside(percent.outside) };
  return { percent: roundTo(percent.value, 1), by, source };
}
