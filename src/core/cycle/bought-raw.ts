import type { Ledger } from '../journal/ledger.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { BoughtRaw } from '../week/week-request.ts';
import { keepsRawDays } from './keeps-raw-days.ts';
import type { KitchenNow } from './kitchen-now.ts';
import { pansOf } from './pans-ahead.ts';

/** So much of a purchase must still be there to be worth a pan. Common practice, no source. */
const STILL_THERE = 0.5;

/** Raw food that spoils, bought for pans of the plan that stands and not cooked yet: a new plan does not throw it away (WEK-11). */
export function boughtRaw(ledger: Ledger, kitchen: KitchenNow, today: string): BoughtRaw[] {
  const adopted = ledger.latest('week-adopted');
  if (!adopted) return [];
  const open = pansOf(ledger, kitchen.catalogue, adopted).filter(({ done }) => done === undefined);
  const bought = ledger.of('stock-bought').filter(({ data }) => data.week === adopted.data.week);
  return bought.flatMap(({ data: { food, grams }, day }): BoughtRaw[] => {
    const pans = open.filter(({ ingredients }) => ingredients.some((one) => one.food === food));
    const keeps = keepsRawDays(kitchen, food);
    const there = kitchen.available.get(food)?.readyG ?? 0;
    if (keeps === undefined || pans.length === 0 || there < STILL_THERE * grams) return [];
    const lastDay = daysBetween(today, addDays(day, keeps - 1)) - 1;
    const portions = Math.max(...pans.map((pan) => pan.portions));
    return lastDay < 0 ? [] : [{ food, recipes: pans.map(({ recipe }) => recipe), lastDay, portions }];
  });
}
