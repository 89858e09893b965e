import type { SourceKey } from './sources.ts';

/**
 * One of the substances of supplements that are no vitamins or minerals, and medicines that matter beside them. Names are
 * compared without case and punctuation.
 */
export interface Substance {
  readonly key: string;
  readonly name: string;
  readonly alsoCalled: readonly string[];
  /**
   * planned: may stand in a regimen. medicine: its prescriber sets the times; never planned, only kept clear of.
   * refused: no dose is ever planned.
   */
  readonly stand: 'planned' | 'medicine' | 'refused';
  readonly cautions: readonly SubstanceCaution[];
  readonly inSport?: 'prohibited at all times' | 'prohibited in competition';
}

export interface SubstanceCaution {
  readonly words: string;
  readonly source: SourceKey;
  readonly evidence: 'seen' | 'from memory';
}

/** A caution whose source was read. */
export const seen = (words: string, source: SourceKey): SubstanceCaution => ({
  words,
  source,
  evidence: 'seen',
});
/** A caution recalled from memory. */
export const recalled = (words: string, source: SourceKey): SubstanceCaution => ({
  words,
  source,
  evidence: 'from memory',
});

/** A row of the substance tables: its cautions stand last. */
export type SubstanceRow = readonly [
  key: string,
  name: string,
  alsoCalled: readonly string[],
  ...cautions: SubstanceCaution[],
];
