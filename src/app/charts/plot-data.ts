/** How a line is drawn: solid for what was, dashed for what is planned, dotted for a comparison. */
export type LineLook = 'solid' | 'dashed' | 'dotted';

export interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

export interface PlotLine {
  readonly name: string;
  readonly look: LineLook;
  readonly points: readonly PlotPoint[];
  /** Runs smoothly through the points. */
  readonly smooth?: boolean | undefined;
}

export interface PlotDots {
  readonly name: string;
  readonly points: readonly (PlotPoint & { readonly sd?: number | undefined })[];
}

export interface PlotBand {
  readonly name: string;
  readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

/** Everything a plot shows, in its own units. */
export interface PlotData {
  readonly lines: readonly PlotLine[];
  readonly dots: readonly PlotDots[];
  readonly bands: readonly PlotBand[];
  readonly marks: readonly { readonly x: number; readonly words: string }[];
  readonly levels: readonly { readonly value: number; readonly words: string }[];
}

/** All values on the vertical axis. */
export function allY(data: PlotData): readonly number[] {
  return [
    ...data.lines.flatMap((line) => line.points.map((point) => point.y)),
    ...data.dots.flatMap((dots) => dots.points.flatMap(({ y, sd = 0 }) => [y - sd, y + sd])),
    ...data.bands.flatMap((band) => band.points.flatMap((point) => [point.low, point.high])),
    ...data.levels.map((level) => level.value),
  ];
}

/** All places on the horizontal axis that hold a value, ascending, each once. */
export function allX(data: PlotData): readonly number[] {
  const places = [...data.lines, ...data.dots, ...data.bands].flatMap((series) =>
    (series.points as readonly { readonly x: number }[]).map((point) => point.x),
  );
  return [...new Set(places)].sort((a, b) => a - b);
}

/** What stands at one place: a text for each series that has a value there. */
export function valuesAt(
  data: PlotData,
  x: number,
  write: (value: number) => string,
): readonly { readonly name: string; readonly text: string }[] {
  const found = <Point extends { readonly x: number }>(points: readonly Point[]): Point | undefined =>
    points.find((point) => point.x === x);
  return [
    ...data.dots.flatMap(({ name, points }) => {
      const point = found(points);
      const spread = point?.sd === undefined ? '' : ` ± ${write(point.sd)}`;
      return point ? [{ name, text: `${write(point.y)}${spread}` }] : [];
    }),
    ...data.lines.flatMap(({ name, points }) => {
      const point = found(points);
      return point ? [{ name, text: write(point.y) }] : [];
    }),
    ...data.bands.flatMap(({ name, points }) => {
      const point = found(points);
      return point ? [{ name, text: `${write(point.low)} to ${write(point.high)}` }] : [];
    }),
  ];
}
