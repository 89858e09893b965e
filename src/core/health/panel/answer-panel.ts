import { answered, type Outcome } from '#core/problems/problem.ts';
import { citation } from '#core/tables/sources.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { PanelAnswer } from './panel-request.ts';
import { readPanel } from './read-panel.ts';
import type { PanelResult } from './reading.ts';

/** The `panel` command's answer: the reading, written flat. */
export function answerPanel(input: unknown): Outcome<PanelAnswer> {
  const reading = readPanel(input);
  if (!reading.ok) return reading;
  const { results, derived, cautions, why } = reading.value;
  return answered({
    results: results.map(flatResult),
    derived: derived.map(({ name, value, unit, formula, source }) => ({
      name,
      value: roundTo(value, 4),
      unit,
      formula,
      source: citation(source),
    })),
    cautions: cautions.map(({ words }) => words),
    why: [...why],
  });
}

function flatResult({ read, interval, flag, change, notes }: PanelResult): PanelAnswer['results'][number] {
  const bound = read.comparator === undefined ? {} : { comparator: read.comparator };
  return {
    ...(read.loinc === undefined ? {} : { loinc: read.loinc }),
    name: read.name,
    value: read.value,
    ...bound,
    unit: read.unit,
    ...(read.known ? { si: { value: read.known.si, unit: read.known.analyte.unitSi, ...bound } } : {}),
    ...(interval
      ? {
          interval: {
            ...(interval.low === undefined ? {} : { low: interval.low }),
            ...(interval.high === undefined ? {} : { high: interval.high }),
            source: interval.source,
          },
        }
      : {}),
    ...(flag ? { flag } : {}),
    ...(change
      ? {
          change: {
            percent: roundTo(change.percent, 2),
            rcvPercent: roundTo(change.rcvPercent, 2),
            real: change.real,
          },
        }
      : {}),
    notes: notes.map(({ words }) => words),
  };
}
