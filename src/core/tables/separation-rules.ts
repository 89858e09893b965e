import type { Minutes } from '../units/quantities.ts';
import type { SourceKey } from './sources.ts';

/**
 * Pairs that must not meet in the gut. Each side is a nutrient key, a substance key, or one of "meal", "coffee",
 * "tea", "any medicine". Where a source gives a range, the longer end stands.
 */
export interface SeparationRule {
  readonly a: string;
  readonly b: string;
  /** Least time from a to a later b. */
  readonly aThenBMinutes: Minutes;
  /** Least time from b to a later a. */
  readonly bThenAMinutes: Minutes;
  readonly words: string;
  readonly source: SourceKey;
  readonly evidence: 'seen' | 'from memory';
}

const minerals = ['calcium', 'iron', 'magnesium', 'zinc'] as const;

function eitherSide(
  a: string,
  b: string,
  hours: number,
  words: string,
  source: SourceKey,
  evidence: SeparationRule['evidence'],
): SeparationRule {
  return { a, b, aThenBMinutes: hours * 60, bThenAMinutes: hours * 60, words, source, evidence };
}

const levothyroxine = ['calcium', 'iron', 'antacid', 'sucralfate', 'simethicone', 'bileAcidBinder'].map((b) =>
  eitherSide('levothyroxine', b, 4, 'blocks the uptake of levothyroxine', 'levothyroxine-label', 'seen'),
);

export const separationRules: readonly SeparationRule[] = [
  ...levothyroxine,
  eitherSide(
    'levothyroxine',
    'magnesium',
    4,
    'blocks the uptake of levothyroxine',
    'levothyroxine-label',
    'from memory',
  ),
  {
    a: 'levothyroxine',
    b: 'meal',
    aThenBMinutes: 60,
    bThenAMinutes: 240,
    words: 'food lowers the uptake of levothyroxine',
    source: 'levothyroxine-label',
    evidence: 'from memory',
  },
  {
    a: 'levothyroxine',
    b: 'coffee',
    aThenBMinutes: 60,
    bThenAMinutes: 240,
    words: 'coffee lowers the uptake of levothyroxine',
    source: 'levothyroxine-label',
    evidence: 'from memory',
  },
  eitherSide('iron', 'calcium', 2, 'calcium blocks the uptake of iron', 'nih-ods', 'from memory'),
  eitherSide('iron', 'tea', 2, 'tea blocks the uptake of iron', 'nih-ods', 'from memory'),
  eitherSide('iron', 'coffee', 2, 'coffee blocks the uptake of iron', 'nih-ods', 'from memory'),
  ...minerals.map(
    (b): SeparationRule => ({
      a: 'quinolone',
      b,
      aThenBMinutes: 120,
      bThenAMinutes: 360,
      words: 'minerals bind the antibiotic',
      source: 'drug-labels',
      evidence: 'from memory',
    }),
  ),
  ...minerals.map((b) =>
    eitherSide('tetracycline', b, 3, 'minerals bind the antibiotic', 'drug-labels', 'from memory'),
  ),
  ...minerals.map(
    (b): SeparationRule => ({
      a: 'bisphosphonate',
      b,
      aThenBMinutes: 60,
      bThenAMinutes: 120,
      words: 'minerals keep the bisphosphonate from being taken up',
      source: 'drug-labels',
      evidence: 'from memory',
    }),
  ),
  {
    a: 'bisphosphonate',
    b: 'meal',
    aThenBMinutes: 60,
    bThenAMinutes: 120,
    words: 'food keeps the bisphosphonate from being taken up',
    source: 'drug-labels',
    evidence: 'from memory',
  },
  eitherSide('tudca', 'bileAcidBinder', 5, 'the binder blocks it', 'tudca-label', 'from memory'),
  eitherSide('tudca', 'antacid', 2, 'aluminium blocks it', 'tudca-label', 'from memory'),
  eitherSide(
    'fibre',
    'any medicine',
    2,
    'fibre keeps medicines from being taken up',
    'drug-labels',
    'from memory',
  ),
];

/** Most elemental calcium that is taken up well in one dose, mg. */
export const CALCIUM_PER_DOSE_MAX_MG = 500;

/** Names of drinks that count as coffee or tea in the rules above. */
export const drinkClasses: Readonly<Record<'coffee' | 'tea', readonly string[]>> = {
  coffee: ['coffee', 'espresso', 'cappuccino', 'latte', 'americano', 'cold brew'],
  tea: ['tea', 'black tea', 'green tea', 'matcha', 'iced tea'],
};
