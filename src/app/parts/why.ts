import { signal } from '@preact/signals';

/** One number that went into a computed one. */
export interface WhyInput {
  readonly name: string;
  readonly value: string;
  /** Where it came from: "weighed today 07:10", "label". */
  readonly from?: string | undefined;
}

/** The reasons of one computed number, in plain words. */
export interface Why {
  /** What is asked: "Protein of meal 3". */
  readonly title: string;
  readonly sentences: readonly string[];
  /** Written out with the symbols the inputs name. */
  readonly formula?: string | undefined;
  readonly inputs?: readonly WhyInput[] | undefined;
  /** Citation of the publication, rule or table. */
  readonly source?: string | readonly string[] | undefined;
  /** How sure it is: "90 % of the time within 1.2 kg". */
  readonly uncertainty?: string | undefined;
}

/** The reasons now shown, if any. The shell draws them (why-sheet.tsx). */
export const shownWhy = signal<Why | undefined>(undefined);

/** Shows the reasons of a number: a sheet from below on the phone, a note in the margin on the desk. */
export function openWhy(why: Why): void {
  shownWhy.value = why;
}

export function closeWhy(): void {
  shownWhy.value = undefined;
}
