import * as v from 'valibot';
import type { SheetMeal } from '#core/cycle/day-sheet.ts';
import type { PlateItem } from '#core/journal/kinds/plate-item.ts';
import type { Grams } from '#core/units/quantities.ts';

/** How far the weighing out of one meal has come; kept while it is going on, so that a killed tab loses nothing. */
export const weighDraft = v.strictObject({
  /** Grams as really weighed, by place in the meal; a place not yet weighed is absent. */
  weighed: v.record(v.string(), v.number()),
  /** Which item is on the scale. */
  at: v.number(),
  /** One bowl on one scale shows the running total; else the scale is tared for each item. */
  show: v.picklist(['total', 'item']),
});
export type WeighDraft = v.InferOutput<typeof weighDraft>;

export const emptyWeigh: WeighDraft = { weighed: {}, at: 0, show: 'total' };

export interface WeighStep {
  readonly index: number;
  readonly name: string;
  readonly plannedG: Grams;
  readonly weighedG?: Grams;
}

/** The meal's items that have a weight, in the order they go into the bowl. */
export function weighSteps(meal: SheetMeal, typed: WeighDraft): readonly WeighStep[] {
  return meal.items.flatMap((item, index) => {
    if (item.grams === undefined) return [];
    const weighedG = typed.weighed[String(index)];
    return [{ index, name: item.name, plannedG: item.grams, ...(weighedG !== undefined && { weighedG }) }];
  });
}

/** What the scale shows before this step's food goes in: everything weighed so far. */
export function inTheBowlG(steps: readonly WeighStep[], upTo: number): Grams {
  return steps.slice(0, upTo).reduce((sum, step) => sum + (step.weighedG ?? step.plannedG), 0);
}

/** The meal as weighed: planned items with the grams the scale really showed. */
export function weighedItems(meal: SheetMeal, typed: WeighDraft): PlateItem[] {
  return meal.planned.items.map((item, index) => {
    const grams = typed.weighed[String(index)];
    return grams === undefined ? item : { ...item, grams };
  });
}
