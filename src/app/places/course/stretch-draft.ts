import * as v from 'valibot';
import type { Stretch } from '#core/course/stretches.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { daysBetween, parseDate } from '#core/units/civil-date.ts';

export const STRETCH_TYPES = ['diet break', 'higher-carbohydrate days', 'travel'] as const;

export const stretchDraft = v.strictObject({
  type: v.picklist(STRETCH_TYPES),
  from: v.string(),
  until: v.string(),
  energyKcal: v.optional(v.number()),
  carbohydrateG: v.optional(v.number()),
});
export type StretchDraft = v.InferOutput<typeof stretchDraft>;

const LONGEST_DAYS = 28;

/** The stretch as typed, or what is still in the way. */
export function stretchFrom(typed: StretchDraft, today: string): Outcome<Stretch> {
  const { type, from, until, energyKcal, carbohydrateG } = typed;
  const problem = (path: string, message: string, remedy: string) =>
    refused<Stretch>(`course/stretch-${path}`, path, message, remedy);
  if (parseDate(from) === undefined || parseDate(until) === undefined)
    return problem('from', 'The first or the last day is missing.', 'Choose both.');
  if (until < from)
    return problem('until', 'The last day comes before the first.', 'Swap the two, or correct one.');
  if (until <= today) return problem('until', 'These days are over.', 'Plan days that are still to come.');
  if (daysBetween(from, until) >= LONGEST_DAYS)
    return problem(
      'until',
      'These are more than four weeks.',
      'Plan a shorter stretch, or lay the course anew.',
    );
  return answered({
    type,
    from,
    until,
    ...(energyKcal !== undefined && { energyKcal }),
    ...(carbohydrateG !== undefined && { carbohydrateG }),
  });
}
