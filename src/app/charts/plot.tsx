import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { Button } from '../parts/button.tsx';
import { Table } from '../parts/table.tsx';
import { Arrow } from '../parts/signs.tsx';
import { nearestIndex } from './kernel/paths.ts';
import { allX, valuesAt } from './plot-data.ts';
import type { PlotData } from './plot-data.ts';
import { PlotDrawing } from './plot-drawing.tsx';
import { layOut } from './plot-layout.ts';
import type { PlotAxes } from './plot-layout.ts';
import { PlotLegend } from './plot-legend.tsx';
import './plot.css';
import { useWidth } from './use-width.ts';

export interface PlotProps extends PlotAxes {
  readonly title: string;
  /** What the picture says, in a sentence. */
  readonly sentence: string;
  readonly data: PlotData;
  readonly unit: string;
  readonly xName: string;
  /** Names a place on the horizontal axis: "12 Mar", "45°". */
  readonly nameX: (x: number) => string;
  readonly writeY: (value: number) => string;
}

/** A drawing with its sentence, a cursor for thumb and keyboard, and the same numbers as a table. */
export function Plot(props: PlotProps): JSX.Element {
  const { ref, width } = useWidth(350);
  const [cursor, setCursor] = useState<number | undefined>(undefined);
  const id = useId();
  const places = allX(props.data);
  const at = cursor === undefined ? undefined : places[Math.min(cursor, places.length - 1)];
  const layout = layOut(props.data, props, width);
  const move = (by: number): void => {
    const from = cursor ?? (by > 0 ? -1 : places.length);
    setCursor(Math.max(0, Math.min(places.length - 1, from + by)));
  };
  const touch = (event: MouseEvent & { readonly currentTarget: SVGSVGElement }): void => {
    const box = event.currentTarget.getBoundingClientRect();
    setCursor(nearestIndex(places.map(layout.x), event.clientX - box.left));
  };
  return (
    <figure class="plot" aria-labelledby={`${id}-title`}>
      <figcaption class="plot-caption">
        <span class="plot-title" id={`${id}-title`}>
          {props.title}
          <span class="plot-unit">{` ${props.unit}`}</span>
        </span>
        <span class="plot-sentence">{props.sentence}</span>
      </figcaption>
      <PlotLegend data={props.data} />
      <div
        class="plot-area"
        ref={ref}
        tabIndex={0}
        role="group"
        aria-label={`${props.title}: read point by point with the arrow keys`}
        onKeyDown={(event) => keyMoves(event, places.length, move)}
      >
        <PlotDrawing {...props} layout={layout} cursorX={at} id={id} onTouch={touch} />
      </div>
      <PlotReadOut {...props} at={at} move={move} />
      <details class="plot-details">
        <summary>The same as a table</summary>
        <PlotTable {...props} places={places} />
      </details>
    </figure>
  );
}

function keyMoves(event: KeyboardEvent, count: number, move: (by: number) => void): void {
  const steps: Readonly<Record<string, number>> = {
    ArrowLeft: -1,
    ArrowRight: 1,
    PageUp: -7,
    PageDown: 7,
    Home: -count,
    End: count,
  };
  const by = steps[event.key];
  if (by === undefined) return;
  event.preventDefault();
  move(by);
}

function PlotReadOut(
  props: PlotProps & { readonly at: number | undefined; readonly move: (by: number) => void },
): JSX.Element {
  const { at } = props;
  return (
    <div class="plot-read">
      <Button kind="quiet" label={`${props.title}: one point back`} onPress={() => props.move(-1)}>
        <Arrow turn="left" />
      </Button>
      <p class="plot-values" aria-live="polite">
        {at === undefined ? (
          <span class="plot-ask">Tap to read</span>
        ) : (
          <>
            <strong>{props.nameX(at)}</strong>
            {valuesAt(props.data, at, props.writeY).map(({ name, text }) => (
              <span key={name}>{` ${name} ${text} ${props.unit}`}</span>
            ))}
          </>
        )}
      </p>
      <Button kind="quiet" label={`${props.title}: one point on`} onPress={() => props.move(1)}>
        <Arrow turn="right" />
      </Button>
    </div>
  );
}

function PlotTable(props: PlotProps & { readonly places: readonly number[] }): JSX.Element {
  const names = [...props.data.dots, ...props.data.lines, ...props.data.bands].map((series) => series.name);
  const columns = [
    { key: 'x', label: props.xName },
    ...names.map((name) => ({ key: name, label: name, unit: props.unit, numeric: true })),
  ];
  const rows = props.places.map((x) => {
    const values = valuesAt(props.data, x, props.writeY);
    return Object.fromEntries([['x', props.nameX(x)], ...values.map(({ name, text }) => [name, text])]);
  });
  return <Table caption={props.title} captionHidden columns={columns} rows={rows} />;
}
