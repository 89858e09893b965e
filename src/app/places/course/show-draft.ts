import * as v from 'valibot';
import { bodyFatFloor } from '#core/limits/body-fat-floor.ts';
import type { Sex } from '#core/limits/published-limits.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { parseDate } from '#core/units/civil-date.ts';

type ShowSet = DataOf<'show-set'>;

export const showDraft = v.strictObject({
  name: v.string(),
  date: v.string(),
  place: v.string(),
  className: v.string(),
  classMaxKg: v.optional(v.number()),
  bodyFatPercentMax: v.optional(v.number()),
  massMaxKg: v.optional(v.number()),
  massMinKg: v.optional(v.number()),
});
export type ShowDraft = v.InferOutput<typeof showDraft>;

export function draftOfShow(show: ShowSet | undefined): ShowDraft {
  return {
    name: show?.name ?? '',
    date: show?.date ?? '',
    place: show?.place ?? '',
    className: show?.class?.name ?? '',
    classMaxKg: show?.class?.massMaxKg,
    bodyFatPercentMax: show?.target.bodyFatPercentMax,
    massMaxKg: show?.target.massMaxKg,
    massMinKg: show?.target.massMinKg,
  };
}

/** The show as it is written, or what is still in the way. */
export function showFrom(typed: ShowDraft, id: string, today: string): Outcome<ShowSet> {
  const problem = (path: string, message: string, remedy: string) =>
    refused<ShowSet>(`course/show-${path}`, path, message, remedy);
  const name = typed.name.trim();
  if (name === '') return problem('name', 'The show has no name.', 'Give it one; "spring show" will do.');
  if (parseDate(typed.date) === undefined)
    return problem('date', 'The show has no date.', 'Choose the day on which you stand on stage.');
  if (typed.date < today)
    return problem(
      'date',
      `${typed.date} is in the past.`,
      'Give the date of the next show, or check the year.',
    );
  const { bodyFatPercentMax, massMaxKg, massMinKg, classMaxKg } = typed;
  if (
    bodyFatPercentMax === undefined &&
    massMaxKg === undefined &&
    massMinKg === undefined &&
    classMaxKg === undefined
  )
    return problem(
      'bodyFatPercentMax',
      'The show has no target.',
      'Say what you want to bring: a body fat at most, a body mass at most or at least, or the limit of your class.',
    );
  const most = Math.min(massMaxKg ?? 1000, classMaxKg ?? 1000);
  if (massMinKg !== undefined && massMinKg > most)
    return problem(
      'massMinKg',
      `At least ${massMinKg} kg and at most ${most} kg cannot both be.`,
      'Swap the two, or correct one.',
    );
  const place = typed.place.trim();
  const className = typed.className.trim() || (classMaxKg === undefined ? '' : `up to ${classMaxKg} kg`);
  return answered({
    show: id,
    name,
    date: typed.date,
    ...(place !== '' && { place }),
    ...(className !== '' && {
      class: { name: className, ...(classMaxKg !== undefined && { massMaxKg: classMaxKg }) },
    }),
    target: {
      ...(bodyFatPercentMax !== undefined && { bodyFatPercentMax }),
      ...(massMaxKg !== undefined && { massMaxKg }),
      ...(massMinKg !== undefined && { massMinKg }),
    },
  });
}

/** What stands against a body fat as a target; undefined where nothing does. */
export function targetDoubt(percent: number | undefined, sex: Sex | undefined) {
  if (percent === undefined || sex === undefined) return undefined;
  const floor = bodyFatFloor(sex);
  return percent < floor.present ? floor.tightest : undefined;
}
