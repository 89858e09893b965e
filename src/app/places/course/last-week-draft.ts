import * as v from 'valibot';

export const lastWeekDraft = v.strictObject({
  loadGPerKg: v.optional(v.number()),
  loadDays: v.optional(v.number()),
  usualWaterMl: v.optional(v.number()),
  usualSodiumMg: v.optional(v.number()),
});
export type LastWeekDraft = v.InferOutput<typeof lastWeekDraft>;

const score = v.optional(v.picklist(['1', '2', '3', '4', '5']));

export const rehearsalDraft = v.strictObject({
  look: score,
  gut: score,
  again: v.picklist(['as it was', 'with less', 'not at all']),
  lessons: v.string(),
});
export type RehearsalDraft = v.InferOutput<typeof rehearsalDraft>;
