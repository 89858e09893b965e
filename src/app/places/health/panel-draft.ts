import * as v from 'valibot';
import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import type { DrawnPanel } from '#core/health/fhir/draft-to-panel.ts';
import { acceptedUnits } from '#core/health/panel/convert-lab-value.ts';
import { analyteByName } from '#core/health/panel/find-analyte.ts';
import type { PanelRequest } from '#core/health/panel/panel-request.ts';
import { readPanel } from '#core/health/panel/read-panel.ts';
import { readValue } from '#core/health/panel/read-value.ts';
import type { PanelCaution } from '#core/health/panel/reading.ts';
import { answered, refused, type Outcome, type Problem } from '#core/problems/problem.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';

type Sex = 'female' | 'male';

const value = v.strictObject({
  loinc: v.optional(v.string()),
  name: v.string(),
  /** As typed: a number, or a bound such as "<0.1". */
  text: v.string(),
  unit: v.string(),
  low: v.optional(v.number()),
  high: v.optional(v.number()),
  unitConfirmed: v.boolean(),
});
export type ValueDraft = v.InferOutput<typeof value>;

/** A panel as it is being copied from the report. */
export const panelDraft = v.strictObject({
  laboratory: v.string(),
  date: v.string(),
  atMinutes: v.optional(v.number()),
  fastedHours: v.optional(v.number()),
  hoursSinceHardTraining: v.optional(v.number()),
  haemolysed: v.boolean(),
  values: v.array(value),
});
export type PanelDraft = v.InferOutput<typeof panelDraft>;

export function emptyPanel(today: string, laboratory = ''): PanelDraft {
  return { laboratory, date: today, haemolysed: false, values: [] };
}

/** A line for an analyte: unit and interval as the laboratory printed them last, else the first unit of the table. */
export function lineFor(name: string, last: LabValue | undefined): ValueDraft {
  const analyte = analyteByName(name)?.analyte;
  return {
    name: analyte?.name ?? name,
    text: '',
    unit: last?.unit ?? analyte?.unit ?? '',
    ...(last?.interval?.low === undefined ? {} : { low: last.interval.low }),
    ...(last?.interval?.high === undefined ? {} : { high: last.interval.high }),
    unitConfirmed: false,
  };
}

/**
 * A line in another unit: an interval belongs to the unit it was printed in, so it goes with it, unless the laboratory printed
 * one in the new unit before. A line that had no unit keeps its interval.
 */
export function withUnit(line: ValueDraft, unit: string, last?: LabValue): ValueDraft {
  if (unit === line.unit || line.unit === '') return { ...line, unit, unitConfirmed: false };
  const interval = last?.unit === unit ? last.interval : undefined;
  return { ...line, unit, unitConfirmed: false, low: interval?.low, high: interval?.high };
}

/** A panel of the journal, to be corrected. */
export function draftOfPanel(panel: DrawnPanel): PanelDraft {
  const { date, time, fastedHours, hoursSinceHardTraining, haemolysed } = panel.drawn;
  const at = time === undefined ? undefined : parseClock(time);
  return {
    laboratory: panel.laboratory ?? '',
    date,
    ...(at === undefined ? {} : { atMinutes: at }),
    ...(fastedHours === undefined ? {} : { fastedHours }),
    ...(hoursSinceHardTraining === undefined ? {} : { hoursSinceHardTraining }),
    haemolysed: haemolysed === true,
    values: panel.values.map(draftOfValue),
  };
}

function draftOfValue(given: LabValue): ValueDraft {
  return {
    ...(given.loinc === undefined ? {} : { loinc: given.loinc }),
    name: given.name ?? given.loinc ?? '',
    text: `${given.comparator ?? ''}${given.value}`,
    unit: given.unit,
    ...(given.interval?.low === undefined ? {} : { low: given.interval.low }),
    ...(given.interval?.high === undefined ? {} : { high: given.interval.high }),
    unitConfirmed: given.unitConfirmed === true,
  };
}

/** What is wrong with one line, and which units would make its number ordinary. */
export interface LineFault {
  readonly message: string;
  readonly remedy: string;
  /** The number is odd in this unit: it is asked whether another was meant. */
  readonly asks: boolean;
  readonly units: readonly string[];
}

