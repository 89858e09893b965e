import type { JSX } from 'preact';
import type { Kilograms } from '#core/units/quantities.ts';
import './plate-drawing.css';
import { stampKg, type Stamp } from './ramp-draft.ts';

export interface DrawnPlate {
  readonly stamp: Stamp;
  /** Goes on for this set; else it stays from the set before. */
  readonly goesOn: boolean;
}

const WIDTH = 50;
const GAP = 3;
const COLLAR = 26;
const TALL = 132;
const MIDDLE = TALL / 2 + 2;
/** A plate of this mass and above is drawn full height; small ones stay tall enough for their number. */
const FULL_KG: Kilograms = 25;
const LEAST = 50;

/**
 * One side as it is loaded, inside on the left. Plates that go on now are solid ink, plates that stay are outlined; the
 * taller, the heavier. The words beside it say the same.
 */
export function PlateDrawing({
  plates,
  words,
}: {
  readonly plates: readonly DrawnPlate[];
  readonly words: string;
}): JSX.Element {
  const width = COLLAR + plates.length * (WIDTH + GAP) + 30;
  return (
    <svg
      class="plates"
      width={width}
      height={TALL + 4}
      viewBox={`0 0 ${width} ${TALL + 4}`}
      role="img"
      aria-label={words}
    >
      <path class="plates-bar" d={`M0 ${MIDDLE}H${width}`} />
      <rect class="plates-collar" x={COLLAR - 12} y={MIDDLE - 17} width="8" height="34" />
      {plates.map(({ stamp, goesOn }, place) => (
        <Plate key={place} stamp={stamp} goesOn={goesOn} x={COLLAR + place * (WIDTH + GAP)} />
      ))}
    </svg>
  );
}

function Plate({ stamp, goesOn, x }: DrawnPlate & { readonly x: number }): JSX.Element {
  const share = Math.min(1, Math.sqrt(stampKg(stamp) / FULL_KG));
  const height = LEAST + (TALL - LEAST) * share;
  const middle = x + WIDTH / 2;
  return (
    <g class={goesOn ? 'plate plate-on' : 'plate'}>
      <rect class="plate-body" x={x} y={MIDDLE - height / 2} width={WIDTH} height={height} rx="3" />
      <text class="plate-number" x={middle} y={MIDDLE + 4} text-anchor="middle">
        {stamp.mass}
      </text>
      <text class="plate-unit" x={middle} y={MIDDLE + 19} text-anchor="middle">
        {stamp.unit}
      </text>
    </g>
  );
}
