/** A fact about what moves the scale without tissue: kg unless the quantity says otherwise. */
export interface WeightNoiseFact {
  readonly key: string;
  readonly words: string;
  readonly value: number;
  readonly unit: 'kg' | '%' | 'share of days' | 'kg per kg';
  readonly source: string;
}

/** What today's jump can be made of. The estimate's own beliefs stand in `body`; these are for words and for tests. */
export const weightNoise: readonly WeightNoiseFact[] = [
  {
    key: 'day-half-kg',
    words: 'days on which weight differs by 0.5 kg or more from the day before',
    value: 0.32,
    unit: 'share of days',
    source: 'robinson-watson-1965',
  },
  {
    key: 'day-one-kg',
    words: 'days on which weight differs by 1 kg or more from the day before',
    value: 0.062,
    unit: 'share of days',
    source: 'robinson-watson-1965',
  },
  {
    key: 'single-reading-sd',
    words: 'one sd of a single morning reading about the course of weight',
    value: 0.36,
    unit: 'kg',
    source: 'robinson-watson-1965',
  },
  {
    key: 'week-rhythm',
    words: 'swing within the week, high after the week-end',
    value: 0.35,
    unit: '%',
    source: 'turicchi-2020',
  },
  { key: 'christmas', words: 'rise over Christmas', value: 1.35, unit: '%', source: 'turicchi-2020' },
  {
    key: 'glycogen-water',
    words: 'water stored with glycogen, at least',
    value: 3,
    unit: 'kg per kg',
    source: 'fernandez-elias-2015',
  },
  {
    key: 'refeed-after-show',
    words: 'rise within days of eating more after a show, almost all water',
    value: 2,
    unit: 'kg',
    source: 'trexler-2017',
  },
  {
    key: 'dial-scale-offset',
    words: 'one sd of the zero offset of dial scales',
    value: 1.9,
    unit: 'kg',
    source: 'yorkin-2013',
  },
  {
    key: 'menses',
    words: 'water at the onset of menses (from memory)',
    value: 0.5,
    unit: 'kg',
    source: 'common-practice',
  },
  {
    key: 'creatine',
    words: 'water of a creatine loading, 1 to 2 kg (from memory)',
    value: 1.5,
    unit: 'kg',
    source: 'common-practice',
  },
  {
    key: 'low-residue',
    words: 'drop of gut content on a low-residue diet, 0.3 to 1 kg (from memory)',
    value: 0.6,
    unit: 'kg',
    source: 'common-practice',
  },
];
