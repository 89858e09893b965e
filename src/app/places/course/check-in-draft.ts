import * as v from 'valibot';

export const SCORES = ['1', '2', '3', '4', '5'] as const;
const score = v.optional(v.picklist(SCORES));

export const checkInDraft = v.strictObject({
  sleep: score,
  hunger: score,
  mood: score,
  joints: score,
  training: score,
  note: v.string(),
});
export type CheckInDraft = v.InferOutput<typeof checkInDraft>;

/** What is asked each week; 1 is bad, 5 is good, hunger too. */
export const ASKED = [
  { key: 'sleep', label: 'Sleep', low: 'broken', high: 'deep' },
  { key: 'hunger', label: 'Hunger', low: 'gnawing', high: 'quiet' },
  { key: 'mood', label: 'Mood', low: 'low', high: 'good' },
  { key: 'joints', label: 'Joints', low: 'they hurt', high: 'fine' },
  { key: 'training', label: 'Training', low: 'weak', high: 'strong' },
] as const;

/** The scores that were given, as the journal keeps them. */
export function scoresOf(typed: CheckInDraft): Partial<Record<(typeof ASKED)[number]['key'], number>> {
  return Object.fromEntries(
    ASKED.flatMap(({ key }) => (typed[key] === undefined ? [] : [[key, Number(typed[key])]])),
  );
}

/** Scores not given yet stand as the daily notes of the week have them; what is tapped goes first. */
export function withNotes(
  typed: CheckInDraft,
  noted: { readonly [Key in (typeof ASKED)[number]['key']]?: number },
): CheckInDraft {
  const scores = Object.fromEntries(
    ASKED.flatMap(({ key }) => {
      const value = typed[key] ?? SCORES.find((one) => Number(one) === noted[key]);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  return { ...typed, ...scores };
}
