import type { JSX } from 'preact';
import type { DayNumber } from '#core/units/quantities.ts';
import { writeNumber } from '../parts/write-number.ts';
import { weekTicks } from './kernel/ticks.ts';
import { nameDay, nameShortDay } from './name-day.ts';
import { Plot } from './plot.tsx';
import type { LineLook, PlotData } from './plot-data.ts';

export interface TimeChartProps {
  readonly title: string;
  readonly unit: string;
  /** What the picture says, in a sentence. */
  readonly sentence: string;
  readonly decimals?: number | undefined;
  readonly from?: DayNumber | undefined;
  readonly to?: DayNumber | undefined;
  readonly fromZero?: boolean | undefined;
  readonly lines?:
    | readonly {
        readonly name: string;
        readonly look: LineLook;
        readonly smooth?: boolean | undefined;
        readonly points: readonly { readonly day: DayNumber; readonly value: number }[];
      }[]
    | undefined;
  readonly dots?:
    | readonly {
        readonly name: string;
        readonly points: readonly {
          readonly day: DayNumber;
          readonly value: number;
          readonly sd?: number | undefined;
        }[];
      }[]
    | undefined;
  /** The widest first. */
  readonly bands?:
    | readonly {
        readonly name: string;
        readonly points: readonly { readonly day: DayNumber; readonly low: number; readonly high: number }[];
      }[]
    | undefined;
  readonly marks?: readonly { readonly day: DayNumber; readonly words: string }[] | undefined;
  readonly levels?: readonly { readonly value: number; readonly words: string }[] | undefined;
}

/** Values over days, ticked by ISO weeks, with bands for what is not sure. */
export function TimeChart(props: TimeChartProps): JSX.Element {
  const data = plotData(props);
  const { from, to, decimals = 1 } = props;
  return (
    <Plot
      title={props.title}
      sentence={props.sentence}
      unit={props.unit}
      data={data}
      fromZero={props.fromZero}
      xDomain={from === undefined || to === undefined ? undefined : [from, to]}
      xTicks={weekTicks}
      nameTick={nameShortDay}
      xName="Day"
      nameX={nameDay}
      writeY={(value) => writeNumber(value, decimals, false)}
    />
  );
}

function plotData(props: TimeChartProps): PlotData {
  return {
    lines: (props.lines ?? []).map((line) => ({
      ...line,
      points: line.points.map(({ day, value }) => ({ x: day, y: value })),
    })),
    dots: (props.dots ?? []).map(({ name, points }) => ({
      name,
      points: points.map(({ day, value, sd }) => ({ x: day, y: value, sd })),
    })),
    bands: (props.bands ?? []).map(({ name, points }) => ({
      name,
      points: points.map(({ day, low, high }) => ({ x: day, low, high })),
    })),
    marks: (props.marks ?? []).map(({ day, words }) => ({ x: day, words })),
    levels: props.levels ?? [],
  };
}
