import type { Grams, Kilocalories, Kilograms, Milligrams, Percent } from '#core/units/quantities.ts';

/** One row of the log or of the plan, as the command line's `days` has it. Absent is not known, never zero. */
export interface DayRow {
  readonly date: string;
  readonly weightKg?: Kilograms | undefined;
  readonly intake?: RowIntake | undefined;
  /** The person says that this is all that was eaten. */
  readonly confirmed?: boolean | undefined;
  readonly cardioKcal?: Kilocalories | undefined;
  readonly bodyFat?: { readonly percent: Percent; readonly method: string } | undefined;
}

export interface RowIntake {
  readonly energyKcal: Kilocalories;
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
  readonly sodiumMg?: Milligrams | undefined;
}
