import type { JSX } from 'preact';
import './figure.css';
import { openWhy } from './why.ts';
import type { Why } from './why.ts';
import { writeNumber } from './write-number.ts';

export interface FigureProps {
  /** A number is written with `decimals`; text ("12:30", "3 × 174") stands as it is; absent is "unknown". */
  readonly value: number | string | undefined;
  readonly unit?: string | undefined;
  readonly decimals?: number | undefined;
  /** Half width of the interval, in the same unit. */
  readonly plusMinus?: number | undefined;
  /** `line` within text and rows, `normal`, `large` for a screen's figure, `reach` to be read at arm's length. */
  readonly size?: 'line' | 'normal' | 'large' | 'reach' | undefined;
  /** What the number is; read before it, and shown above it unless `labelHidden`. */
  readonly label?: string | undefined;
  readonly labelHidden?: boolean | undefined;
  /** Writes + before a positive number. */
  readonly signed?: boolean | undefined;
  /** One tap on the number opens its reasons. May be computed on demand. */
  readonly why?: Why | (() => Why) | undefined;
}

/** A number with its unit, in tabular figures. */
export function Figure(props: FigureProps): JSX.Element {
  const { label, why, size = 'normal' } = props;
  const body = (
    <>
      {label !== undefined && (
        <span class={props.labelHidden === true ? 'unseen' : 'figure-label'}>{`${label} `}</span>
      )}
      <FigureNumber {...props} />
    </>
  );
  if (why === undefined) return <span class={`figure figure-${size}`}>{body}</span>;
  return (
    <button
      type="button"
      class={`figure figure-${size} figure-why`}
      onClick={() => openWhy(typeof why === 'function' ? why() : why)}
    >
      {body}
      <span class="unseen">, why?</span>
    </button>
  );
}

function FigureNumber(props: FigureProps): JSX.Element {
  const { value, unit, plusMinus, decimals = 0 } = props;
  if (value === undefined) return <span class="figure-unknown">unknown</span>;
  const text = typeof value === 'string' ? value : writeNumber(value, decimals, props.signed === true);
  return (
    <span class="figure-body">
      <span class="figure-number">{text}</span>
      {plusMinus !== undefined && (
        <span class="figure-spread">{` ± ${writeNumber(plusMinus, decimals, false)}`}</span>
      )}
      {unit !== undefined && <span class="figure-unit">{` ${unit}`}</span>}
    </span>
  );
}
