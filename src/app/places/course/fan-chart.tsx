import type { JSX } from 'preact';
import type { Fan } from '#core/course/fan.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { weeksOut } from '#core/words/dates.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { weighIns } from '../../views/body-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { fanBand, fanLine, type FanQuantity, laidLine, pastLine, targetLevels } from './fan-series.ts';

export const QUANTITY_NAMES: Readonly<Record<FanQuantity, string>> = {
  bodyFatPercent: 'Body fat',
  massKg: 'Body mass',
  fatKg: 'Fat',
  leanKg: 'Lean',
};

interface FanChartProps {
  readonly ask: CourseAsk;
  readonly now: CourseNow;
  readonly quantity: FanQuantity;
  /** A change tried out: its fan takes the place of the plan's, whose middle stays for comparison. */
  readonly other?: Fan | undefined;
}

/** The weeks behind and the fan of paths ahead, to the show. */
export function FanChart({ ask, now, quantity, other }: FanChartProps): JSX.Element {
  const { unit: mass, shown } = massUnit.value;
  const percent = quantity === 'bodyFatPercent';
  const unit = percent ? '%' : mass;
  const scale = percent ? (value: number) => value : shown;
  const fan = other ?? now.fan;
  const past = pastLine(now, quantity, shown);
  const from = past[0]?.day ?? parseDate(now.asOf) ?? 0;
  const laid = laidLine(ask, quantity, from, scale);
  const showDay = parseDate(ask.show.date);
  const readings =
    quantity === 'massKg'
      ? weighIns.value.flatMap(({ day: date, massKg }) => {
          const day = parseDate(date) ?? 0;
          return day < from ? [] : [{ day, value: shown(massKg) }];
        })
      : [];
  return (
    <TimeChart
      title={`${QUANTITY_NAMES[quantity]} to the show`}
      unit={unit}
      decimals={1}
      sentence={endWords(fan, quantity, ask, unit, scale)}
      bands={[
        { name: '9 times of 10', points: fanBand(fan, quantity, ['q05', 'q95'], scale) },
        { name: 'every other time', points: fanBand(fan, quantity, ['q25', 'q75'], scale) },
      ]}
      lines={[
        { name: 'Body', look: 'solid', points: past },
        { name: other ? 'With the change' : 'Plan', look: 'dashed', points: fanLine(fan, quantity, scale) },
        ...(other
          ? [{ name: 'Unchanged', look: 'dotted' as const, points: fanLine(now.fan, quantity, scale) }]
          : laid.length > 1
            ? [{ name: 'As laid', look: 'dotted' as const, points: laid }]
            : []),
      ]}
      dots={readings.length > 0 ? [{ name: 'Scale', points: readings }] : []}
      marks={showDay === undefined ? [] : [{ day: showDay, words: 'show' }]}
      levels={targetLevels(ask, quantity, scale)}
    />
  );
}

function endWords(
  fan: Fan,
  quantity: FanQuantity,
  { today, show }: CourseAsk,
  unit: string,
  scale: (kg: number) => number,
): string {
  const end = fan.dates.at(-1)?.[quantity];
  if (!end) return 'The show is today.';
  const [mean, low, high] = [end.mean, end.q05, end.q95].map((value) => scale(value).toFixed(1));
  return `${weeksOut(today, show.date)}: lands at ${mean} ${unit}, 9 times of 10 between ${low} and ${high}.`;
}
