import type { SourceKey } from '../tables/sources.ts';
import { reheatTo } from '../tables/safe-temperatures.ts';
import { ricePolicies, type RicePolicy, type StorageClass } from '../tables/storage-clock.ts';
import { shelfLimit, type ShelfLimit } from './shelf-life.ts';

/** A sentence of the kitchen with where it comes from. */
export interface Hint {
  readonly text: string;
  readonly source: SourceKey;
}

export interface BatchStorage {
  /** The class that decides, the shortest of the parts. */
  readonly storage: StorageClass;
  readonly limit: ShelfLimit;
  /** Names of the ingredients that set it; empty where every part keeps as long. */
  readonly decidedBy: readonly string[];
  readonly hints: readonly Hint[];
}

/** What a class becomes once it has been cooked. */
const cooked: Partial<Record<StorageClass, StorageClass>> = {
  'raw-mince': 'cooked-meat',
  'raw-poultry-mince': 'cooked-meat',
  'raw-meat': 'cooked-meat',
  'raw-poultry': 'cooked-meat',
  'cooked-meat': 'cooked-meat',
  'deli-meat': 'cooked-meat',
  'raw-fish': 'cooked-fish',
  'raw-fatty-fish': 'cooked-fish',
  'raw-shellfish': 'cooked-fish',
  'cooked-fish': 'cooked-fish',
  'dry-rice': 'cooked-rice',
  'cooked-rice': 'cooked-rice',
  'dry-starch': 'cooked-starch',
  'cooked-starch': 'cooked-starch',
};

/**
 * How long a cooked pan keeps: the shortest limit of its parts (BAT-30, BAT-31), counted from the moment it was cooked and with
 * the freezer left out.
 */
export function batchStorage(
  parts: readonly { readonly name: string; readonly storage: StorageClass }[],
  rice: RicePolicy,
): BatchStorage {
  const limits = parts.map((part) => {
    const storage = cooked[part.storage] ?? 'cooked-dish';
    return { name: part.name, storage, limit: shelfLimit(storage, rice) };
  });
  const hoursOf = (limit: ShelfLimit) => limit.hours ?? Number.POSITIVE_INFINITY;
  const shortest = limits.reduce<(typeof limits)[number] | undefined>(
    (least, one) => (least === undefined || hoursOf(one.limit) < hoursOf(least.limit) ? one : least),
    undefined,
  );
  const storage = shortest?.storage ?? 'cooked-dish';
  const limit = shortest?.limit ?? shelfLimit('cooked-dish', rice);
  const all = limits.every((one) => hoursOf(one.limit) === hoursOf(limit));
  const decidedBy = all
    ? []
    : limits.filter((one) => hoursOf(one.limit) === hoursOf(limit)).map((one) => one.name);
  return { storage, limit, decidedBy: [...new Set(decidedBy)], hints: hintsFor(storage, rice) };
}

function hintsFor(storage: StorageClass, rice: RicePolicy): Hint[] {
  const isRice = storage === 'cooked-rice';
  const minutes = isRice ? ricePolicies[rice].putAwayWithinMinutes : 120;
  const hints: Hint[] = [
    {
      text: `Cool it in shallow containers, at most 5 cm deep, and put it in the fridge within ${minutes} minutes; one hour above 32 °C.`,
      source: isRice ? ricePolicies[rice].source : 'cold-storage-chart',
    },
    {
      text: `Reheat to ${reheatTo.minimumC ?? 74} °C all the way through${isRice ? ', once only' : ''}.`,
      source: isRice ? 'fsa-rice' : reheatTo.source,
    },
    {
      text: 'Freeze what will not be eaten in time: freezing stops the clock, thawing in the fridge starts it again. Smell and look prove nothing.',
      source: 'cold-storage-chart',
    },
  ];
  if (isRice || storage === 'cooked-starch') {
    hints.push({
      text: 'Spores in rice and other starches survive boiling and make a toxin that reheating leaves in place: cooling fast is what protects.',
      source: 'fsa-rice',
    });
  }
  return hints;
}
