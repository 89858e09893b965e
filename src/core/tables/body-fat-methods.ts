import type { Percent } from '#core/units/quantities.ts';

/**
 * How far a method of measuring body fat is off for one person (its bias stays, 1 sd) and how much two readings of one
 * day differ (1 sd), in points of percent. The bias is the published standard error of estimate less what repeats.
 */
export interface BodyFatMethod {
  readonly key: string;
  readonly name: string;
  readonly biasPercent: Percent;
  readonly repeatPercent: Percent;
  readonly source: string;
  /** Other words for it, lower case. */
  readonly also: readonly string[];
}

/** Where a figure is from memory or read in a secondary source, its citation says so. */
export const bodyFatMethods: readonly BodyFatMethod[] = [
  {
    key: 'skinfold',
    name: 'skinfolds',
    biasPercent: 2.6,
    repeatPercent: 0.8,
    source: 'jackson-pollock-1978',
    also: ['skinfolds', 'folds', 'fold', 'caliper', 'calipers', 'callipers', 'skin-fold', 'jackson-pollock'],
  },
  {
    key: 'dxa',
    name: 'DXA',
    biasPercent: 2,
    repeatPercent: 0.8,
    source: 'van-der-ploeg-2003',
    also: ['dexa', 'dxa-scan', 'dexa-scan', 'x-ray absorptiometry'],
  },
  {
    key: 'hydrodensitometry',
    name: 'underwater weighing',
    biasPercent: 2,
    repeatPercent: 0.9,
    source: 'van-der-ploeg-2003',
    also: ['underwater', 'underwater-weighing', 'hydrostatic', 'hydrostatic-weighing', 'densitometry'],
  },
  {
    key: 'air-displacement',
    name: 'air displacement',
    biasPercent: 2.3,
    repeatPercent: 1,
    source: 'van-der-ploeg-2003',
    also: ['plethysmography', 'adp', 'air-displacement-plethysmography'],
  },
  {
    key: 'four-compartment',
    name: 'four-compartment model',
    biasPercent: 1,
    repeatPercent: 0.8,
    source: 'van-der-ploeg-2003',
    also: ['4c', '4-compartment', 'four-component', '4-component', 'three-compartment', '3c', 'mri'],
  },
  {
    key: 'impedance',
    name: 'impedance',
    biasPercent: 4,
    repeatPercent: 1.3,
    source: 'common-practice',
    also: ['bia', 'bioimpedance', 'bio-impedance', 'bioelectrical-impedance', 'smart-scale', 'scale'],
  },
  {
    key: 'tape',
    name: 'tape',
    biasPercent: 3.6,
    repeatPercent: 1,
    source: 'hodgdon-beckett-1984',
    also: ['girth', 'girths', 'circumference', 'circumferences', 'navy', 'us-navy', 'tape-measure'],
  },
  {
    key: 'ultrasound',
    name: 'ultrasound',
    biasPercent: 2.8,
    repeatPercent: 0.9,
    source: 'common-practice',
    also: ['us'],
  },
  {
    key: 'visual',
    name: 'judged by eye',
    biasPercent: 4,
    repeatPercent: 1.5,
    source: 'common-practice',
    also: ['eye', 'photo', 'photograph', 'mirror', 'visual-estimate'],
  },
  {
    key: 'other',
    name: 'another method',
    biasPercent: 4,
    repeatPercent: 1.5,
    source: 'common-practice',
    also: [],
  },
];

/** The method a word names, or undefined: an unknown method is a problem, never a default. */
export function bodyFatMethod(word: string): BodyFatMethod | undefined {
  const plain = word
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-');
  return bodyFatMethods.find(({ key, also }) => key === plain || also.includes(plain));
}
