import type { DrawItem, DrawPlan, PlannedDraw } from '../health/draw/draw-plan.ts';
import { planDraw } from '../health/draw/plan-draw.ts';
import { panelsIn } from '../health/panel/panel-from-journal.ts';
import { medicinesOn, productsIn, regimensIn, type Regimen } from '../health/supplements/regimens.ts';
import type { Ledger } from '../journal/ledger.ts';

import { parseClock } from '../units/clock.ts';
import type { ClockMinutes } from '../units/quantities.ts';

export interface DrawAhead {
  readonly data: PlannedDraw;
  readonly at: ClockMinutes;
  /** A panel of that day is in the journal: the needle is out. */
  readonly drawn: boolean;
}

/** The next draw that is planned for a day or after it; undefined where none is, or its panel is there already. */
export function drawAhead(ledger: Ledger, day: string): DrawAhead | undefined {
  return drawsFrom(ledger, day).find(({ drawn }) => !drawn);
}

function drawsFrom(ledger: Ledger, day: string): DrawAhead[] {
  const newest = new Map(ledger.of('draw-planned').map(({ data }) => [data.draw, data]));
  const drawnOn = new Set(ledger.of('blood-drawn').map(({ data }) => data.drawn.date));
  return [...newest.values()]
    .filter((data) => data.cancelled !== true && data.date >= day)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
    .map((data) => ({ data, at: parseClock(data.at) ?? 0, drawn: drawnOn.has(data.date) }));
}

/** The plan of the days before a draw, as it stands on a day: against the products, regimens and the panel before. */
export function drawPlanOf(ledger: Ledger, draw: PlannedDraw, today: string): DrawPlan | undefined {
  const before = panelsIn(ledger).findLast(({ drawn }) => drawn.date < draw.date);
  const plan = planDraw({
    today,
    draw,
    products: productsIn(ledger),
    regimens: regimensIn(ledger).map((regimen) => withoutDrawPauses(regimen)),
    medicines: medicinesOn(ledger, draw.date),
    ...(before && {
      previous: {
        date: before.drawn.date,
        ...(before.drawn.time === undefined ? {} : { time: before.drawn.time }),
        ...(before.laboratory === undefined ? {} : { laboratory: before.laboratory }),
      },
    }),
  });
  return plan.ok ? plan.value : undefined;
}

/** What the plan of the next draw says of one day. */
export function drawLinesOn(ledger: Ledger, day: string): readonly DrawItem[] {
  const draw = drawsFrom(ledger, day)[0];
  if (!draw) return [];
  return (drawPlanOf(ledger, draw.data, day)?.items ?? []).filter((item) => item.day === day);
}

const PAUSE_WORDS = 'before the blood draw';

/** A regimen without the pauses that were written for a draw: the plan is worked out of what is meant. */
function withoutDrawPauses(regimen: Regimen, until?: string): Regimen {
  const { pauses, ...rest } = regimen;
  const kept = (pauses ?? []).filter(
    (pause) =>
      pause.reason?.startsWith(PAUSE_WORDS) !== true || (until !== undefined && pause.until !== until),
  );
  return kept.length > 0 ? { ...rest, pauses: kept } : rest;
}

/**
 * Regimens as they must be written when a draw is planned, moved or cancelled (HLT-54): the pauses of its old day go, the
 * pauses of its new day come. Only regimens that change are answered. A pause that should have begun begins today.
 */
export function regimensForDraw(
  ledger: Ledger,
  draw: PlannedDraw,
  today: string,
  oldDate: string | undefined,
): readonly Regimen[] {
  const pauses = draw.cancelled === true ? [] : (drawPlanOf(ledger, draw, today)?.pauses ?? []);
  return regimensIn(ledger).flatMap((regimen) => {
    const base = oldDate === undefined ? regimen : withoutDrawPauses(regimen, oldDate);
    const own = pauses
      .filter((pause) => pause.regimen === regimen.regimen)
      .map(({ from, until, reason }) => ({ from: from < today ? today : from, until, reason }));
    const had = base.pauses ?? [];
    const news = own.filter(
      ({ from, until }) => !had.some((pause) => pause.from === from && pause.until === until),
    );
    const all = [...had, ...news];
    const next: Regimen = all.length > 0 ? { ...base, pauses: all } : base;
    return JSON.stringify(next.pauses) === JSON.stringify(regimen.pauses) ? [] : [next];
  });
}
