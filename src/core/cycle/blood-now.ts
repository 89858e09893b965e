import type { EstimateAnswer, EstimateRequest } from '../body/estimate-request.ts';
import type { DrawnPanel } from '../health/fhir/draft-to-panel.ts';
import { analytesIn, analyteTrend, type AnalyteTrend } from '../health/panel/analyte-trend.ts';
import { athleteAt, panelRequestOf, panelsIn } from '../health/panel/panel-from-journal.ts';
import type { PanelRequest } from '../health/panel/panel-request.ts';
import { readPanelValues, type ReadPanel } from '../health/panel/read-panel-values.ts';
import type { PanelCaution } from '../health/panel/reading.ts';
import { readPanel, type PanelReading } from '../health/panel/read-panel.ts';
import type { Ledger } from '../journal/ledger.ts';
import { refused, type Outcome } from '../problems/problem.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import { roundTo } from '../units/rounding.ts';

/** What was eaten against what was burned before a draw, as a panel's notes ask for it. */
export type Diet = NonNullable<PanelRequest['diet']>;

/** A panel of the journal as it is read today: against the older ones, the training log and the eating (HLT-17). */
export function panelReading(ledger: Ledger, panel: string, diet?: Diet): Outcome<PanelReading> {
  const kept = panelsIn(ledger).find((one) => one.panel === panel);
  if (!kept)
    return refused(
      'health/no-panel',
      'panel',
      'The journal has no such panel.',
      'Go back to Health and choose one of those that are there.',
    );
  const athlete = athleteAt(ledger, kept.drawn.date);
  const request =
    athlete && panelRequestOf(ledger, panel, { athlete, ...(diet === undefined ? {} : { diet }) });
  if (!request)
    return refused(
      'health/nobody',
      'athlete',
      'The journal does not say yet whose blood it is.',
      'Fill in the first start: intervals go by sex and age.',
    );
  return readPanel(request);
}

/** So long the run sheet goes on to say that a value needs care now. Common practice, no source. */
const URGENT_DAYS = 7;

/** What needs care now in a panel of the last week; it stands on the run sheet too, so that it is not left behind (HLT-18). */
export function urgentOf(
  ledger: Ledger,
  today: string,
): { readonly panel: string; readonly cautions: readonly PanelCaution[] } | undefined {
  const last = panelsIn(ledger).at(-1);
  if (!last || daysBetween(last.drawn.date, today) > URGENT_DAYS) return undefined;
  const reading = panelReading(ledger, last.panel);
  const cautions = reading.ok ? reading.value.cautions.filter(({ urgent }) => urgent) : [];
  return cautions.length === 0 ? undefined : { panel: last.panel, cautions };
}

/** Days before a draw whose food and burning are looked at. Common practice, no source. */
const DIET_DAYS = 7;
const ENOUGH_DAYS = 3;

/** The eating of the week before a draw, out of the body's log and estimate; what is not known is left out. */
export function dietBefore(log: EstimateRequest, answer: EstimateAnswer, date: string): Diet {
  const from = addDays(date, -DIET_DAYS);
  const eaten = log.days.flatMap((day) =>
    day.intake && day.date >= from && day.date < date ? [{ date: day.date, intake: day.intake }] : [],
  );
  if (eaten.length < ENOUGH_DAYS) return {};
  const known = new Map(answer.days.map((day) => [day.date, day]));
  const gaps = eaten.flatMap(({ date: day, intake }) => {
    const burned = known.get(day)?.maintenanceKcal.mean;
    return burned === undefined ? [] : [burned - intake.energyKcal];
  });
  const protein = eaten.flatMap(({ date: day, intake }) => {
    const massKg = known.get(day)?.massKg.mean;
    return massKg === undefined ? [] : [intake.proteinG / massKg];
  });
  return {
    ...(gaps.length >= ENOUGH_DAYS && { deficitKcalPerDay: Math.round(mean(gaps)) }),
    ...(protein.length >= ENOUGH_DAYS && { proteinGPerKg: roundTo(mean(protein), 1) }),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

export interface BloodNow {
  /** Newest first. */
  readonly panels: readonly DrawnPanel[];
  /** Those that can be read as they stand, oldest first. */
  readonly readable: readonly ReadPanel[];
  /** Analytes with a value, each once, those of the newest panel first. */
  readonly analytes: readonly string[];
}

/** The panels of the journal and what may be followed over them. */
export function bloodNow(ledger: Ledger, today: string): BloodNow {
  const panels = panelsIn(ledger);
  const athlete = athleteAt(ledger, today);
  const readable = panels.flatMap(({ values, drawn, panel }) => {
    const read = athlete && readPanelValues(values, drawn, panel, athlete.sex);
    return read?.ok ? [read.value] : [];
  });
  return {
    panels: panels.toReversed(),
    readable,
    analytes: analytesIn(readable.toReversed()),
  };
}

/** One analyte over all panels. */
export function trendOf(ledger: Ledger, key: string, today: string): AnalyteTrend | undefined {
  const athlete = athleteAt(ledger, today);
  return athlete && analyteTrend(bloodNow(ledger, today).readable, key, athlete.sex);
}
