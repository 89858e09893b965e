import { type BagThing, showBag } from '../course/show-bag.ts';
import type { ShowTask } from '../course/show-day.ts';
import {
  type ShowMacros,
  showTasks,
  showTasksDone,
  type ShowTimes,
  showTimes,
  taskKey,
} from '../course/show-times.ts';
import { shapeOfDay } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Ledger } from '../journal/ledger.ts';
import type { Outcome } from '../problems/problem.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import { type DaySheet, daySheet, type ReadItem, type SheetMeal } from './day-sheet.ts';
import { clockThere, daysOutThere, type MomentThere } from './days-out.ts';

/** One line of the show day as its screen shows it. */
export interface ShowRow {
  readonly task: ShowTask;
  readonly done: boolean;
  readonly next: boolean;
  /** The plate planned for a small meal. */
  readonly plate?: SheetMeal;
}

/** Everything the show day's screen shows. */
export interface ShowDayNow {
  readonly show: DataOf<'show-set'>;
  /** Counted at the place of the show. */
  readonly daysOut: number;
  /** The clock at the place, from midnight of the show's date on. */
  readonly clock: ClockMinutes;
  /** Clocks at the place show another time than here. */
  readonly elsewhere: boolean;
  readonly times: ShowTimes | undefined;
  /** Undefined: the day has no targets yet, so its meals have no grams. */
  readonly macros: ShowMacros | undefined;
  readonly tasks: Outcome<readonly ShowTask[]>;
  readonly rows: readonly ShowRow[];
  readonly stageAt: ClockMinutes | undefined;
  /** How much later than first said; below zero is earlier. */
  readonly movedBy: Minutes;
  readonly sheet: DaySheet;
  readonly bag: readonly BagThing[];
}

/** So long after its time a line of the show day still counts as about to be done (common practice, no source). */
const GRACE: Minutes = 60;

/** The show day as it stands (CRS-30, CRS-31): its sheet with what is done and next, the plates, the bag. */
export function showDayNow(
  ledger: Ledger,
  show: DataOf<'show-set'>,
  today: string,
  moment: MomentThere,
  read: ReadItem,
): ShowDayNow {
  const clock = clockThere(show.date, moment);
  const sheet = daySheet(ledger, show.date, clock, read);
  const kind = shapeOfDay(ledger, show.date)?.dayKind ?? 'rest';
  const macros = targetsOfDay(ledger, show.date, kind)?.data;
  const times = showTimes(ledger, show.show);
  const tasks = showTasks(ledger, show.show, macros ?? { carbohydrateG: 0, proteinG: 0, fatG: 0 });
  const list = tasks.ok ? tasks.value : [];
  const stageAt = list.find(({ type }) => type === 'stage')?.at;
  const said = times && parseClock(times.stage);
  return {
    show,
    daysOut: daysOutThere(today, show.date, moment),
    clock,
    elsewhere: moment.hereMinutes !== moment.thereMinutes,
    times,
    macros,
    tasks,
    rows: rowsOf(list, showTasksDone(ledger, show.show), sheet, clock),
    stageAt,
    movedBy: stageAt === undefined || said === undefined ? 0 : stageAt - said,
    sheet,
    bag: showBag(ledger, show.show),
  };
}

function rowsOf(
  tasks: readonly ShowTask[],
  done: ReadonlySet<string>,
  sheet: DaySheet,
  clock: ClockMinutes,
): readonly ShowRow[] {
  const rows = tasks.map((task) => {
    const plate = task.meal && sheet.meals.find(({ at }) => at === task.at);
    const isDone =
      task.type === 'wake' ? clock >= task.at : plate ? plate.eaten !== undefined : done.has(taskKey(task));
    return { task, done: isDone, ...(plate && { plate }) };
  });
  // Nothing before a line that is done, or long past, is still to come: what was left out was left out.
  const last = rows.findLastIndex(({ done: isDone, task }) => isDone || task.at + GRACE < clock);
  const next = rows.findIndex((row, k) => k > last && !row.done);
  return rows.map((row, k) => ({ ...row, next: clock >= 0 && k === next }));
}
