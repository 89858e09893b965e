import * as v from 'valibot';
import { foodFromLabel, type FoodFromLabel } from '#core/kitchen/food-from-label.ts';
import type { LabelRequest } from '#core/kitchen/label-request.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';

/** A label as it is being copied from the package. */
export const labelDraft = v.strictObject({
  name: v.string(),
  state: v.picklist(['raw', 'cooked', 'dry', 'frozen', 'as-is']),
  rules: v.picklist(['us', 'eu']),
  servingG: v.optional(v.number()),
  energyKcal: v.optional(v.number()),
  fatG: v.optional(v.number()),
  saturatedFatG: v.optional(v.number()),
  carbohydrateG: v.optional(v.number()),
  sugarsG: v.optional(v.number()),
  fibreG: v.optional(v.number()),
  proteinG: v.optional(v.number()),
  /** US labels print sodium, European ones salt. */
  sodiumMg: v.optional(v.number()),
  saltG: v.optional(v.number()),
  unitName: v.string(),
  unitG: v.optional(v.number()),
});
export type LabelDraft = v.InferOutput<typeof labelDraft>;

export const emptyLabel: LabelDraft = { name: '', state: 'as-is', rules: 'eu', servingG: 100, unitName: '' };

/** European salt is sodium times 2.5 (Regulation (EU) 1169/2011, Annex I). */
const SODIUM_MG_PER_SALT_G = 400;

/** The own food that the label makes; the first missing field is answered by name. */
export function readLabelDraft(typed: LabelDraft, food: string): Outcome<FoodFromLabel> {
  const name = typed.name.trim();
  if (name === '')
    return refused('kitchen/no-name', 'name', 'The food has no name.', 'Enter what you call it.');
  const label = labelOf(typed);
  if (!label.ok) return label;
  const unit =
    typed.unitG !== undefined && typed.unitG > 0
      ? { name: typed.unitName.trim() || 'piece', grams: typed.unitG }
      : undefined;
  return foodFromLabel({ food, name, state: typed.state, ...(unit && { unit }) }, label.value);
}

function labelOf(typed: LabelDraft): Outcome<LabelRequest> {
  const { servingG, energyKcal, fatG, carbohydrateG, proteinG } = typed;
  if (servingG === undefined || servingG <= 0) {
    return refused(
      'kitchen/no-serving',
      'servingG',
      'The label has no serving weight.',
      'Enter the grams its figures are for: 100, or one serving.',
    );
  }
  if (
    energyKcal === undefined ||
    fatG === undefined ||
    carbohydrateG === undefined ||
    proteinG === undefined
  ) {
    return refused(
      'kitchen/label-incomplete',
      'energyKcal',
      'Energy, fat, carbohydrate or protein is missing.',
      'Copy all four from the label; 0 is a figure too.',
    );
  }
  const sodiumMg = typed.rules === 'eu' ? typed.saltG && typed.saltG * SODIUM_MG_PER_SALT_G : typed.sodiumMg;
  return {
    ok: true,
    value: {
      rules: typed.rules,
      servingG,
      nutrients: {
        energyKcal,
        fatG,
        carbohydrateG,
        proteinG,
        ...(typed.fibreG !== undefined && { fibreG: typed.fibreG }),
        ...(typed.sugarsG !== undefined && { sugarsG: typed.sugarsG }),
        ...(typed.saturatedFatG !== undefined && { saturatedFatG: typed.saturatedFatG }),
        ...(sodiumMg !== undefined && { sodiumMg }),
      },
    },
  };
}
