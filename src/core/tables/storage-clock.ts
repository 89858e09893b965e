import type { SourceKey } from './sources.ts';
import { cellNumber, cellWord, readTextTable } from './text-table.ts';

/** What a food is to the clock of food safety. */
export const storageClasses = [
  'raw-mince',
  'raw-poultry-mince',
  'raw-meat',
  'raw-poultry',
  'raw-fish',
  'raw-fatty-fish',
  'raw-shellfish',
  'egg-in-shell',
  'egg-out-of-shell',
  'egg-pasteurised',
  'egg-hard-cooked',
  'cooked-meat',
  'cooked-fish',
  'cooked-rice',
  'cooked-starch',
  'cooked-dish',
  'deli-meat',
  'canned',
  'fresh-dairy',
  'hard-cheese',
  'fresh-soya',
  'fresh-produce',
  'frozen-produce',
  'bread',
  'butter',
  'oil',
  'dry-rice',
  'dry-starch',
  'dry-pulse',
  'dry',
  'condiment',
  'drink',
] as const;
export type StorageClass = (typeof storageClasses)[number];

export interface StorageRule {
  readonly storage: StorageClass;
  /** Where it is kept by habit. */
  readonly place: 'fridge' | 'freezer' | 'cupboard';
  /** Days in the fridge: from the first on it should be eaten next, after the second it is out. Absent: no clock. */
  readonly fridgeDays?: { readonly first: number; readonly last: number };
  /** Past its days it is unsafe, or only no longer good. */
  readonly concern: 'safety' | 'quality';
  /** Months in the freezer that keep it good; frozen food stays safe without end. Absent: not for freezing, or not known. */
  readonly freezerMonths?: number;
  /** Whether minutes at room temperature count against it. */
  readonly countsMinutesOut: boolean;
  readonly source: SourceKey;
}

/**
 * Columns: class | habit place | first, last day in the fridge | concern | months frozen | minutes out count | source.
 * The lower of published ranges of frozen months. Opened tins and milk: from the day they are opened.
 */
const rules = `
raw-mince | fridge | 1 2 | safety | 3 | yes | cold-storage-chart
raw-poultry-mince | fridge | 1 2 | safety | 3 | yes | cold-storage-chart
raw-meat | fridge | 3 5 | safety | 4 | yes | cold-storage-chart
raw-poultry | fridge | 1 2 | safety | 9 | yes | cold-storage-chart
raw-fish | fridge | 1 2 | safety | 4 | yes | cold-storage-chart
raw-fatty-fish | fridge | 1 2 | safety | 2 | yes | cold-storage-chart
raw-shellfish | fridge | 1 2 | safety | 3 | yes | common-practice
egg-in-shell | fridge | 21 35 | safety | - | yes | cold-storage-chart
egg-out-of-shell | fridge | 2 4 | safety | 12 | yes | cold-storage-chart
egg-pasteurised | fridge | 2 3 | safety | - | yes | cold-storage-chart
egg-hard-cooked | fridge | 5 7 | safety | - | yes | cold-storage-chart
cooked-meat | fridge | 3 4 | safety | 2 | yes | cold-storage-chart
cooked-fish | fridge | 3 4 | safety | 3 | yes | cold-storage-chart
cooked-rice | fridge | 3 4 | safety | 2 | yes | cold-storage-chart
cooked-starch | fridge | 3 4 | safety | 2 | yes | cold-storage-chart
cooked-dish | fridge | 3 4 | safety | 2 | yes | cold-storage-chart
deli-meat | fridge | 3 5 | safety | 1 | yes | cold-storage-chart
canned | cupboard | 3 4 | safety | 2 | yes | common-practice
fresh-dairy | fridge | 5 7 | safety | - | yes | common-practice
hard-cheese | fridge | 21 28 | quality | - | no | common-practice
fresh-soya | fridge | 3 5 | safety | 3 | yes | common-practice
fresh-produce | fridge | 5 10 | quality | - | no | common-practice
frozen-produce | freezer | 1 2 | quality | 8 | no | common-practice
bread | cupboard | 5 7 | quality | 3 | no | common-practice
butter | fridge | 30 60 | quality | 6 | no | common-practice
oil | cupboard | - | quality | - | no | common-practice
dry-rice | cupboard | - | quality | - | no | common-practice
dry-starch | cupboard | - | quality | - | no | common-practice
dry-pulse | cupboard | - | quality | - | no | common-practice
dry | cupboard | - | quality | - | no | common-practice
condiment | cupboard | - | quality | - | no | common-practice
drink | cupboard | - | quality | - | no | common-practice
`;

export const storageRules: readonly StorageRule[] = readTextTable(rules, 7).map((cells) => {
  const [storage, place, days, concern, months, counts, source] = cells;
  const [first, last] = (days ?? '').split(' ').map(cellNumber);
  const freezerMonths = cellNumber(months);
  return {
    storage: cellWord(storage, storageClasses),
    place: cellWord(place, ['fridge', 'freezer', 'cupboard']),
    ...(first !== undefined && last !== undefined && { fridgeDays: { first, last } }),
    concern: cellWord(concern, ['safety', 'quality']),
    ...(freezerMonths !== undefined && { freezerMonths }),
    countsMinutesOut: cellWord(counts, ['yes', 'no']) === 'yes',
    source: cellWord(source, ['cold-storage-chart', 'common-practice']),
  };
});

const byClass = new Map(storageRules.map((rule) => [rule.storage, rule]));

/** The storage rule of a class. */
export function storageRule(storage: StorageClass): StorageRule {
  const rule = byClass.get(storage);
  if (!rule) throw new RangeError(`no storage rule for ${storage}`);
  return rule;
}

/** Is the text a storage class? */
export function isStorageClass(text: string): text is StorageClass {
  return storageClasses.some((known) => known === text);
}

/**
 * Cooked rice: spores of Bacillus cereus survive boiling and their toxin survives reheating. One agency says a day,
 * another the general leftover rule; the stricter one stands unless the athlete chooses the other.
 */
export const ricePolicies = {
  strict: { hours: 24, putAwayWithinMinutes: 60, source: 'fsa-rice' },
  general: { hours: 96, putAwayWithinMinutes: 120, source: 'cold-storage-chart' },
} as const satisfies Record<string, { hours: number; putAwayWithinMinutes: number; source: SourceKey }>;
export type RicePolicy = keyof typeof ricePolicies;

/** Minutes out of the fridge add up to at most this; fewer above 32 C (90 F). */
export const minutesOutLimits = { usual: 120, hot: 60, source: 'cold-storage-chart' } as const;
