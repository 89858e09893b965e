import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';

const score = v.optional(v.picklist(['1', '2', '3', '4', '5']));

export const feltDraft = v.strictObject({
  hunger: score,
  mood: score,
  sleepQuality: score,
  libido: score,
  cold: score,
});
export type FeltDraft = v.InferOutput<typeof feltDraft>;

/** What is asked on the way back, and how its ends are called; the figures are those of the journal's notes. */
export const FELT = [
  { key: 'hunger', label: 'Hunger', low: 'quiet', high: 'great' },
  { key: 'mood', label: 'Mood', low: 'low', high: 'good' },
  { key: 'sleepQuality', label: 'Sleep', low: 'broken', high: 'deep' },
  { key: 'libido', label: 'Libido', low: 'gone', high: 'as ever' },
  { key: 'cold', label: 'Feeling cold', low: 'never', high: 'all day' },
] as const;

/** The note as it is written; undefined where nothing was said. */
export function feltFrom(typed: FeltDraft): DataOf<'feeling-noted'> | undefined {
  const said = FELT.flatMap(({ key }) => (typed[key] === undefined ? [] : [[key, Number(typed[key])]]));
  return said.length === 0 ? undefined : Object.fromEntries(said);
}
