import type { Percent } from '#core/units/quantities.ts';

/** Load that allows so many repetitions and no more, percent of the one-repetition maximum. */
export interface RepetitionPercent {
  readonly reps: number;
  readonly percent: Percent;
  /** Another print of the same table, where it differs. */
  readonly otherPrint?: Percent;
}

/** Source key: baechle-2008. From 11 repetitions on from memory; prints differ. */
export const repetitionPercents: readonly RepetitionPercent[] = [
  { reps: 1, percent: 100 },
  { reps: 2, percent: 95 },
  { reps: 3, percent: 93 },
  { reps: 4, percent: 90 },
  { reps: 5, percent: 87 },
  { reps: 6, percent: 85 },
  { reps: 7, percent: 83 },
  { reps: 8, percent: 80 },
  { reps: 9, percent: 77 },
  { reps: 10, percent: 75 },
  { reps: 11, percent: 70, otherPrint: 73 },
  { reps: 12, percent: 67, otherPrint: 70 },
  { reps: 15, percent: 65 },
];
