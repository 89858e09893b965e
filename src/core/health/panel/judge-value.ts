import { citation } from '#core/tables/sources.ts';
import { labIntervals } from '#core/tables/lab-intervals.ts';
import { urgentValues, type UrgentValue } from '#core/tables/urgent-values.ts';
import type { Sex } from '../equations/filtration.ts';
import { fromConventional } from './convert-lab-value.ts';
import type { ReadValue } from './read-value.ts';
import type { Flag, Position, UsedInterval } from './reading.ts';

/** Binary dust of a conversion must not push a value over the edge it lies on. */
const DUST = 1e-9;

/** The laboratory's own interval first, else the table's in the value's unit, else none. */
export function intervalOf(read: ReadValue, sex: Sex): UsedInterval | undefined {
  if (read.ownInterval) {
    return { ...read.ownInterval, own: true, source: 'the laboratory that ran the sample' };
  }
  const known = read.known;
  const row = known && labIntervals.get(known.analyte.key);
  if (!known || !row) return undefined;
  const { low, high } = row[sex];
  if (low === undefined && high === undefined) return undefined;
  const inUnit = (end: number) =>
    Number(fromConventional(known.analyte, end, read.unit, known.massScale).toPrecision(6));
  return {
    ...(low === undefined ? {} : { low: inUnit(low) }),
    ...(high === undefined ? {} : { high: inUnit(high) }),
    own: false,
    source: citation(row.source),
    ...(row.note === undefined ? {} : { note: row.note }),
  };
}

/** Where a value stands. A bound ("<0.1") stands somewhere only if every value it allows stands there. */
export function positionIn(
  value: number,
  comparator: ReadValue['comparator'],
  interval: { readonly low?: number; readonly high?: number },
): Position | undefined {
  const low = interval.low ?? Number.NEGATIVE_INFINITY;
  const high = interval.high ?? Number.POSITIVE_INFINITY;
  const below = (end: number) => value < end - Math.abs(end) * DUST;
  const above = (end: number) => value > end + Math.abs(end) * DUST;
  if (comparator === undefined) return below(low) ? 'low' : above(high) ? 'high' : 'in';
  if (comparator.startsWith('<')) {
    if (comparator === '<' ? value <= low : below(low)) return 'low';
    return low <= 0 && !above(high) ? 'in' : undefined;
  }
  if (comparator === '>' ? value >= high : above(high)) return 'high';
  return high === Number.POSITIVE_INFINITY && !below(low) ? 'in' : undefined;
}

/** The urgent limit a value has reached, judged in the conventional unit whatever interval the laboratory prints. */
export function urgencyOf(read: ReadValue): UrgentValue | undefined {
  const known = read.known;
  const limit = known && urgentValues[known.analyte.key];
  if (!known || !limit) return undefined;
  const value = known.conventional;
  const falls =
    limit.low !== undefined && value <= limit.low * (1 + DUST) && !read.comparator?.startsWith('>');
  const rises =
    limit.high !== undefined && value >= limit.high * (1 - DUST) && !read.comparator?.startsWith('<');
  return falls || rises ? limit : undefined;
}

export function flagOf(position: Position | undefined, urgent: boolean): Flag | undefined {
  return urgent ? 'seek care now' : position;
}
