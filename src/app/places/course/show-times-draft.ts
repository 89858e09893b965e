import * as v from 'valibot';
import { showDaySheet } from '#core/course/show-day.ts';
import type { ShowTimes } from '#core/course/show-times.ts';
import type { DayShape } from '#core/day/shape-of-day.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { formatClock, LAST_CLOCK_MINUTE, parseClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';

export const timesDraft = v.strictObject({
  wake: v.optional(v.number()),
  travelMinutes: v.optional(v.number()),
  checkIn: v.optional(v.number()),
  stage: v.optional(v.number()),
  finals: v.optional(v.number()),
});
export type TimesDraft = v.InferOutput<typeof timesDraft>;

export function draftOfTimes(times: ShowTimes | undefined, usualWake: ClockMinutes | undefined): TimesDraft {
  const clockOf = (text: string | undefined) => (text === undefined ? undefined : parseClock(text));
  return {
    wake: clockOf(times?.wake) ?? usualWake,
    travelMinutes: times?.travelMinutes ?? 30,
    checkIn: clockOf(times?.checkIn),
    stage: clockOf(times?.stage),
    finals: clockOf(times?.finals),
  };
}

/** The times as they are written, or what is still in the way. */
export function timesFrom(typed: TimesDraft, show: string): Outcome<ShowTimes> {
  const { wake, stage, checkIn, finals, travelMinutes } = typed;
  if (wake === undefined)
    return refused('course/no-waking', 'wake', 'Waking has no time.', 'Enter it as "05:30".');
  if (stage === undefined)
    return refused(
      'course/no-stage-time',
      'stage',
      'The stage has no time.',
      'Enter when your class is called, as the running order has it; it can be moved on the day.',
    );
  if (travelMinutes === undefined)
    return refused(
      'course/no-way-there',
      'travelMinutes',
      'The way to the stage has no length.',
      'Enter its minutes; 0 if you sleep there.',
    );
  const sheet = showDaySheet({
    wake,
    stage,
    checkIn,
    finals,
    travelMinutes,
    carbohydrateG: 0,
    proteinG: 0,
    fatG: 0,
  });
  if (!sheet.ok) return sheet;
  return answered({
    show,
    wake: formatClock(wake),
    stage: formatClock(stage),
    travelMinutes,
    ...(checkIn !== undefined && { checkIn: formatClock(checkIn) }),
    ...(finals !== undefined && { finals: formatClock(finals) }),
  });
}

/** How long after the last call the day ends at the earliest, and how long a waking day lasts at least. */
const AFTER_LAST_CALL = 180;
const WAKING_MINUTES = 16 * 60;

/** The shape of a show day: from waking to well after the last call, nothing trained, the usual rules of meals. */
export function shapeOfShowDay(times: ShowTimes, usual: DayShape | undefined): DataOf<'day-shaped'> {
  const wake = parseClock(times.wake) ?? 0;
  const last = parseClock(times.finals ?? times.stage) ?? wake;
  const sleep = Math.max(last + AFTER_LAST_CALL, wake + WAKING_MINUTES, usual?.sleep ?? 0);
  const meals = usual?.rules.meals;
  return {
    scope: { of: 'day' },
    wake: times.wake,
    sleep: formatClock(Math.min(sleep, LAST_CLOCK_MINUTE)),
    dayKind: 'rest',
    ...(meals && { meals }),
  };
}
