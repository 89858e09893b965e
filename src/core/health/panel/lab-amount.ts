import type { LabValue } from '#core/journal/kinds/lab-value.ts';

export type Comparator = '<' | '<=' | '>' | '>=';

/** Longest sign first: "<=" begins with "<". */
const signs: readonly Comparator[] = ['<=', '>=', '<', '>'];

/** The number of a laboratory value and, where it is a bound, which kind: the text "<0.1" is 0.1 with "<". */
export function labAmount(given: Pick<LabValue, 'value' | 'comparator'>): {
  readonly value: number;
  readonly comparator?: Comparator;
} {
  const { value, comparator } = given;
  if (typeof value === 'number') return { value, ...(comparator === undefined ? {} : { comparator }) };
  const sign = signs.find((known) => value.startsWith(known));
  return { value: Number(value.slice(sign?.length ?? 0)), ...(sign ? { comparator: sign } : {}) };
}
