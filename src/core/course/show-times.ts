import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import type { Grams } from '#core/units/quantities.ts';
import { showDaySheet, type ShowTask, stageMoved } from './show-day.ts';

export type ShowTimes = DataOf<'show-day-timed'>;

/** What the day's small meals share out. */
export interface ShowMacros {
  readonly carbohydrateG: Grams;
  readonly proteinG: Grams;
  readonly fatG: Grams;
}

/** The times of a show day as they were last said. */
export function showTimes(ledger: Ledger, show: string): ShowTimes | undefined {
  return ledger.of('show-day-timed').findLast(({ data }) => data.show === show)?.data;
}

/**
 * The sheet of a show day (CRS-30): as timed, then moved as often as the stage was moved since. Its meals are the day's targets
 * shared out; what they hold in grams of food is the plan of that day.
 */
export function showTasks(ledger: Ledger, show: string, macros: ShowMacros): Outcome<readonly ShowTask[]> {
  const timed = ledger.of('show-day-timed').findLast(({ data }) => data.show === show);
  if (!timed)
    return refused(
      'course/show-day-not-timed',
      'stage',
      'The times of the show day are not entered yet.',
      'Enter waking, the call to the stage, and the way there.',
    );
  let tasks = sheetOf(timed.data, macros);
  const moves = ledger
    .of('stage-moved')
    .filter(({ data, entry }) => data.show === show && entry.stamp > timed.entry.stamp)
    .toSorted((a, b) => (a.entry.stamp < b.entry.stamp ? -1 : 1));
  for (const { data } of moves) {
    if (!tasks.ok) return tasks;
    // A move that cannot be (it was refused, or its line was corrected since) leaves the sheet as it was.
    const moved = stageMoved(tasks.value, parseClock(data.now) ?? 0, parseClock(data.stage) ?? 0);
    tasks = moved.ok ? moved : answered(tasks.value);
  }
  return tasks;
}

function sheetOf(times: ShowTimes, macros: ShowMacros): Outcome<readonly ShowTask[]> {
  const clockOf = (text: string | undefined) => (text === undefined ? undefined : parseClock(text));
  return showDaySheet({
    wake: clockOf(times.wake) ?? 0,
    stage: clockOf(times.stage) ?? 0,
    checkIn: clockOf(times.checkIn),
    finals: clockOf(times.finals),
    travelMinutes: times.travelMinutes,
    ...macros,
  });
}

/** What a task is marked as done by: its type, of which there is one; of small meals there are several, told apart by their time. */
export function taskKey({ type, at }: ShowTask): string {
  return type === 'meal' ? `meal ${formatClock(at)}` : type;
}

/** Which tasks of a show day are done, by their keys. */
export function showTasksDone(ledger: Ledger, show: string): ReadonlySet<string> {
  return new Set(
    ledger
      .of('show-task-done')
      .filter(({ data }) => data.show === show)
      .map(({ data }) => data.task),
  );
}
