import { analytesIn, analyteTrend } from '../panel/analyte-trend.ts';
import { readPanelValues } from '../panel/read-panel-values.ts';
import type { PanelReading } from '../panel/read-panel.ts';
import { sayUnit, type PanelResult } from '../panel/reading.ts';
import { roundTo } from '#core/units/rounding.ts';
import { questionsFor } from './physician-questions.ts';

/** One page to take along: plain rows, nothing that only this tool understands. */
export interface PhysicianSheet {
  readonly title: string;
  /** When and in what state blood was drawn. */
  readonly drawn: readonly string[];
  /** Values that need care now, first and alone. */
  readonly urgent: readonly string[];
  readonly rows: readonly SheetRow[];
  readonly derived: readonly string[];
  readonly taken: readonly string[];
  readonly training: readonly string[];
  readonly cautions: readonly string[];
  readonly questions: readonly string[];
}

export interface SheetRow {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
  readonly interval: string;
  /** In words, so that it prints in black: "LOW", "HIGH", "CARE NOW", "". */
  readonly flag: string;
  /** Older values in the same unit, newest first. */
  readonly before: readonly { readonly date: string; readonly value: string }[];
  readonly change: string;
}

export interface SheetCircumstances {
  /** Lines the training log gives: sessions of the last week, the last hard one. */
  readonly training?: readonly string[];
  /** Lines of how one feels: resting heart rate, sleep, periods. */
  readonly feelings?: readonly string[];
}

const OLDER_VALUES = 3;

/** The sheet for the physician out of a read panel (HLT-53). */
export function physicianSheet(
  reading: PanelReading,
  circumstances: SheetCircumstances = {},
): PhysicianSheet {
  const { request } = reading;
  return {
    title: `Blood panel of ${request.drawn.date}${request.laboratory === undefined ? '' : `, ${request.laboratory}`}`,
    drawn: drawnLines(reading),
    urgent: reading.cautions.filter(({ urgent }) => urgent).map(({ words }) => words),
    rows: [...reading.results].sort((a, b) => rank(a) - rank(b)).map((result) => rowOf(reading, result)),
    derived: [
      ...reading.derived.map(({ name, value, unit }) =>
        `${name}: ${roundTo(value, 2)} ${sayUnit(unit)}`.trim(),
      ),
      ...reading.withheld.map(({ name, reason }) => `${name}: ${reason}`),
    ],
    taken: takenLines(reading),
    training: [...(circumstances.training ?? []), ...(circumstances.feelings ?? [])],
    cautions: reading.cautions
      .filter(({ urgent, code }) => !urgent && code !== 'health/withheld')
      .map(({ words }) => words),
    questions: questionsFor(reading),
  };
}

/** What needs care now stands first, then what is out of its interval, then the rest as given. */
function rank({ flag }: PanelResult): number {
  if (flag === 'seek care now') return 0;
  return flag === 'low' || flag === 'high' ? 1 : 2;
}

function drawnLines({ request }: PanelReading): string[] {
  const { date, time, fastedHours, hoursSinceHardTraining } = request.drawn;
  const said = (value: number | undefined, what: string) =>
    `${what}: ${value === undefined ? 'not known' : `${value} h`}`;
  const { deficitKcalPerDay, proteinGPerKg } = request.diet ?? {};
  return [
    `Drawn ${date}${time === undefined ? ', time not known' : ` at ${time}`}`,
    said(fastedHours, 'Fasted'),
    said(hoursSinceHardTraining, 'Since hard training'),
    ...(deficitKcalPerDay === undefined
      ? []
      : [`Energy deficit: about ${Math.round(deficitKcalPerDay)} kcal a day`]),
    ...(proteinGPerKg === undefined ? [] : [`Protein: ${proteinGPerKg} g per kg body mass a day`]),
  ];
}

function takenLines({ request }: PanelReading): string[] {
  if (request.taking.length === 0) return ['Nothing named'];
  return request.taking.map((item) => {
    if (typeof item === 'string') return item;
    const amount = item.mgPerDay === undefined ? '' : `, ${item.mgPerDay} mg a day`;
    const last = item.hoursSinceLast === undefined ? '' : `, last ${item.hoursSinceLast} h before the draw`;
    return `${item.substance}${amount}${last}`;
  });
}

const FLAGS = { low: 'LOW', high: 'HIGH', in: '', 'seek care now': 'CARE NOW' } as const;

function rowOf(reading: PanelReading, result: PanelResult): SheetRow {
  const { read, interval, flag, change } = result;
  const older = olderValues(reading, result);
  const { low, high } = interval ?? {};
  return {
    name: read.name,
    value: `${read.comparator ?? ''}${read.value}`,
    unit: sayUnit(read.unit),
    interval:
      interval === undefined
        ? ''
        : `${low ?? ''}${low !== undefined && high !== undefined ? ' - ' : low === undefined ? 'up to ' : ' and more'}${high ?? ''}${interval.own ? '' : ' *'}`,
    flag: flag === undefined ? 'not judged' : FLAGS[flag],
    before: older,
    change: change
      ? `${change.percent > 0 ? '+' : ''}${change.percent.toFixed(0)} %${change.real ? ', real' : ', within variation'}`
      : '',
  };
}

function olderValues({ request }: PanelReading, { read }: PanelResult): SheetRow['before'] {
  const key = read.known?.analyte.key;
  if (key === undefined) return [];
  const { sex } = request.athlete;
  const present = { drawn: request.drawn, values: request.values };
  const panels = [...(request.earlier ?? []), present].flatMap(({ drawn, values }, index) => {
    const outcome = readPanelValues(values, drawn, `panels.${index}`, sex);
    return outcome.ok && analytesIn([outcome.value]).includes(key) ? [outcome.value] : [];
  });
  const points = analyteTrend(panels, key, sex)?.points.slice(0, -1).reverse() ?? [];
  return points.slice(0, OLDER_VALUES).map(({ date, value, comparator }) => ({
    date,
    value: `${comparator ?? ''}${Number(value.toPrecision(4))}`,
  }));
}
