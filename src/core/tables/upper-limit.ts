import type { SourceKey } from './sources.ts';

/**
 * Tolerable upper intake levels and comparable figures for adults of 19 years and more, not pregnant, per day, as the
 * US (NASEM) and the EU (EFSA) set them, side by side. An upper level is for habitual intake. What counts towards it
 * matters more than the number: food, or only what was added, or one chemical form.
 */
export type MassUnit = 'g' | 'mg' | 'ug';
export type Counted =
  /** Food, fortified food and supplements. */
  | 'all sources'
  /** Fortified food and supplements. */
  | 'added forms'
  | 'supplements only';

export interface UpperLimit {
  readonly perDay: number;
  readonly counted: Counted;
  /** Only these forms count; absent: every form. */
  readonly forms?: readonly string[];
  /** What the figure is: a level set by the body, or something that is often taken for one. */
  readonly basis: 'upper level' | 'safe level' | 'reference intake' | 'dose of concern';
  readonly year?: number;
  readonly source: SourceKey;
  readonly evidence: 'seen' | 'from memory';
  readonly words?: string;
}

export interface NutrientLimits {
  readonly key: string;
  readonly name: string;
  readonly unit: MassUnit;
  readonly us: readonly UpperLimit[];
  readonly eu: readonly UpperLimit[];
  readonly caution?: string;
}

type Extra = Partial<Pick<UpperLimit, 'forms' | 'basis' | 'year' | 'evidence' | 'words' | 'source'>>;

/** A US limit; an upper level of all sources unless said otherwise. */
export const us = (perDay: number, counted: Counted = 'all sources', extra: Extra = {}): UpperLimit => ({
  perDay,
  counted,
  basis: 'upper level',
  source: 'nasem-dri',
  evidence: 'seen',
  ...extra,
});
/** An EU limit with the year of its opinion. */
export const eu = (perDay: number, counted: Counted, year: number, extra: Extra = {}): UpperLimit => ({
  perDay,
  counted,
  basis: 'upper level',
  year,
  source: 'efsa-ul',
  evidence: 'seen',
  ...extra,
});
/** The body set no level. */
export const noLevel: readonly UpperLimit[] = [];

export function row(
  key: string,
  name: string,
  unit: MassUnit,
  usLimits: readonly UpperLimit[],
  euLimits: readonly UpperLimit[],
  caution?: string,
): NutrientLimits {
  return { key, name, unit, us: usLimits, eu: euLimits, ...(caution === undefined ? {} : { caution }) };
}
