import type { SourceKey } from '#core/tables/sources.ts';
import type { UrgentValue } from '#core/tables/urgent-values.ts';
import type { ReadValue } from './read-value.ts';

/** The parts a read panel is made of; a face shows them, the command line writes them flat. */
export type Flag = 'low' | 'in' | 'high' | 'seek care now';
export type Position = 'low' | 'in' | 'high';

export interface UsedInterval {
  /** In the unit of the value beside it. */
  readonly low?: number;
  readonly high?: number;
  readonly own: boolean;
  readonly source: string;
  readonly note?: string;
}

export interface Change {
  readonly since: string;
  readonly from: { readonly value: number; readonly unit: string };
  readonly percent: number;
  readonly rcvPercent: number;
  readonly real: boolean;
  /** Limits that allow for skew: a rise may be larger before it counts. */
  readonly logUpPercent: number;
  readonly logDownPercent: number;
}

export interface Note {
  readonly code: string;
  readonly words: string;
  readonly source?: SourceKey;
}

export interface PanelResult {
  readonly read: ReadValue;
  readonly interval?: UsedInterval;
  /** Where it stands in the interval; absent where that is not certain or not judged. */
  readonly position?: Position;
  readonly urgent?: UrgentValue;
  readonly flag?: Flag;
  readonly change?: Change;
  readonly notes: readonly Note[];
}

export interface DerivedValue {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly formula: string;
  readonly source: SourceKey;
  readonly notes: readonly string[];
}

/** A value that could not, or must not, be computed. */
export interface WithheldValue {
  readonly key: string;
  readonly name: string;
  readonly reason: string;
}

/** Said once for the whole panel; urgent ones stand first. */
export interface PanelCaution extends Note {
  readonly urgent: boolean;
}

/** "AST 90 U/L": how a sentence names a value. */
export function sayValue(read: Pick<ReadValue, 'name' | 'value' | 'unit' | 'comparator'>): string {
  return `${read.name} ${read.comparator ?? ''}${read.value} ${sayUnit(read.unit)}`;
}

/** A unit as people write it: UCUM's brackets and stars are for machines. */
export function sayUnit(unit: string): string {
  return unit.replace('{1.73_m2}', '1.73 m2').replace('10*', '10^').replace('[IU]', 'IU').replace(/^1$/, '');
}
