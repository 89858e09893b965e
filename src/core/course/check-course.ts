import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import type { CourseRequest } from './course-request.ts';

/** Shows further ahead than this are a season's plan, not a course. */
const FURTHEST_DAYS = 400;

/** The last day known: `asOf`, or the last row where it is not given. */
export function lastKnownDay(request: CourseRequest): string {
  return request.asOf ?? request.days.at(-1)?.date ?? '';
}

/** What a course cannot be plotted for (CRS-21). Rows out of order are the estimate's to say. */
export function checkCourse(request: CourseRequest): Outcome<CourseRequest> {
  const { show, target } = request;
  const asOf = lastKnownDay(request);
  const ahead = daysBetween(asOf, show.date);
  if (ahead < 0)
    return refused(
      'course/show-is-over',
      'show.date',
      `The show on ${show.date} is before ${asOf}, the last day known.`,
      'Give the next show, or an asOf before the show.',
    );
  if (ahead > FURTHEST_DAYS)
    return refused(
      'course/show-too-far',
      'show.date',
      `The show on ${show.date} is ${ahead} days after ${asOf}, the last day known.`,
      `Give a show at most ${FURTHEST_DAYS} days ahead.`,
    );
  const { bodyFatPercent, massKg } = target;
  if (bodyFatPercent === undefined && massKg?.max === undefined && massKg?.min === undefined)
    return refused(
      'course/no-target',
      'target',
      'The target names no bound.',
      'Add bodyFatPercent {max}, massKg {max}, or massKg {min}.',
    );
  if (massKg?.max !== undefined && massKg.min !== undefined && massKg.min > massKg.max)
    return refused(
      'course/target-crossed',
      'target.massKg',
      `The least mass of ${massKg.min} kg is above the most of ${massKg.max} kg.`,
      'Swap the two, or correct one.',
    );
  return answered(request);
}
