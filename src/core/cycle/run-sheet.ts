import { showTasks, showTasksDone, showTimes, taskKey } from '../course/show-times.ts';
import { showsFrom } from '../course/read-course.ts';
import type { ShowTask } from '../course/show-day.ts';
import type { CardioTime, TrainingTime } from '../day/shape-of-day.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import type { DaySheet, EatenMeal, SheetMeal } from './day-sheet.ts';
import { healthRows, type HealthThing } from './health-rows.ts';

export type RowState = 'done' | 'next' | 'ahead' | 'missed';

/** What a line of the run sheet stands for. */
export type RowThing =
  | { readonly type: 'wake' | 'sleep' }
  | { readonly type: 'cardio'; readonly cardio: CardioTime; readonly done?: Fact<'cardio-done'> }
  | { readonly type: 'training'; readonly training: TrainingTime }
  | { readonly type: 'meal'; readonly meal: SheetMeal }
  | { readonly type: 'eaten'; readonly eaten: EatenMeal }
  | { readonly type: 'task'; readonly task: Fact<'event-dated'> }
  | { readonly type: 'show'; readonly show: string; readonly task: ShowTask }
  | HealthThing;

/** One line of the run sheet. `key` stays the same while the thing it stands for does. */
export interface RunSheetRow {
  readonly key: string;
  readonly at: ClockMinutes;
  readonly thing: RowThing;
  readonly state: RowState;
}

interface Row {
  readonly key: string;
  readonly at: ClockMinutes;
  readonly thing: RowThing;
  readonly done: boolean;
  /** When it can no longer be done as meant; a meal waits until it is skipped or planned anew. */
  readonly until: ClockMinutes;
}

/** So long after its start a thing still counts as about to be done (common practice, no source). */
const GRACE: Minutes = 90;

/**
 * The day in time order: waking, cardio, meals eaten and to come, doses, training, tasks, what a show asks for, sleep. One row is next: the first
 * that is not done and can still be done; a row whose time has gone by with nothing logged is missed (RUN-04).
 */
export function runSheet(sheet: DaySheet, ledger: Ledger, now: ClockMinutes): readonly RunSheetRow[] {
  const rows: Row[] = [
    ...frame(sheet, ledger, now),
    ...meals(sheet),
    ...tasks(sheet.day, ledger),
    ...showRows(sheet, ledger),
    ...healthRows(sheet, ledger, now),
  ];
  rows.sort((a, b) => a.at - b.at || wakingFirst(a, b) || (a.key < b.key ? -1 : 1));
  const next = rows.find((row) => !row.done && row.until >= now && row.thing.type !== 'draw-lines');
  return rows.map(({ done, until, ...row }) => ({
    ...row,
    state: done ? 'done' : row.key === next?.key ? 'next' : until < now ? 'missed' : 'ahead',
  }));
}

/** Nothing is done before waking (RUN-35). */
function wakingFirst(a: Row, b: Row): number {
  return Number(b.thing.type === 'wake') - Number(a.thing.type === 'wake');
}

function frame(sheet: DaySheet, ledger: Ledger, now: ClockMinutes): Row[] {
  const { shape, day } = sheet;
  if (!shape) return [];
  const facts = ledger.onDay(day);
  const walked = facts.filter((fact): fact is Fact<'cardio-done'> => fact.kind === 'cardio-done');
  const trained = facts.some((fact) => fact.kind === 'session-ended');
  const rows: Row[] = [
    { key: 'wake', at: shape.wake, thing: { type: 'wake' }, done: now >= shape.wake, until: shape.sleep },
    { key: 'sleep', at: shape.sleep, thing: { type: 'sleep' }, done: false, until: Number.POSITIVE_INFINITY },
  ];
  shape.cardio.forEach((cardio, index) => {
    const done = walked[index];
    rows.push({
      key: `cardio ${index}`,
      at: cardio.start,
      thing: { type: 'cardio', cardio, ...(done && { done }) },
      done: done !== undefined,
      until: cardio.start + cardio.minutes + GRACE,
    });
  });
  if (shape.training) {
    const { start, minutes } = shape.training;
    const thing = { type: 'training', training: shape.training } as const;
    rows.push({ key: 'training', at: start, thing, done: trained, until: start + minutes + GRACE });
  }
  return rows;
}

function meals(sheet: DaySheet): Row[] {
  const eaten = sheet.eaten.map((meal) => ({
    key: meal.fact.entry.id,
    at: meal.at,
    thing: { type: 'eaten', eaten: meal } as const,
    done: true,
    until: meal.at,
  }));
  const open = sheet.meals
    .filter((meal) => meal.eaten === undefined)
    .map((meal) => ({
      key: `meal ${meal.slot}`,
      at: meal.at,
      thing: { type: 'meal', meal } as const,
      done: meal.skipped !== undefined,
      until: Number.POSITIVE_INFINITY,
    }));
  return [...eaten, ...open];
}

function tasks(day: string, ledger: Ledger): Row[] {
  return ledger
    .of('event-dated')
    .filter((fact) => fact.data.date === day)
    .map((task) => {
      const at = (task.data.at === undefined ? undefined : parseClock(task.data.at)) ?? 0;
      const until = at === 0 ? Number.POSITIVE_INFINITY : at + (task.data.minutes ?? 0) + GRACE;
      const thing = { type: 'task', task } as const;
      return { key: task.entry.id, at, thing, done: task.data.done === true, until };
    });
}

/** On the day of a show that was timed: the way there, check-in, stage; its small meals until they are planned to the gram. */
function showRows({ day, plan, targets }: DaySheet, ledger: Ledger): Row[] {
  const shows = showsFrom(ledger, day).filter(({ date, show }) => date === day && showTimes(ledger, show));
  return shows.flatMap(({ show }) => {
    const macros = targets?.data ?? { carbohydrateG: 0, proteinG: 0, fatG: 0 };
    const tasks = showTasks(ledger, show, macros);
    const done = showTasksDone(ledger, show);
    if (!tasks.ok) return [];
    return tasks.value
      .filter(({ type, meal }) => type !== 'wake' && (meal === undefined || !plan))
      .map((task) => ({
        key: `${show} ${taskKey(task)}`,
        at: task.at,
        thing: { type: 'show', show, task } as const,
        done: done.has(taskKey(task)),
        until: task.at + GRACE,
      }));
  });
}
