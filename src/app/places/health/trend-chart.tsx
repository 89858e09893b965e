import type { JSX } from 'preact';
import type { AnalyteTrend, TrendPoint } from '#core/health/panel/analyte-trend.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { intervalWords, unitSign } from './lab-words.ts';

/**
 * Values over the panels. The band is where the newest would still be wandering: the reference change value around the
 * one before it. The levels are the ends of the interval.
 */
export function TrendChart({ trend }: { readonly trend: AnalyteTrend }): JSX.Element {
  const { points, rcvPercent, interval, unit, name } = trend;
  const dots = points.map((point) => ({ day: parseDate(point.date) ?? 0, value: point.value }));
  const corridor = corridorOf(points, rcvPercent);
  const [first, last] = [dots[0]?.day ?? 0, dots.at(-1)?.day ?? 0];
  return (
    <TimeChart
      title={name}
      unit={unitSign(unit)}
      decimals={decimalsOf(points)}
      sentence={sentenceOf(trend)}
      from={first - 7}
      to={last + 7}
      lines={[{ name: 'Measured', look: 'solid', points: dots }]}
      dots={[{ name: 'Panels', points: dots }]}
      bands={corridor.length > 0 ? [{ name: 'Still wandering', points: corridor }] : []}
      levels={[
        ...(interval?.low === undefined ? [] : [{ value: interval.low, words: 'lower end' }]),
        ...(interval?.high === undefined ? [] : [{ value: interval.high, words: 'upper end' }]),
      ]}
    />
  );
}

function corridorOf(points: readonly TrendPoint[], rcvPercent: number | undefined) {
  const [before, last] = [points.at(-2), points.at(-1)];
  if (!before || !last || rcvPercent === undefined || before.comparator !== undefined) return [];
  const share = rcvPercent / 100;
  const [low, high] = [Math.max(0, before.value * (1 - share)), before.value * (1 + share)];
  return [before, last].map(({ date }) => ({ day: parseDate(date) ?? 0, low, high }));
}

export function decimalsOf(points: readonly TrendPoint[]): number {
  const least = Math.min(...points.map(({ value }) => Math.abs(value)).filter((value) => value > 0));
  return least >= 100 || !Number.isFinite(least) ? 0 : least >= 10 ? 1 : 2;
}

function sentenceOf({ points, rcvPercent, interval, unit, name }: AnalyteTrend): string {
  const last = points.at(-1);
  const change = last?.change;
  const against = interval === undefined ? '' : `; the interval is ${intervalWords(interval)}`;
  if (!last) return '';
  const value = `${last.comparator ?? ''}${Number(last.value.toPrecision(4))} ${unitSign(unit)}`;
  if (!change || rcvPercent === undefined)
    return `${name} was ${value} on ${dayAndMonth(last.date)}${against}.`;
  const verdict = change.real ? 'a real change' : 'no more than wandering';
  return `${name} was ${value} on ${dayAndMonth(last.date)}, ${writeNumber(change.percent, 0, true)} % since the panel before: ${verdict}, for it takes ${rcvPercent.toFixed(0)} %${against}.`;
}
