import type { JSX } from 'preact';
import { DoneSign } from './signs.tsx';
import './scale-display.css';
import { writeNumber } from './write-number.ts';

export interface ScaleDisplayProps {
  readonly item: string;
  /** What of this item goes into the bowl, in grams. */
  readonly addG: number;
  /** What the scale shows afterwards, with the bowl's tare off. */
  readonly totalG: number;
  /** Which of the two is the big one: the scale is zeroed for each item, or runs on. */
  readonly show: 'item' | 'total';
  readonly decimals?: number | undefined;
  /** "2 of 4". */
  readonly step?: string | undefined;
  readonly detail?: string | undefined;
  readonly done?: boolean | undefined;
}

/** What the kitchen scale must show, readable at arm's length: for this item alone and for the bowl so far. */
export function ScaleDisplay(props: ScaleDisplayProps): JSX.Element {
  const { decimals = 0, show } = props;
  const add = writeNumber(props.addG, decimals, false);
  const total = writeNumber(props.totalG, decimals, false);
  const [big, small] = show === 'item' ? [add, total] : [total, add];
  return (
    <div
      class={`scale ${props.done === true ? 'scale-done' : ''}`}
      role="group"
      aria-label={`Weigh ${props.item}`}
    >
      <p class="scale-head">
        <span class="scale-item">{props.item}</span>
        {props.step !== undefined && <span class="scale-step">{props.step}</span>}
      </p>
      {props.detail !== undefined && <p class="scale-detail">{props.detail}</p>}
      <p class="scale-window">
        <span class="scale-words">{show === 'item' ? 'Add' : 'Pour until it shows'}</span>
        <span class="scale-reading">
          <span class="scale-number">{big}</span>
          <span class="scale-unit"> g</span>
        </span>
      </p>
      <p class="scale-other">
        {show === 'item' ? 'Bowl then holds ' : 'Of this item '}
        <strong>{`${small} g`}</strong>
        {props.done === true && (
          <span class="scale-state">
            <DoneSign />
            In the bowl
          </span>
        )}
      </p>
    </div>
  );
}
