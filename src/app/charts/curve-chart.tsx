import type { JSX } from 'preact';
import { writeNumber } from '../parts/write-number.ts';
import { niceTicks } from './kernel/ticks.ts';
import { Plot } from './plot.tsx';
import type { PlotData, PlotLine } from './plot-data.ts';

export interface CurveChartProps {
  readonly title: string;
  readonly sentence: string;
  readonly x: { readonly label: string; readonly unit: string; readonly decimals?: number | undefined };
  readonly y: { readonly label: string; readonly unit: string; readonly decimals?: number | undefined };
  readonly lines: readonly PlotLine[];
  readonly bands?: PlotData['bands'] | undefined;
  readonly dots?: PlotData['dots'] | undefined;
  readonly marks?: readonly { readonly x: number; readonly words: string }[] | undefined;
  readonly levels?: PlotData['levels'] | undefined;
  /** The vertical axis need not hold zero. */
  readonly freeAxis?: boolean | undefined;
}

/** One quantity over another: torque over the angle of a machine, reps over load. */
export function CurveChart(props: CurveChartProps): JSX.Element {
  const { x, y } = props;
  // A degree sign stands close to its number; other units are written with a space.
  const xUnit = x.unit === '°' ? x.unit : ` ${x.unit}`;
  const nameX = (value: number): string => `${writeNumber(value, x.decimals ?? 0, false)}${xUnit}`;
  return (
    <Plot
      title={props.title}
      sentence={props.sentence}
      unit={y.unit}
      data={{
        lines: props.lines,
        bands: props.bands ?? [],
        dots: props.dots ?? [],
        marks: props.marks ?? [],
        levels: props.levels ?? [],
      }}
      fromZero={props.freeAxis !== true}
      xTicks={niceTicks}
      nameTick={nameX}
      xName={x.label}
      nameX={nameX}
      writeY={(value) => writeNumber(value, y.decimals ?? 0, false)}
    />
  );
}
