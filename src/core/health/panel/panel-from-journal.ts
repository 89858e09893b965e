import type { TakenSubstance } from '#core/journal/kinds/lab-value.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { parseClock } from '#core/units/clock.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { DrawnPanel } from '../fhir/draft-to-panel.ts';
import { medicinesOn, productsIn } from '../supplements/regimens.ts';
import { readLabel } from '../supplements/read-label.ts';
import type { PanelRequest } from './panel-request.ts';

/** Panels as they were entered last, oldest draw first. */
export function panelsIn(ledger: Ledger): readonly DrawnPanel[] {
  const newest = new Map(ledger.of('blood-drawn').map(({ data }) => [data.panel, data]));
  return [...newest.values()].sort((a, b) =>
    momentOf(a) < momentOf(b) ? -1 : momentOf(a) > momentOf(b) ? 1 : 0,
  );
}

function momentOf({ drawn }: DrawnPanel): string {
  return `${drawn.date} ${drawn.time ?? '00:00'}`;
}

export interface PanelCircumstances {
  readonly athlete: PanelRequest['athlete'];
  readonly diet?: PanelRequest['diet'];
}

/**
 * The `panel` request for one panel of the journal: its values, the older panels, and the hours since the last working
 * set where the entry does not say them. Undefined where the journal has no such panel.
 */
export function panelRequestOf(
  ledger: Ledger,
  panel: string,
  known: PanelCircumstances,
): PanelRequest | undefined {
  const all = panelsIn(ledger);
  const index = all.findIndex((kept) => kept.panel === panel);
  const kept = all[index];
  if (!kept) return undefined;
  const hours = kept.drawn.hoursSinceHardTraining ?? hoursSinceTraining(ledger, kept.drawn);
  return {
    athlete: known.athlete,
    drawn: { ...kept.drawn, ...(hours === undefined ? {} : { hoursSinceHardTraining: hours }) },
    ...(kept.laboratory === undefined ? {} : { laboratory: kept.laboratory }),
    taking: kept.taking,
    values: kept.values,
    earlier: all
      .slice(0, index)
      .filter((older) => momentOf(older) < momentOf(kept))
      .map(({ drawn, laboratory, taking, values }) => ({
        drawn,
        ...(laboratory === undefined ? {} : { laboratory }),
        taking,
        values,
      })),
    ...(known.diet === undefined ? {} : { diet: known.diet }),
  };
}

/** Sex and age of the journal's athlete in the year of a date; undefined where they were not described. */
export function athleteAt(ledger: Ledger, date: string): PanelRequest['athlete'] | undefined {
  const described = ledger.latest('athlete-described');
  return described && { sex: described.data.sex, age: Number(date.slice(0, 4)) - described.data.birthYear };
}

/** Hours from the last working set to the draw; undefined without a time of the draw or a logged set before it. */
export function hoursSinceTraining(ledger: Ledger, drawn: DrawnPanel['drawn']): number | undefined {
  const drawnMinutes = minutesOf(drawn.date, drawn.time);
  if (drawnMinutes === undefined) return undefined;
  const sets = ledger.of('set-done').filter(({ data }) => data.set !== 'warm-up');
  const before = sets
    .map(({ day, minutes }) => (parseDate(day) ?? Number.NaN) * 1440 + minutes)
    .filter((minutes) => minutes <= drawnMinutes);
  if (before.length === 0) return undefined;
  return roundTo((drawnMinutes - Math.max(...before)) / 60, 1);
}

function minutesOf(date: string, time: string | undefined): number | undefined {
  const [day, clock] = [parseDate(date), time === undefined ? undefined : parseClock(time)];
  return day === undefined || clock === undefined ? undefined : day * 1440 + clock;
}

const TAKEN_DAYS = 7;

/** What was being taken before a draw, by what was logged in the seven days before it, and the medicines declared. */
export function takingBefore(ledger: Ledger, drawn: DrawnPanel['drawn']): TakenSubstance[] {
  const end = minutesOf(drawn.date, drawn.time ?? '00:00') ?? Number.NaN;
  const products = productsIn(ledger);
  const sums = new Map<string, { name: string; mg: number | undefined; last: number }>();
  for (const { data, day, minutes } of ledger.of('supplement-taken')) {
    const at = (parseDate(day) ?? Number.NaN) * 1440 + minutes;
    const product = products.get(data.supplement);
    if (!product || !(at <= end && at > end - TAKEN_DAYS * 1440)) continue;
    for (const part of readLabel(product)) {
      const key = part.key ?? part.printed;
      const before = sums.get(key) ?? { name: part.printed, mg: 0, last: at };
      const mg = part.perUnit === undefined ? undefined : part.perUnit * data.units * MG_PER[part.unit];
      sums.set(key, {
        name: before.name,
        mg: before.mg === undefined || mg === undefined ? undefined : before.mg + mg,
        last: Math.max(before.last, at),
      });
    }
  }
  const supplements = [...sums.values()].map(({ name, mg, last }) => ({
    substance: name,
    ...(mg === undefined ? {} : { mgPerDay: roundTo(mg / TAKEN_DAYS, 4) }),
    ...(drawn.time === undefined ? {} : { hoursSinceLast: roundTo((end - last) / 60, 1) }),
  }));
  const medicines = new Set(medicinesOn(ledger, drawn.date).map(({ name }) => name));
  return [...supplements, ...[...medicines].map((substance) => ({ substance }))];
}

const MG_PER = { g: 1000, mg: 1, ug: 0.001 } as const;
