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
  zone: v.optional(v.string()),
  classMaxKg: v.optional(v.number()),
  classMinKg: v.optional(v.number()),
  classHeightMaxCm: v.optional(v.number()),
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
    zone: show?.zone,
    classMaxKg: show?.class?.massMaxKg,
    classMinKg: show?.class?.massMinKg,
    classHeightMaxCm: show?.class?.heightMaxCm,
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
  const { bodyFatPercentMax, massMaxKg, massMinKg, classMaxKg, classMinKg } = typed;
  if (
    bodyFatPercentMax === undefined &&
    massMaxKg === undefined &&
    massMinKg === undefined &&
    classMaxKg === undefined &&
    classMinKg === undefined
  )
    return problem(
      'bodyFatPercentMax',
      'The show has no target.',
      'Say what you want to bring: a body fat at most, a body mass at most or at least, or the limit of your class.',
    );
  const most = Math.min(massMaxKg ?? 1000, classMaxKg ?? 1000);
  const least = Math.max(massMinKg ?? 0, classMinKg ?? 0);
  if (least > most)
    return problem(
      least === massMinKg ? 'massMinKg' : 'classMinKg',
      `At least ${least} kg and at most ${most} kg cannot both be.`,
      'Swap the two, or correct one.',
    );
  const place = typed.place.trim();
  const division = classFrom(typed);
  return answered({
    show: id,
    name,
    date: typed.date,
    ...(place !== '' && { place }),
    ...(typed.zone !== undefined && { zone: typed.zone }),
    ...(division && { class: division }),
    target: {
      ...(bodyFatPercentMax !== undefined && { bodyFatPercentMax }),
      ...(massMaxKg !== undefined && { massMaxKg }),
      ...(massMinKg !== undefined && { massMinKg }),
    },
  });
}

/** The class with its own limits as entered; one without a name is named by them. */
function classFrom(typed: ShowDraft): ShowSet['class'] {
  const { classMaxKg, classMinKg, classHeightMaxCm } = typed;
  const limits = {
    ...(classMaxKg !== undefined && { massMaxKg: classMaxKg }),
    ...(classMinKg !== undefined && { massMinKg: classMinKg }),
    ...(classHeightMaxCm !== undefined && { heightMaxCm: classHeightMaxCm }),
  };
  const named = [
    ...(classMaxKg === undefined ? [] : [`up to ${classMaxKg} kg`]),
    ...(classMinKg === undefined ? [] : [`from ${classMinKg} kg`]),
    ...(classHeightMaxCm === undefined ? [] : [`up to ${classHeightMaxCm} cm`]),
  ].join(', ');
  const name = typed.className.trim() || named;
  return name === '' ? undefined : { name, ...limits };
}

/** What stands against a body fat as a target; undefined where nothing does. */
export function targetDoubt(percent: number | undefined, sex: Sex | undefined) {
  if (percent === undefined || sex === undefined) return undefined;
  const floor = bodyFatFloor(sex);
  return percent < floor.present ? floor.tightest : undefined;
}
