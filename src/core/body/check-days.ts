import { daysBetween } from '#core/units/civil-date.ts';
import { answered, type Outcome, refused } from '#core/problems/problem.ts';
import type { EstimateRequest } from './estimate-request.ts';

/** A year-long gap is more likely a slip in a date than a pause that says anything of the present body. */
const LONGEST_GAP_DAYS = 400;
/** Days after the last row that `asOf` may lie: beyond them nothing is known of the body. */
const LONGEST_SILENCE_DAYS = 60;

/** Holds dates against each other: ascending, each once, no gap of a year, `asOf` within what the rows speak of. */
export function checkDays(request: EstimateRequest): Outcome<EstimateRequest> {
  const { days, asOf } = request;
  for (const [index, { date }] of days.entries()) {
    const before = days[index - 1]?.date;
    if (before === undefined) continue;
    const gap = daysBetween(before, date);
    const path = `days.${index}.date`;
    if (gap === 0)
      return refused(
        'body/date-twice',
        path,
        `${date} stands on two rows.`,
        'Put all of one day on one row.',
      );
    if (gap < 0)
      return refused(
        'body/dates-out-of-order',
        path,
        `${date} comes after ${before}, though it is the earlier date.`,
        'Order the rows by date, oldest first.',
      );
    if (gap > LONGEST_GAP_DAYS)
      return refused(
        'body/gap-too-long',
        path,
        `${date} is ${gap} days after the row before it.`,
        `Check the year, or start with the rows from ${date} on.`,
      );
  }
  const empty = days.findIndex((day) => day.confirmed === true && !day.intake);
  if (empty >= 0)
    return refused(
      'body/nothing-confirmed',
      `days.${empty}.confirmed`,
      `${days[empty]?.date ?? ''} is confirmed as whole, but holds no intake.`,
      'Write the intake of the day (0 for a fast), or leave "confirmed" out.',
    );
  return asOf === undefined ? answered(request) : checkAsOf(request, asOf);
}

function checkAsOf(request: EstimateRequest, asOf: string): Outcome<EstimateRequest> {
  const first = request.days[0]?.date ?? asOf;
  const last = request.days.at(-1)?.date ?? asOf;
  if (daysBetween(first, asOf) < 0)
    return refused(
      'body/as-of-before-log',
      'asOf',
      `"asOf" is ${asOf}, before the first row, ${first}.`,
      'Name a date on or after the first row: nothing is known before it.',
    );
  const silence = daysBetween(last, asOf);
  if (silence > LONGEST_SILENCE_DAYS)
    return refused(
      'body/as-of-in-future',
      'asOf',
      `"asOf" is ${asOf}, ${silence} days after the last row, ${last}.`,
      `Name a date at most ${LONGEST_SILENCE_DAYS} days after the last row, or add the rows between.`,
    );
  return answered(request);
}
