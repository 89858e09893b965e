import { answered, type Outcome } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import { batchStorage, type BatchStorage } from './batch-storage.ts';
import type { Catalogue } from './catalogue.ts';
import { resolvePan, type PanByFood } from './cooked-batch.ts';
import { figure, listed } from './figure.ts';
import { balancePan, type PanBalance } from './mass-balance.ts';
import { nutrientWords, scaleTotal, type NutrientTotal } from './nutrients.ts';
import { splitAsGiven, splitEqually, type Split } from './split-portions.ts';

/** How the pan is to be parted; "stay" leaves it whole. */
export type PortionWish =
  | { readonly as: 'equal'; readonly count: number }
  | { readonly as: 'given'; readonly weightsG: readonly Grams[] }
  | { readonly as: 'stay' };

export interface BatchDraft extends PanByFood {
  readonly cookedAtMs: number;
  readonly portions: PortionWish;
  readonly scaleStepG: Grams;
}

export interface WeighedPortion {
  readonly grams: Grams;
  readonly nutrients: NutrientTotal;
  readonly raw: readonly { readonly food: string; readonly name: string; readonly grams: Grams }[];
}

export interface WeighedBatch {
  readonly balance: PanBalance;
  readonly portions: readonly WeighedPortion[];
  /** What stays in the pan. */
  readonly panG: Grams;
  readonly storage: BatchStorage;
  /** When it is out if it goes into the fridge and stays there. */
  readonly useByMs?: number;
  readonly why: readonly string[];
}

const HOUR_MS = 3_600_000;

/** The pan as it is being entered: foods by id, portions that may leave a rest, how long it keeps (BAT-10 to BAT-36). */
export function weighBatch(catalogue: Catalogue, draft: BatchDraft): Outcome<WeighedBatch> {
  const resolved = resolvePan(draft, (id) => catalogue.food(id, draft.cookedAtMs));
  if (!resolved.ok) return resolved;
  const balance = balancePan(resolved.value.pan);
  if (!balance.ok) return balance;
  const split = splitAsWished(balance.value.cookedG, draft);
  if (!split.ok) return split;
  const { foods } = resolved.value;
  const storage = batchStorage(foods, catalogue.rice);
  const portions = split.value.portionsG.map((grams) => {
    const share = grams / balance.value.cookedG;
    return {
      grams,
      nutrients: scaleTotal(balance.value.total, share),
      raw: draft.ingredients.map(({ food, rawG }, index) => ({
        food,
        name: foods[index]?.name ?? food,
        grams: rawG * share,
      })),
    };
  });
  const { hours } = storage.limit;
  return answered({
    balance: balance.value,
    portions,
    panG: Math.max(0, split.value.restG),
    storage,
    ...(hours !== undefined && { useByMs: draft.cookedAtMs + hours * HOUR_MS }),
    why: [...balance.value.why, ...lowerBounds(balance.value.total), ...storageReason(storage)],
  });
}

function splitAsWished(cookedG: Grams, { portions, scaleStepG }: BatchDraft): Outcome<Split> {
  switch (portions.as) {
    case 'equal':
      return splitEqually(cookedG, portions.count, scaleStepG);
    case 'given':
      return splitAsGiven(cookedG, portions.weightsG, scaleStepG);
    case 'stay':
      return answered({ portionsG: [], restG: cookedG });
  }
}

function lowerBounds(total: NutrientTotal): string[] {
  if (total.atLeast.length === 0) return [];
  const names = total.atLeast.map((name) => nutrientWords[name].label);
  return [`Not every ingredient states ${listed(names)}: those figures are "at least".`];
}

function storageReason(storage: BatchStorage): string[] {
  const { hours } = storage.limit;
  if (hours === undefined) return [];
  const time = hours < 48 ? `${figure(hours)} hours` : `${figure(hours / 24)} days`;
  const who = storage.decidedBy.length > 0 ? ` because of ${listed(storage.decidedBy)}` : '';
  return [`It keeps ${time} in the fridge${who}; time in the freezer does not count.`];
}
