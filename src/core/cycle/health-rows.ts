import type { DrawItem } from '../health/draw/draw-plan.ts';
import type { Ledger } from '../journal/ledger.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes } from '../units/quantities.ts';
import type { DaySheet } from './day-sheet.ts';
import { dosesOfDay, type DoseDone, type DoseGroup, type DosesOfDay } from './doses-of-day.ts';
import { drawAhead, drawLinesOn } from './draw-now.ts';

/** Lines of the run sheet that come from Health. */
export type HealthThing =
  | { readonly type: 'doses'; readonly group: DoseGroup }
  | { readonly type: 'dose-done'; readonly done: DoseDone }
  /** What to mind on a day before a draw: no act of its own, so it is never next. */
  | { readonly type: 'draw-lines'; readonly items: readonly DrawItem[] }
  | { readonly type: 'draw'; readonly laboratory?: string };

export interface HealthRow {
  readonly key: string;
  readonly at: ClockMinutes;
  readonly thing: HealthThing;
  readonly done: boolean;
  readonly until: ClockMinutes;
}

/** A draw is waited for so long after its time (common practice, no source). */
const DRAW_GRACE = 180;

/** Doses to come and done, and what the plan of a draw says of the day (HLT-37, HLT-54). */
export function healthRows(sheet: DaySheet, ledger: Ledger, now: ClockMinutes): readonly HealthRow[] {
  const doses = dosesOfDay(ledger, sheet, now);
  return [...(doses.ok ? doseRows(doses.value, sheet) : []), ...drawRows(sheet, ledger)];
}

function doseRows({ groups, done }: DosesOfDay, sheet: DaySheet): HealthRow[] {
  return [
    ...groups.map((group) => ({
      // Sorted right behind the meal of the same time.
      key: `meal ${group.slot ?? '~'} doses ${group.key}`,
      at: besideMeal(group, sheet),
      thing: { type: 'doses', group } as const,
      done: false,
      until: Number.POSITIVE_INFINITY,
    })),
    ...done.map((dose) => ({
      key: dose.fact.entry.id,
      at: dose.fact.minutes,
      thing: { type: 'dose-done', done: dose } as const,
      done: true,
      until: dose.fact.minutes,
    })),
  ];
}

/** A meal that is late stands where it was planned, and its doses beside it. */
function besideMeal({ slot, at }: DoseGroup, sheet: DaySheet): ClockMinutes {
  if (slot === undefined) return at;
  const eaten = sheet.eaten.find((meal) => (meal.fact.data.slot ?? meal.fact.entry.id) === slot);
  return eaten?.at ?? sheet.meals.find((meal) => meal.slot === slot)?.at ?? at;
}

function drawRows({ day, shape }: DaySheet, ledger: Ledger): HealthRow[] {
  const lines = drawLinesOn(ledger, day).filter(({ kind }) => kind !== 'draw');
  const byTime = new Map<ClockMinutes, DrawItem[]>();
  for (const line of lines) {
    const at = (line.at === undefined ? undefined : parseClock(line.at)) ?? shape?.wake ?? 0;
    byTime.set(at, [...(byTime.get(at) ?? []), line]);
  }
  const rows = [...byTime].map(([at, items]) => ({
    key: `wake draw ${at}`,
    at,
    thing: { type: 'draw-lines', items } as const,
    done: false,
    until: Number.POSITIVE_INFINITY,
  }));
  const draw = drawAhead(ledger, day);
  if (draw?.data.date !== day) return rows;
  const { laboratory } = draw.data;
  return [
    ...rows,
    {
      key: 'draw',
      at: draw.at,
      thing: { type: 'draw', ...(laboratory === undefined ? {} : { laboratory }) },
      done: false,
      until: draw.at + DRAW_GRACE,
    },
  ];
}
