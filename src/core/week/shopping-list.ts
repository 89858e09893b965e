import type { Grams } from '../units/quantities.ts';
import { addDays } from '../units/civil-date.ts';

/** Grams of a raw food that a day needs. */
export interface Need {
  readonly food: string;
  readonly grams: Grams;
  readonly date: string;
}

/** What is known of a food when it is bought. */
export interface Ware {
  readonly name: string;
  readonly aisle: string;
  readonly packG?: Grams;
  readonly priceCents?: number;
  /** Days it keeps at home before it is used; absent: longer than any week. */
  readonly keepsDays?: number;
  /** In stock and fit to be used. */
  readonly haveG: Grams;
}

export interface ShoppingLine {
  readonly food: string;
  readonly name: string;
  readonly aisle: string;
  readonly needG: Grams;
  readonly haveG: Grams;
  /** What is missing, before packs. */
  readonly missingG: Grams;
  /** What to buy: missing grams rounded up to whole packs. */
  readonly buyG: Grams;
  readonly packs?: number;
  readonly packG?: Grams;
  readonly costCents?: number;
  /** The first day it is needed that the stock does not cover. */
  readonly neededBy: string;
  /** Bought earlier it would be out before it is used. */
  readonly notBefore?: string;
}

/** Without a pack size the list rounds to what a counter weighs out. Common practice, no source. */
const COUNTER_STEP_G = 10;
/** Less than this is the scale's own error, not a purchase. */
const CRUMBS_G = 2;

/** What is missing for the days, by aisle, in whole packs (WEK-06). What a day needs is taken from the stock in order of the days. */
export function shoppingList(
  needs: readonly Need[],
  wareOf: (food: string) => Ware | undefined,
): readonly ShoppingLine[] {
  const byFood = new Map<string, Need[]>();
  for (const need of [...needs].sort((a, b) => (a.date < b.date ? -1 : 1))) {
    byFood.set(need.food, [...(byFood.get(need.food) ?? []), need]);
  }
  return [...byFood]
    .flatMap(([food, own]) => {
      const ware = wareOf(food);
      const line = ware && lineOf(food, own, ware);
      return line ? [line] : [];
    })
    .sort((a, b) => byText(a.aisle, b.aisle) || byText(a.name, b.name));
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function lineOf(food: string, needs: readonly Need[], ware: Ware): ShoppingLine | undefined {
  const needG = needs.reduce((sum, need) => sum + need.grams, 0);
  const missingG = needG - ware.haveG;
  if (missingG <= CRUMBS_G) return undefined;
  const first = firstUncovered(needs, ware.haveG);
  const last = needs.at(-1)?.date ?? first;
  const packs = ware.packG === undefined ? undefined : Math.ceil(missingG / ware.packG - 1e-9);
  const buyG =
    packs === undefined || ware.packG === undefined
      ? Math.ceil(missingG / COUNTER_STEP_G - 1e-9) * COUNTER_STEP_G
      : packs * ware.packG;
  return {
    food,
    name: ware.name,
    aisle: ware.aisle,
    needG,
    haveG: ware.haveG,
    missingG,
    buyG,
    ...(packs !== undefined && ware.packG !== undefined && { packs, packG: ware.packG }),
    ...(packs !== undefined && ware.priceCents !== undefined && { costCents: packs * ware.priceCents }),
    neededBy: first,
    ...(ware.keepsDays !== undefined && { notBefore: addDays(last, 1 - ware.keepsDays) }),
  };
}

function firstUncovered(needs: readonly Need[], haveG: Grams): string {
  let left = haveG;
  for (const need of needs) {
    left -= need.grams;
    if (left < -1e-9) return need.date;
  }
  return needs.at(-1)?.date ?? '';
}
