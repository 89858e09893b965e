import * as v from 'valibot';
import type { DatedEvent } from '#core/course/read-course.ts';
import { weeklyUntil } from '#core/cycle/season-dates.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import { capital } from '#core/units/capital.ts';

export const DATE_TYPES = [
  'posing practice',
  'registration',
  'check-in',
  'tanning',
  'travel',
  'rehearsal',
  'other',
] as const satisfies readonly DatedEvent['type'][];

export const dateDraft = v.strictObject({
  type: v.picklist(DATE_TYPES),
  title: v.string(),
  date: v.string(),
  at: v.optional(v.number()),
  minutes: v.optional(v.number()),
  weekly: v.boolean(),
});
export type DateDraft = v.InferOutput<typeof dateDraft>;

export function draftOfDate(event: DatedEvent | undefined): DateDraft {
  return {
    type: event?.type ?? 'posing practice',
    title: event?.title ?? '',
    date: event?.date ?? '',
    at: event?.at === undefined ? undefined : parseClock(event.at),
    minutes: event?.minutes,
    weekly: false,
  };
}

type Typed = Omit<DatedEvent, 'event'>;

/** The dates as typed, one or one of each week up to the show; or what is still in the way. */
export function datesFrom(
  typed: DateDraft,
  show: { readonly show: string; readonly date: string } | undefined,
): Outcome<readonly Typed[]> {
  if (parseDate(typed.date) === undefined)
    return refused('course/date-without-a-day', 'date', 'It has no date.', 'Choose the day.');
  if (typed.weekly && show !== undefined && typed.date > show.date)
    return refused(
      'course/date-after-the-show',
      'date',
      'It is after the show, so it cannot come back each week until then.',
      'Choose an earlier day, or let it stand once.',
    );
  const dates = typed.weekly && show ? weeklyUntil(typed.date, show.date) : [typed.date];
  const title = typed.title.trim() || capital(typed.type);
  return answered(
    dates.map((date) => ({
      title,
      type: typed.type,
      date,
      ...(typed.at !== undefined && { at: formatClock(typed.at) }),
      ...(typed.minutes !== undefined && { minutes: typed.minutes }),
      ...(show && { show: show.show }),
    })),
  );
}