/** A line read: the value as the journal keeps it, or what is asked about it. An empty line is not an answer. */
export function readLine(line: ValueDraft, place: number, sex: Sex): Outcome<LabValue> {
  const text = line.text.trim().replace(',', '.').replace('≤', '<=').replace('≥', '>=').replace(/\s+/g, '');
  if (text === '')
    return refused(
      'health/no-value',
      `values.${place}.text`,
      `${line.name} has no value.`,
      'Type it as printed, or take the line off.',
    );
  const bound = /^(<=|<|>=|>)?(\d{1,9}(?:\.\d{1,9})?)$/.exec(text);
  if (/^-\d/.test(text))
    return refused(
      'health/below-nothing',
      `values.${place}.text`,
      `"${line.text}" of ${line.name} is below 0.`,
      'Compare it with the report; a bound is typed as <0.1.',
    );
  if (!bound)
    return refused(
      'health/not-a-value',
      `values.${place}.text`,
      `"${line.text}" of ${line.name} is no number.`,
      'Type a number, or a bound such as <0.1.',
    );
  if (line.unit.trim() === '')
    return refused(
      'health/no-unit',
      `values.${place}.unit`,
      `${line.name} has no unit.`,
      'Choose the unit that the report prints.',
    );
  if (line.low !== undefined && line.high !== undefined && line.low > line.high)
    return refused(
      'health/interval-turned',
      `values.${place}.low`,
      `The interval of ${line.name} begins at ${line.low} and ends at ${line.high}.`,
      'Give the lower end first.',
    );
  const given: LabValue = {
    ...(line.loinc === undefined ? {} : { loinc: line.loinc }),
    name: line.name,
    value: bound[1] === undefined ? Number(bound[2]) : text,
    unit: line.unit.trim(),
    ...(line.low === undefined && line.high === undefined
      ? {}
      : {
          interval: {
            ...(line.low === undefined ? {} : { low: line.low }),
            ...(line.high === undefined ? {} : { high: line.high }),
          },
        }),
    ...(line.unitConfirmed ? { unitConfirmed: true } : {}),
  };
  const read = readValue(given, place, 'values', sex);
  return read.ok ? answered(given) : read;
}

/** What stands beside a line, in words for the screen; undefined where it reads, or is still empty. */
export function lineFault(line: ValueDraft, place: number, sex: Sex): LineFault | undefined {
  if (line.text.trim() === '') return undefined;
  const read = readLine(line, place, sex);
  if (read.ok) return undefined;
  const { code, message, remedy } = read.problem;
  const asks = code === 'health/unit-suspect' || code === 'health/value-implausible';
  const analyte = analyteByName(line.name)?.analyte;
  const units = analyte ? acceptedUnits(analyte).filter((unit) => unit !== line.unit) : [];
  return {
    message,
    remedy: asks ? 'Compare number and unit with the report.' : remedy,
    asks,
    units: units.filter((unit) => readLine({ ...line, unit, unitConfirmed: false }, place, sex).ok),
  };
}

/** What needs care now among the lines that read: it does not wait until the others are settled (HLT-65). */
export function urgentIn(typed: PanelDraft, athlete: PanelRequest['athlete']): readonly PanelCaution[] {
  const values = typed.values.flatMap((line, place) => {
    const read = readLine(line, place, athlete.sex);
    return read.ok ? [read.value] : [];
  });
  const reading = readPanel({ athlete, drawn: { date: typed.date }, taking: [], values });
  return reading.ok ? reading.value.cautions.filter(({ urgent }) => urgent) : [];
}

/** The panel as the journal keeps it. Empty lines of a list taken over are left out; every other fault is named. */
export function readPanelDraft(
  typed: PanelDraft,
  sex: Sex,
  known: Pick<DrawnPanel, 'panel' | 'taking' | 'origin' | 'report'>,
): { readonly panel?: DrawnPanel; readonly problems: readonly Problem[] } {
  const lines = typed.values
    .map((line, place) => ({ line, place }))
    .filter(({ line }) => line.text.trim() !== '');
  const read = lines.map(({ line, place }) => readLine(line, place, sex));
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : [forScreen(outcome.problem)]));
  if (lines.length === 0)
    problems.push({
      code: 'health/empty-panel',
      path: 'values',
      message: 'No value is entered yet.',
      remedy: 'Add at least one as the report prints it.',
    });
  if (problems.length > 0) return { problems };
  const laboratory = typed.laboratory.trim();
  const { date, atMinutes, fastedHours, hoursSinceHardTraining } = typed;
  return {
    panel: {
      ...known,
      ...(laboratory === '' ? {} : { laboratory }),
      drawn: {
        date,
        ...(atMinutes === undefined ? {} : { time: formatClock(atMinutes) }),
        ...(fastedHours === undefined ? {} : { fastedHours }),
        ...(hoursSinceHardTraining === undefined ? {} : { hoursSinceHardTraining }),
        ...(typed.haemolysed ? { haemolysed: true } : {}),
      },
      values: read.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])),
    },
    problems: [],
  };
}

/** The doors speak of fields of a file; a screen speaks of what can be tapped. */
function forScreen(problem: Problem): Problem {
  const asks = problem.code === 'health/unit-suspect' || problem.code === 'health/value-implausible';
  return asks ? { ...problem, remedy: 'Answer the question beside it.' } : problem;
}

/** A panel of the journal drawn on the same day with the same values: entered a second time. */
export function sameAs(panel: DrawnPanel, kept: readonly DrawnPanel[]): DrawnPanel | undefined {
  const print = ({ drawn, values }: DrawnPanel) =>
    `${drawn.date} ${values
      .map(({ name, value: found, unit }) => `${name} ${found} ${unit}`)
      .sort()
      .join(';')}`;
  return kept.find((other) => other.panel !== panel.panel && print(other) === print(panel));
}
