import { biologicalVariation } from '#core/tables/biological-variation.ts';
import type { Sex } from '../equations/filtration.ts';
import { referenceChange } from '../equations/reference-change.ts';
import { fromConventional } from './convert-lab-value.ts';
import { analyteOf } from './find-analyte.ts';
import { intervalOf, positionIn } from './judge-value.ts';
import type { ReadPanel } from './read-panel-values.ts';
import type { ReadValue } from './read-value.ts';
import type { Position, UsedInterval } from './reading.ts';

export interface TrendPoint {
  readonly date: string;
  readonly time?: string;
  /** In the trend's unit. */
  readonly value: number;
  readonly comparator?: ReadValue['comparator'];
  /** In the trend's one interval. */
  readonly position?: Position;
  /** Its own laboratory printed another interval: another method may lie behind it. */
  readonly otherList: boolean;
  /** Against the point before, where both are plain numbers. */
  readonly change?: { readonly percent: number; readonly real: boolean };
}

/** One analyte over all panels, in one unit and against one interval: that of the newest panel. */
export interface AnalyteTrend {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly interval?: UsedInterval;
  /** Oldest first. */
  readonly points: readonly TrendPoint[];
  /** Less than this, up or down, is wandering; absent where it is not known. */
  readonly rcvPercent?: number;
}

/** The trend of an analyte (HLT-07), or undefined where no panel has it. Lists of intervals are never mixed. */
export function analyteTrend(panels: readonly ReadPanel[], key: string, sex: Sex): AnalyteTrend | undefined {
  const found = panels
    .flatMap((panel) => {
      const read = panel.shown(key);
      return read?.known ? [{ drawn: panel.drawn, read, conventional: read.known.conventional }] : [];
    })
    .sort((a, b) => (momentOf(a.drawn) < momentOf(b.drawn) ? -1 : 1));
  const newest = found.at(-1);
  if (!newest) return undefined;
  const analyte = analyteOf(key);
  const { unit } = newest.read;
  const interval = intervalOf(newest.read, sex);
  const variation = biologicalVariation.get(key);
  const rcvPercent =
    variation && referenceChange(variation.analyticalPercent, variation.withinPercent).rcvPercent;
  const points = found.map(({ drawn, read, conventional }, index): TrendPoint => {
    const value = read === newest.read ? read.value : fromConventional(analyte, conventional, unit);
    const position = interval && positionIn(value, read.comparator, interval);
    const before = found[index - 1];
    const change = before && rcvPercent !== undefined ? changeOf(before.read, read, rcvPercent) : undefined;
    return {
      date: drawn.date,
      ...(drawn.time === undefined ? {} : { time: drawn.time }),
      value,
      ...(read.comparator === undefined ? {} : { comparator: read.comparator }),
      ...(position === undefined ? {} : { position }),
      otherList: !sameList(read, newest.read),
      ...(change ? { change } : {}),
    };
  });
  return {
    key,
    name: analyte.name,
    unit,
    ...(interval ? { interval } : {}),
    points,
    ...(rcvPercent === undefined ? {} : { rcvPercent }),
  };
}

/** Analytes that at least one panel has, in the order of the newest panel that has each. */
export function analytesIn(panels: readonly ReadPanel[]): string[] {
  const keys = panels.flatMap((panel) =>
    panel.values.flatMap((value) => (value.known ? [value.known.analyte.key] : [])),
  );
  return [...new Set(keys)];
}

function changeOf(before: ReadValue, now: ReadValue, rcvPercent: number): TrendPoint['change'] {
  const [a, b] = [before.known?.si, now.known?.si];
  if (!a || b === undefined || before.comparator || now.comparator) return undefined;
  const percent = ((b - a) / a) * 100;
  return { percent, real: Math.abs(percent) > rcvPercent };
}

function sameList(a: ReadValue, b: ReadValue): boolean {
  if (!a.ownInterval && !b.ownInterval) return true;
  return (
    a.unit === b.unit &&
    a.ownInterval?.low === b.ownInterval?.low &&
    a.ownInterval?.high === b.ownInterval?.high
  );
}

function momentOf(drawn: ReadPanel['drawn']): string {
  return `${drawn.date} ${drawn.time ?? '00:00'}`;
}
