import type { Ledger } from '../journal/ledger.ts';
import { availableFoods } from './available.ts';
import type { Catalogue } from './catalogue.ts';
import { foodIdOf } from './item-nutrients.ts';
import type { Stock } from './stock.ts';

/** How near a food is to hand: the smaller, the earlier it is offered. */
export interface Standing {
  /** 0 in stock and favourite, 1 in stock, 2 favourite, 3 eaten of late, 4 any other. */
  readonly tier: 0 | 1 | 2 | 3 | 4;
  /** How often it was eaten in the last eight weeks. */
  readonly times: number;
}

export const unknownStanding: Standing = { tier: 4, times: 0 };

const EIGHT_WEEKS_MS = 56 * 86_400_000;

/** Where each food stands when one is picked (BAT-07); foods in no way near are absent. */
export function pickingStandings(
  ledger: Ledger,
  catalogue: Catalogue,
  stock: Stock,
): ReadonlyMap<string, Standing> {
  const times = timesEaten(ledger, stock.atMs);
  const inStock = availableFoods(stock);
  const favourites = ledger
    .of('food-preferred')
    .map((fact) => fact.data.food)
    .filter((food) => catalogue.preference(food)?.favourite === true);
  const standings = new Map<string, Standing>();
  for (const id of new Set([...inStock.keys(), ...favourites, ...times.keys()])) {
    const held = inStock.get(id);
    const have = held !== undefined && held.readyG + held.frozenG > 0;
    const favourite = catalogue.preference(id)?.favourite === true;
    const eaten = times.get(id) ?? 0;
    const tier = have ? (favourite ? 0 : 1) : favourite ? 2 : eaten > 0 ? 3 : 4;
    standings.set(id, { tier, times: eaten });
  }
  return standings;
}

/** Whether a food is worth offering before anything is typed (RUN-36). */
export function isNear(standing: Standing = unknownStanding): boolean {
  return standing.tier < unknownStanding.tier;
}

/** Order of two foods that answer a search equally well. */
export function byStanding(a: Standing, b: Standing): number {
  return a.tier - b.tier || b.times - a.times;
}

function timesEaten(ledger: Ledger, atMs: number): Map<string, number> {
  const times = new Map<string, number>();
  const meals = ledger.of('meal-eaten');
  for (let index = meals.length - 1; index >= 0; index -= 1) {
    const meal = meals[index];
    if (!meal || meal.epochMs < atMs - EIGHT_WEEKS_MS) break;
    for (const item of meal.data.items) {
      const id = foodIdOf(item);
      if (id !== undefined) times.set(id, (times.get(id) ?? 0) + 1);
    }
  }
  return times;
}
