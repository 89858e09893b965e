import type { JSX } from 'preact';
import { clamp } from '#core/units/rounding.ts';
import { Figure } from './figure.tsx';
import './plumb-line.css';
import type { Why } from './why.ts';
import { writeNumber } from './write-number.ts';

export interface PlumbLineProps {
  readonly label: string;
  readonly unit: string;
  /** Ends of the scale below the bob. */
  readonly from: number;
  readonly to: number;
  /** Where the forecast lands, with its interval. */
  readonly landing: { readonly mean: number; readonly low: number; readonly high: number };
  readonly mark: { readonly value: number; readonly words: string };
  /** "Lands 0.6 above the mark, 9 times of 10 between 5.1 and 7.4 %." */
  readonly sentence: string;
  readonly decimals?: number | undefined;
  readonly why?: Why | (() => Why) | undefined;
}

/** A plumb line over a scale: the bob hangs where the forecast lands, the notch is the mark. */
export function PlumbLine(props: PlumbLineProps): JSX.Element {
  const { from, to, landing, mark, decimals = 1 } = props;
  const at = (value: number): number => 4 + 92 * clamp((value - from) / (to - from || 1), 0, 1);
  const anchor = at(mark.value) > 62 ? 'end' : at(mark.value) < 38 ? 'start' : 'middle';
  return (
    <div class="plumb">
      <Figure
        label={props.label}
        value={landing.mean}
        unit={props.unit}
        decimals={decimals}
        size="large"
        why={props.why}
      />
      <p class="plumb-sentence">{props.sentence}</p>
      <svg class="plumb-drawing" width="100%" height="176" aria-hidden="true">
        <line class="plumb-beam" x1="0" x2="100%" y1="2" y2="2" />
        <line class="plumb-string" x1={`${at(landing.mean)}%`} x2={`${at(landing.mean)}%`} y1="2" y2="66" />
        <rect
          class="plumb-spread"
          x={`${at(landing.low)}%`}
          y="104"
          width={`${at(landing.high) - at(landing.low)}%`}
          height="14"
        />
        <svg x={`${at(landing.mean)}%`} y="64" overflow="visible">
          <path class="plumb-bob" d="M-4 0H4V5H9L8 22 0 40-8 22-9 5H-4Z" />
        </svg>
        <Scale from={from} to={to} at={at} decimals={decimals} />
        <svg x={`${at(mark.value)}%`} y="118" overflow="visible">
          <path class="plumb-mark" d="M0 0V26M0 26-7 38H7Z" />
        </svg>
        <text class="plumb-words" x={`${at(mark.value)}%`} y="174" text-anchor={anchor}>
          {`${mark.words} ${writeNumber(mark.value, decimals, false)} ${props.unit}`}
        </text>
      </svg>
    </div>
  );
}

/** The steel scale: a stroke at each tenth, its ends in figures. */
function Scale(props: {
  readonly from: number;
  readonly to: number;
  readonly at: (value: number) => number;
  readonly decimals: number;
}): JSX.Element {
  const { from, to, at } = props;
  const strokes = Array.from({ length: 21 }, (_unused, index) => from + ((to - from) * index) / 20);
  return (
    <g>
      <line class="plumb-scale" x1="0" x2="100%" y1="118" y2="118" />
      {strokes.map((value, index) => (
        <line
          key={index}
          class="plumb-scale"
          x1={`${at(value)}%`}
          x2={`${at(value)}%`}
          y1="118"
          y2={index % 10 === 0 ? 134 : index % 5 === 0 ? 129 : 124}
        />
      ))}
      <text class="plumb-end" x={`${at(from)}%`} y="152" text-anchor="start">
        {writeNumber(from, props.decimals, false)}
      </text>
      <text class="plumb-end" x={`${at(to)}%`} y="152" text-anchor="end">
        {writeNumber(to, props.decimals, false)}
      </text>
    </g>
  );
}
