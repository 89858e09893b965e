import { parseDate } from '#core/units/civil-date.ts';
import type { Example } from '../gallery/example.ts';
import { BarRows } from './bar-rows.tsx';
import { CurveChart } from './curve-chart.tsx';
import { TimeChart } from './time-chart.tsx';

const FIRST = parseDate('2027-01-04') ?? 0;
const PAST = 42;
const SHOW = 98;

const trend = (day: number): number => 84.2 - 0.085 * day + 0.5 * Math.sin(day / 9);
const days = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_unused, index) => from + index);

export const examples: readonly Example[] = [
  {
    name: 'body mass: weighed, estimated, forecast',
    show: () => (
      <TimeChart
        title="Body mass"
        unit="kg"
        decimals={1}
        sentence="Down 0.6 kg a week; the show lands between 74.9 and 77.2 kg."
        from={FIRST}
        to={FIRST + SHOW}
        dots={[
          {
            name: 'Weighed',
            points: days(0, PAST)
              .filter((day) => day % 5 !== 3)
              .map((day) => ({ day: FIRST + day, value: trend(day) + 0.7 * Math.sin(day * 2.3) })),
          },
        ]}
        lines={[
          {
            name: 'Estimate',
            look: 'solid',
            points: days(0, PAST).map((day) => ({ day: FIRST + day, value: trend(day) })),
          },
          {
            name: 'Forecast',
            look: 'dashed',
            points: days(PAST, SHOW).map((day) => ({ day: FIRST + day, value: trend(day) })),
          },
        ]}
        bands={[
          {
            name: '9 of 10',
            points: days(PAST, SHOW).map((day) => ({
              day: FIRST + day,
              low: trend(day) - 0.25 - 0.016 * (day - PAST),
              high: trend(day) + 0.25 + 0.016 * (day - PAST),
            })),
          },
          {
            name: 'half of the time',
            points: days(PAST, SHOW).map((day) => ({
              day: FIRST + day,
              low: trend(day) - 0.1 - 0.006 * (day - PAST),
              high: trend(day) + 0.1 + 0.006 * (day - PAST),
            })),
          },
        ]}
        marks={[
          { day: FIRST + PAST, words: 'today' },
          { day: FIRST + SHOW, words: 'show' },
        ]}
        levels={[{ value: 76, words: 'class limit 76.0' }]}
      />
    ),
  },
  {
    name: 'points with what is not sure',
    show: () => (
      <TimeChart
        title="Body fat"
        unit="%"
        decimals={1}
        sentence="From 13.8 to 10.6 % in six weeks."
        dots={[
          {
            name: 'Folds',
            points: [0, 14, 28, 42].map((day) => ({ day: FIRST + day, value: 13.8 - day * 0.076, sd: 1.1 })),
          },
        ]}
      />
    ),
  },
  {
    name: 'torque of a machine at two peg loadings',
    show: () => (
      <CurveChart
        title="Torque at the lever"
        sentence="Heaviest at 62 degrees; the second peg moves the peak to the start."
        x={{ label: 'Angle', unit: '°' }}
        y={{ label: 'Torque', unit: 'Nm' }}
        lines={[
          {
            name: 'Outer peg',
            look: 'solid',
            smooth: true,
            points: days(0, 18).map((i) => ({ x: i * 5, y: 118 * Math.cos(((i * 5 - 62) * Math.PI) / 180) })),
          },
          {
            name: 'Inner peg',
            look: 'dashed',
            smooth: true,
            points: days(0, 18).map((i) => ({ x: i * 5, y: 92 * Math.cos(((i * 5 - 20) * Math.PI) / 180) })),
          },
        ]}
        marks={[{ x: 62, words: 'peak' }]}
      />
    ),
  },
  {
    name: 'sets of the week',
    show: () => (
      <BarRows
        title="Hard sets this week"
        unit="sets"
        rows={[
          { name: 'Quadriceps', value: 9, planned: 12 },
          { name: 'Back', value: 14, planned: 14, detail: 'width and thickness' },
          { name: 'Chest', value: 8, planned: 10 },
          { name: 'Calves', value: 3 },
        ]}
      />
    ),
  },
];
