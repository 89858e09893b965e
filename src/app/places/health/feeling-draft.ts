import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

const score = v.optional(v.picklist(['1', '2', '3', '4', '5']));

/** How the day feels, as it is being noted; everything may stay empty. */
export const feelingDraft = v.strictObject({
  restingHeartRateBpm: v.optional(v.number()),
  sleepHours: v.optional(v.number()),
  sleepQuality: score,
  libido: score,
  mood: score,
  cold: score,
  hunger: score,
  jointPain: score,
  note: v.string(),
});
export type FeelingDraft = v.InferOutput<typeof feelingDraft>;

/** Asked in this order; more is more of what it names. */
export const SCORES = [
  { key: 'sleepQuality', label: 'Sleep', low: 'broken', high: 'deep' },
  { key: 'mood', label: 'Mood', low: 'low', high: 'good' },
  { key: 'libido', label: 'Libido', low: 'none', high: 'as ever' },
  { key: 'hunger', label: 'Hunger', low: 'none', high: 'gnawing' },
  { key: 'cold', label: 'Feeling cold', low: 'never', high: 'all day' },
  { key: 'jointPain', label: 'Joint pain', low: 'none', high: 'strong' },
] as const;

export function readFeelingDraft(typed: FeelingDraft): Outcome<DataOf<'feeling-noted'>> {
  const { restingHeartRateBpm: heart, sleepHours } = typed;
  if (heart !== undefined && (heart < 20 || heart > 220))
    return refused(
      'health/heart-rate',
      'restingHeartRateBpm',
      `A resting heart rate of ${heart} is no heart's.`,
      'Count the beats of a full minute before getting up: 20 to 220.',
    );
  if (sleepHours !== undefined && (sleepHours < 0 || sleepHours > 24))
    return refused(
      'health/sleep-hours',
      'sleepHours',
      `${sleepHours} h of sleep do not fit into a day.`,
      'Enter 0 to 24 hours.',
    );
  const scores = Object.fromEntries(
    SCORES.flatMap(({ key }) => (typed[key] === undefined ? [] : [[key, Number(typed[key])]])),
  );
  const note = typed.note.trim();
  const data = {
    ...(heart !== undefined && { restingHeartRateBpm: Math.round(heart) }),
    ...(sleepHours !== undefined && { sleepHours }),
    ...scores,
    ...(note !== '' && { note }),
  };
  if (Object.keys(data).length === 0)
    return refused(
      'health/nothing-noted',
      'feeling',
      'Nothing is noted yet.',
      'One thing is enough: what is left empty is not asked again.',
    );
  return answered(data);
}
