import type { JSX } from 'preact';
import { bandPath, linePath, monotonePath } from './kernel/paths.ts';
import type { PlotBand, PlotData, PlotDots, PlotLine } from './plot-data.ts';
import type { PlotLayout } from './plot-layout.ts';

export interface PlotDrawingProps {
  readonly title: string;
  readonly sentence: string;
  readonly data: PlotData;
  readonly layout: PlotLayout;
  readonly id: string;
  readonly cursorX: number | undefined;
  readonly onTouch?: ((event: MouseEvent & { readonly currentTarget: SVGSVGElement }) => void) | undefined;
}

/** The picture alone: one SVG, the same on screen, on paper and as text. */
export function PlotDrawing(props: PlotDrawingProps): JSX.Element {
  const { layout, data, id } = props;
  return (
    <svg
      class="plot-drawing"
      width={layout.width}
      height={layout.height}
      viewBox={`0 0 ${layout.width} ${layout.height}`}
      role="img"
      aria-labelledby={`${id}-name ${id}-words`}
      onClick={props.onTouch}
    >
      <title id={`${id}-name`}>{props.title}</title>
      <desc id={`${id}-words`}>{props.sentence}</desc>
      <Grid layout={layout} />
      {data.bands.map((band, index) => (
        <Band key={band.name} band={band} layout={layout} outer={index === 0 && data.bands.length > 1} />
      ))}
      <Marks data={data} layout={layout} />
      {data.lines.map((line) => (
        <Line key={line.name} line={line} layout={layout} />
      ))}
      {data.dots.map((dots) => (
        <Dots key={dots.name} dots={dots} layout={layout} />
      ))}
      {props.cursorX !== undefined && (
        <line
          class="plot-cursor"
          x1={layout.x(props.cursorX)}
          x2={layout.x(props.cursorX)}
          y1={layout.top}
          y2={layout.bottom}
        />
      )}
    </svg>
  );
}

function Grid({ layout }: { readonly layout: PlotLayout }): JSX.Element {
  const { left, right, bottom } = layout;
  return (
    <g>
      {layout.yTicks.map(({ at, words }) => (
        <g key={words}>
          <line class="plot-grid" x1={left} x2={right} y1={at} y2={at} />
          <text class="plot-label" x={left - 8} y={at + 5} text-anchor="end">
            {words}
          </text>
        </g>
      ))}
      <line class="plot-axis" x1={left} x2={right} y1={bottom} y2={bottom} />
      {layout.xTicks.map(({ at, words, anchor }) => (
        <g key={at}>
          <line class="plot-axis" x1={at} x2={at} y1={bottom} y2={bottom + 7} />
          <text class="plot-label" x={at} y={bottom + 24} text-anchor={anchor}>
            {words}
          </text>
        </g>
      ))}
    </g>
  );
}

function Marks({ data, layout }: { readonly data: PlotData; readonly layout: PlotLayout }): JSX.Element {
  const { left, right, top, bottom } = layout;
  return (
    <g>
      {data.levels.map(({ value, words }) => (
        <line key={words} class="plot-level" x1={left} x2={right} y1={layout.y(value)} y2={layout.y(value)} />
      ))}
      {data.marks.map(({ x, words }) => {
        const at = layout.x(x);
        const late = at > (left + right) / 2;
        return (
          <g key={`${x} ${words}`}>
            <line class="plot-mark" x1={at} x2={at} y1={top - 6} y2={bottom} />
            <path class="plot-index" d={`M${at - 6} ${top - 14}H${at + 6}L${at} ${top - 5}Z`} />
            <text
              class="plot-words"
              x={late ? at - 10 : at + 10}
              y={top - 7}
              text-anchor={late ? 'end' : 'start'}
            >
              {words}
            </text>
          </g>
        );
      })}
      {data.levels.map(({ value, words }) => (
        <text key={words} class="plot-words" x={left + 4} y={layout.y(value) - 6}>
          {words}
        </text>
      ))}
    </g>
  );
}

function Band(props: {
  readonly band: PlotBand;
  readonly layout: PlotLayout;
  readonly outer: boolean;
}): JSX.Element {
  const { x, y } = props.layout;
  const low = props.band.points.map((point) => ({ x: x(point.x), y: y(point.low) }));
  const high = props.band.points.map((point) => ({ x: x(point.x), y: y(point.high) }));
  return (
    <g class={props.outer ? 'plot-band plot-band-outer' : 'plot-band'}>
      <path class="plot-band-fill" d={bandPath(low, high)} />
      <path class="plot-band-edge" d={linePath(low)} />
      <path class="plot-band-edge" d={linePath(high)} />
    </g>
  );
}

function Line({ line, layout }: { readonly line: PlotLine; readonly layout: PlotLayout }): JSX.Element {
  const spots = line.points.map((point) => ({ x: layout.x(point.x), y: layout.y(point.y) }));
  return (
    <path
      class={`plot-line plot-${line.look}`}
      d={line.smooth === true ? monotonePath(spots) : linePath(spots)}
    />
  );
}

function Dots({ dots, layout }: { readonly dots: PlotDots; readonly layout: PlotLayout }): JSX.Element {
  const radius = dots.points.length > layout.width / 8 ? 1.8 : 2.8;
  return (
    <g>
      {dots.points.map(({ x, y, sd }) => (
        <g key={x}>
          {sd !== undefined && (
            <line
              class="plot-spread"
              x1={layout.x(x)}
              x2={layout.x(x)}
              y1={layout.y(y - sd)}
              y2={layout.y(y + sd)}
            />
          )}
          <circle class="plot-dot" cx={layout.x(x)} cy={layout.y(y)} r={radius} />
        </g>
      ))}
    </g>
  );
}
