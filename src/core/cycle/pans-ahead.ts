import type { Fact, Ledger } from '../journal/ledger.ts';
import type { Catalogue } from '../kitchen/catalogue.ts';
import { addDays } from '../units/civil-date.ts';
import { panToCook, type PanToCook } from '../week/cook-plan.ts';

export type Adopted = Fact<'week-adopted'>;
export type AdoptedDay = Adopted['data']['days'][number];

export interface PanAhead extends PanToCook {
  /** The batch it became, once it is cooked. */
  readonly done?: string;
}

/** The pans of an adopted week, with what was cooked since. */
export function pansOf(ledger: Ledger, catalogue: Catalogue, adopted: Adopted): readonly PanAhead[] {
  const nameOf = (food: string) => catalogue.food(food)?.name ?? food;
  return adopted.data.pans.flatMap((pan): PanAhead[] => {
    const recipe = catalogue.recipe(pan.recipe);
    if (!recipe) return [];
    const done = cookedAs(ledger, adopted, pan);
    return [{ ...panToCook(pan, recipe, adopted.data.days, nameOf), ...(done !== undefined && { done }) }];
  });
}

/** The batch cooked by this recipe about that day, since the week was adopted. */
function cookedAs(
  ledger: Ledger,
  adopted: Adopted,
  pan: { readonly date: string; readonly recipe: string },
): string | undefined {
  const near = [addDays(pan.date, -1), pan.date, addDays(pan.date, 1)];
  return ledger
    .of('batch-cooked')
    .find(
      ({ data, day, entry }) =>
        data.recipe === pan.recipe && near.includes(day) && entry.stamp > adopted.entry.stamp,
    )?.data.batch;
}
