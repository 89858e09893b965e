import type { Ledger } from '../journal/ledger.ts';
import { foodIdOf } from '../kitchen/item-nutrients.ts';
import type { Grams } from '../units/quantities.ts';

/** Grams of each food that today's adopted plan still means to use: they are in stock, but not for the days after. */
export function plannedToday(ledger: Ledger, today: string): ReadonlyMap<string, Grams> {
  const of = <Kind extends 'meal-eaten' | 'meal-skipped' | 'plan-adopted'>(kind: Kind) =>
    ledger.of(kind).filter((fact) => fact.day === today);
  const gone = new Set([...of('meal-eaten'), ...of('meal-skipped')].map((fact) => fact.data.slot));
  const plan = of('plan-adopted').at(-1);
  const grams = new Map<string, Grams>();
  for (const meal of plan?.data.meals ?? []) {
    if (gone.has(meal.slot)) continue;
    for (const item of meal.items) {
      const food = foodIdOf(item);
      if (food !== undefined) grams.set(food, (grams.get(food) ?? 0) + (item.grams ?? 0));
    }
  }
  return grams;
}
