import { linearScale, spanOf } from './kernel/linear-scale.ts';
import type { LinearScale } from './kernel/linear-scale.ts';
import { niceTicks, tickDecimals } from './kernel/ticks.ts';
import { allX, allY } from './plot-data.ts';
import type { PlotData } from './plot-data.ts';
import { writeNumber } from '../parts/write-number.ts';

export interface PlotAxes {
  readonly xDomain?: readonly [number, number] | undefined;
  /** Includes zero on the vertical axis: for amounts, not for body mass. */
  readonly fromZero?: boolean | undefined;
  readonly xTicks: (domain: readonly [number, number], most: number) => readonly number[];
  readonly nameTick: (x: number) => string;
}

export interface PlotTick {
  readonly at: number;
  readonly words: string;
  /** Words at the paper's edge turn inwards. */
  readonly anchor: 'middle' | 'end';
}

/** Where everything stands on a paper of this width, in px. */
export interface PlotLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: LinearScale;
  readonly y: LinearScale;
  readonly xTicks: readonly PlotTick[];
  readonly yTicks: readonly PlotTick[];
}

const LABEL_PX = 64;
const DIGIT_PX = 8.5;
const TOP_PX = 26;

export function layOut(data: PlotData, axes: PlotAxes, width: number): PlotLayout {
  const height = Math.round(Math.min(360, Math.max(240, width * 0.5)));
  const yValues = axes.fromZero === true ? [0, ...allY(data)] : allY(data);
  const yDomain = widened(spanOf(yValues, 0.05), axes.fromZero === true);
  const ticks = niceTicks(yDomain, 5);
  const decimals = tickDecimals(ticks);
  const yWords = ticks.map((tick) => writeNumber(tick, decimals, false));
  const left = Math.ceil(Math.max(...yWords.map((words) => words.length)) * DIGIT_PX) + 10;
  const [right, bottom] = [width - 10, height - 30];
  const xDomain = axes.xDomain ?? spanOf(allX(data), 0);
  const x = linearScale(xDomain, [left + 8, right - 8]);
  const y = linearScale(yDomain, [bottom, TOP_PX]);
  const places = axes.xTicks(xDomain, Math.max(2, Math.floor((right - left) / LABEL_PX)));
  return {
    width,
    height,
    left,
    right,
    top: TOP_PX,
    bottom,
    x,
    y,
    xTicks: places.map((place) => ({
      at: x(place),
      words: axes.nameTick(place),
      anchor: x(place) > width - LABEL_PX / 2 ? 'end' : 'middle',
    })),
    yTicks: ticks.map((tick, index) => ({ at: y(tick), words: yWords[index] ?? '', anchor: 'end' })),
  };
}

/** An axis from zero starts at zero exactly. */
function widened(domain: readonly [number, number], fromZero: boolean): readonly [number, number] {
  return fromZero && domain[0] < 0 && domain[0] > -0.1 * domain[1] ? [0, domain[1]] : domain;
}
