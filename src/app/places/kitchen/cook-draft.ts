import * as v from 'valibot';
import type { Catalogue } from '#core/kitchen/catalogue.ts';
import type { PanByFood } from '#core/kitchen/cooked-batch.ts';
import { weighBatch, type PortionWish, type WeighedBatch } from '#core/kitchen/weigh-batch.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { toGrams, type MassUnit } from '#core/units/mass.ts';
import type { Grams } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';

const amountUnit = v.picklist(['g', 'oz', 'lb', 'kg']);

/** One raw food as it is being typed. */
export const ingredientLine = v.strictObject({
  food: v.string(),
  amount: v.optional(v.number()),
  unit: amountUnit,
  form: v.optional(v.string()),
});

/** A pan as it is being typed, from the first raw weight to the packed portions. */
export const cookDraft = v.strictObject({
  name: v.string(),
  /** The recipe it is cooked by. */
  recipe: v.optional(v.string()),
  ingredients: v.array(ingredientLine),
  container: v.optional(v.string()),
  containerG: v.optional(v.number()),
  cookedGrossG: v.optional(v.number()),
  drainedFatG: v.optional(v.number()),
  fromStock: v.boolean(),
  split: v.picklist(['equal', 'given', 'none']),
  count: v.number(),
  weightsG: v.array(v.number()),
  place: v.picklist(['fridge', 'freezer']),
});
export type CookDraft = v.InferOutput<typeof cookDraft>;

export const emptyCook: CookDraft = {
  name: '',
  ingredients: [],
  fromStock: true,
  split: 'equal',
  count: 3,
  weightsG: [],
  place: 'fridge',
};

/** What the pan comes to as far as it is typed. */
export interface CookReading {
  readonly pan: PanByFood;
  readonly batch: WeighedBatch;
}

/** Reads the whole pan. The first thing missing or impossible is answered with its field (BAT-10 to BAT-20). */
export function readCook(typed: CookDraft, catalogue: Catalogue, cookedAtMs: number): Outcome<CookReading> {
  const pan = panOf(typed);
  if (!pan.ok) return pan;
  const batch = weighBatch(catalogue, { ...pan.value, cookedAtMs, portions: wishOf(typed), scaleStepG: 1 });
  return batch.ok ? answered({ pan: pan.value, batch: batch.value }) : batch;
}

function wishOf(typed: CookDraft): PortionWish {
  switch (typed.split) {
    case 'equal':
      return { as: 'equal', count: typed.count };
    case 'given':
      return { as: 'given', weightsG: typed.weightsG };
    case 'none':
      return { as: 'stay' };
  }
}

function panOf(typed: CookDraft): Outcome<PanByFood> {
  if (typed.ingredients.length === 0) {
    return refused(
      'kitchen/no-ingredients',
      'ingredients',
      'Nothing is in the pan yet.',
      'Add what goes in raw, with its weight.',
    );
  }
  const ingredients: { food: string; rawG: Grams; form?: string | undefined }[] = [];
  for (const [index, line] of typed.ingredients.entries()) {
    if (line.amount === undefined || line.amount <= 0) {
      return refused(
        'kitchen/no-raw-weight',
        `ingredients.${index}.amount`,
        'One ingredient has no raw weight.',
        'Weigh it, or take it off the list.',
      );
    }
    ingredients.push({
      food: line.food,
      rawG: rawGrams(line.amount, line.unit),
      ...(line.form !== undefined && { form: line.form }),
    });
  }
  if (typed.cookedGrossG === undefined) {
    return refused(
      'kitchen/not-weighed-cooked',
      'cookedGrossG',
      'The cooked pan is not on the scale yet.',
      'Weigh it full, container and all.',
    );
  }
  const { containerG = 0, cookedGrossG, drainedFatG } = typed;
  return answered({
    ingredients,
    containerG,
    cookedGrossG,
    ...(drainedFatG !== undefined && { drainedFatG }),
  });
}

/** Grams of an amount in kitchen units, to a hundredth. */
export function rawGrams(amount: number, unit: MassUnit): Grams {
  return roundTo(toGrams(amount, unit), 2);
}
