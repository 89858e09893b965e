import * as v from 'valibot';
import { healthKinds } from '#core/journal/kinds/health.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { findSubstance } from '#core/health/supplements/find-substance.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

type Product = DataOf<'supplement-defined'>;

export const UNITS = healthKinds['supplement-defined'].entries.unit.options;
export const AMOUNT_UNITS = ['mg', 'ug', 'g', '[IU]', 'not said'] as const;

const line = v.strictObject({
  of: v.string(),
  form: v.string(),
  amount: v.optional(v.number()),
  unit: v.picklist(AMOUNT_UNITS),
});
export type LineDraft = v.InferOutput<typeof line>;

/** A product's label as it is being copied. */
export const productDraft = v.strictObject({
  name: v.string(),
  unit: v.picklist(UNITS),
  perUnits: v.optional(v.number()),
  lines: v.array(line),
  packUnits: v.optional(v.number()),
  batchTested: v.boolean(),
});
export type ProductDraft = v.InferOutput<typeof productDraft>;

export const emptyProduct: ProductDraft = {
  name: '',
  unit: 'capsule',
  perUnits: 1,
  lines: [],
  batchTested: false,
};

/** A product of the journal, to be corrected. */
export function draftOfProduct(product: Product): ProductDraft {
  return {
    name: product.name,
    unit: product.unit,
    perUnits: product.perUnits,
    lines: product.contents.map(({ of, form, amount, unit }) => ({
      of,
      form: form ?? '',
      ...(amount !== undefined && { amount }),
      unit: unit ?? 'not said',
    })),
    ...(product.packUnits !== undefined && { packUnits: product.packUnits }),
    batchTested: product.batchTested === true,
  };
}

/** The product as the journal keeps it; the first fault is answered with its field. */
export function readProductDraft(typed: ProductDraft, supplement: string): Outcome<Product> {
  const name = typed.name.trim();
  if (name === '')
    return refused('health/no-name', 'name', 'The product has no name.', 'Enter what you call it.');
  const { perUnits } = typed;
  if (perUnits === undefined || perUnits <= 0)
    return refused(
      'health/no-serving',
      'perUnits',
      `The label's amounts are for ${perUnits === undefined ? 'an unknown number of' : perUnits} ${typed.unit}s.`,
      'Enter for how many its amounts are printed: 1 or more. A serving of 0 says nothing.',
    );
  if (typed.lines.length === 0)
    return refused(
      'health/no-contents',
      'lines',
      'Nothing of the label is entered yet.',
      'Add what it holds, line by line; without an amount where the label gives none.',
    );
  const contents: Product['contents'] = [];
  for (const [place, { of, form, amount, unit }] of typed.lines.entries()) {
    if (unit !== 'not said' && (amount === undefined || amount < 0))
      return refused(
        'health/no-amount',
        `lines.${place}.amount`,
        `${of} has no amount.`,
        'Copy it from the label, or choose "not said" as its unit.',
      );
    contents.push({
      of,
      ...(form.trim() !== '' && { form: form.trim() }),
      ...(unit !== 'not said' && amount !== undefined && { amount, unit }),
    });
  }
  return answered({
    supplement,
    name,
    unit: typed.unit,
    perUnits,
    contents,
    ...(typed.packUnits !== undefined && typed.packUnits >= 1 && { packUnits: Math.round(typed.packUnits) }),
    ...(typed.batchTested && { batchTested: true }),
  });
}

/** What a printed name is taken for, so that a slip is seen at once. */
export function standsFor(of: string): string {
  const found = findSubstance(of);
  if (found.kind === 'nutrient')
    return found.form === undefined
      ? `counts as ${found.nutrient.name}`
      : `counts as ${found.nutrient.name}, ${found.form}`;
  if (found.kind === 'unknown') return 'not in the tables: shown, not summed';
  const { name, stand } = found.substance;
  return stand === 'planned' ? `known as ${name}` : `${name}: no dose of it is ever planned`;
}
