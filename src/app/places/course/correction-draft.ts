import * as v from 'valibot';
import type { Change } from '#core/course/change.ts';
import { clearDraft, draft } from '../../state/drafts.ts';

const KEY = 'course/correction';

const correctionDraft = v.strictObject({
  energyKcal: v.optional(v.number()),
  cardioKcal: v.optional(v.number()),
  before: v.number(),
  after: v.number(),
  why: v.array(v.string()),
  macro: v.optional(v.picklist(['carbohydrate', 'fat', 'both']), 'carbohydrate'),
  days: v.optional(v.picklist(['every', 'training', 'rest']), 'every'),
});
export type CorrectionDraft = v.InferOutput<typeof correctionDraft>;

const NONE: CorrectionDraft = { before: 0, after: 0, why: [], macro: 'carbohydrate', days: 'every' };

/** The correction that is about to be accepted; it survives a killed tab. */
export function chosenCorrection() {
  return draft(KEY, correctionDraft, NONE);
}

export function openCorrection(chosen: Omit<CorrectionDraft, 'macro' | 'days'>): void {
  chosenCorrection().value = { ...NONE, ...chosen };
}

export function forgetCorrection(): void {
  clearDraft(KEY);
}

/** What it changes; undefined where it changes nothing. */
export function changeOf({ energyKcal = 0, cardioKcal = 0 }: CorrectionDraft): Change | undefined {
  if (energyKcal === 0 && cardioKcal === 0) return undefined;
  return { ...(energyKcal !== 0 && { energyKcal }), ...(cardioKcal !== 0 && { cardioKcal }) };
}
