/**
 * Drug-free preparations with measured fat and lean, restated from the publications. Masses kg. Energies of the change
 * are our own arithmetic with 39.5 MJ per kg of fat and 7.6 MJ per kg of lean (hall-2008).
 */
export interface PublishedPreparation {
  readonly source: string;
  readonly sex: 'male' | 'female';
  readonly heightCm: number;
  readonly age: number;
  readonly method: string;
  /** Measured bodies, by day from the first one. */
  readonly measured: readonly { readonly day: number; readonly fatKg: number; readonly leanKg: number }[];
  /** Energy drawn from the stores, mean kcal a day over the whole. */
  readonly deficitKcal: number;
  /** Lean share of the loss. */
  readonly leanShare: number;
}

export const publishedPreparations: readonly PublishedPreparation[] = [
  {
    source: 'Michailidis 2025, Appl Sci 15:79 (height from memory)',
    sex: 'male',
    heightCm: 178,
    age: 27,
    method: 'dxa',
    measured: [
      { day: 0, fatKg: 17.9, leanKg: 69.9 },
      { day: 91, fatKg: 13.1, leanKg: 68.2 },
      { day: 210, fatKg: 4.2, leanKg: 66.7 },
    ],
    deficitKcal: 644,
    leanShare: 0.19,
  },
  {
    source: 'Kistler 2014, Int J Sport Nutr Exerc Metab 24:694 (height from memory)',
    sex: 'male',
    heightCm: 178,
    age: 26,
    method: 'dxa',
    measured: [
      { day: 0, fatKg: 15.5, leanKg: 73.1 },
      { day: 182, fatKg: 5.42, leanKg: 67.88 },
    ],
    deficitKcal: 575,
    leanShare: 0.34,
  },
  {
    source: 'Robinson 2015, J Int Soc Sports Nutr 12:20 (start of fat and height from memory)',
    sex: 'male',
    heightCm: 180,
    age: 21,
    method: 'skinfold',
    measured: [
      { day: 0, fatKg: 13, leanKg: 78 },
      { day: 98, fatKg: 6.3, leanKg: 73 },
    ],
    deficitKcal: 738,
    leanShare: 0.43,
  },
  {
    source: 'Halliday 2016, Nutrients 8:740 (height from memory)',
    sex: 'female',
    heightCm: 163,
    age: 26,
    method: 'dxa',
    measured: [
      { day: 0, fatKg: 8.29, leanKg: 46.61 },
      { day: 140, fatKg: 4.28, leanKg: 45.52 },
    ],
    deficitKcal: 284,
    leanShare: 0.21,
  },
];
