import { shelfLimit } from '../kitchen/shelf-life.ts';
import { storageRule } from '../tables/storage-clock.ts';
import type { KitchenNow } from './kitchen-now.ts';

/** Days that a raw food keeps at home before it is cooked; undefined: longer than any week, or the freezer takes it. */
export function keepsRawDays(kitchen: KitchenNow, food: string): number | undefined {
  const known = kitchen.catalogue.food(food);
  if (!known) return undefined;
  const rule = storageRule(known.storage);
  const { hours, pausedIn } = shelfLimit(known.storage, kitchen.catalogue.rice);
  if (hours === undefined || rule.concern !== 'safety' || pausedIn.includes('cupboard')) return undefined;
  return Math.max(1, Math.floor(hours / 24));
}
