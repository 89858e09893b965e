import type { JSX } from 'preact';
import { clamp } from '#core/units/rounding.ts';
import './spirit-level.css';
import { writeNumber } from './write-number.ts';

export interface SpiritLevelProps {
  readonly label: string;
  /** What there is minus what is wanted: negative is short, positive is over. */
  readonly off: number;
  readonly unit: string;
  /** Up to here it is on target: the bubble stands between the two lines. */
  readonly within: number;
  /** At this much off, the bubble has reached the end of the tube. */
  readonly span: number;
  readonly decimals?: number | undefined;
  /** "of 180 g", or a figure with its why. */
  readonly detail?: JSX.Element | string | undefined;
}

/** Where the bubble stands, from -1 at the short end to 1 at the other; the two lines are at -0.25 and 0.25. */
export function bubblePlace(off: number, within: number, span: number): number {
  const size = Math.abs(off);
  const place =
    size <= within ? (0.13 * size) / (within || 1) : 0.38 + (0.62 * (size - within)) / (span - within || 1);
  return Math.sign(off) * clamp(place, 0, 1) + 0;
}

/** "on target", "12 g short", "8 g over". */
export function levelWords(off: number, unit: string, within: number, decimals: number): string {
  if (Math.abs(off) <= within) return 'on target';
  return `${writeNumber(Math.abs(off), decimals, false)} ${unit} ${off < 0 ? 'short' : 'over'}`;
}

/** A spirit level: the bubble in the middle is on target; off to the left is short, to the right over. */
export function SpiritLevel(props: SpiritLevelProps): JSX.Element {
  const { off, within } = props;
  const at = bubblePlace(off, within, props.span);
  const words = levelWords(off, props.unit, within, props.decimals ?? 0);
  return (
    <div class={`level ${Math.abs(off) <= within ? 'level-on' : 'level-off'}`}>
      <p class="level-words">
        <span class="level-label">{props.label}</span>
        {props.detail !== undefined && <span class="level-detail">{props.detail}</span>}
        <strong class="level-off-by">{words}</strong>
      </p>
      <svg class="level-tube" width="100%" height="28" aria-hidden="true">
        <rect class="level-vial" x="1" y="3" width="99%" height="22" rx="11" />
        <line class="level-line" x1="43%" x2="43%" y1="0" y2="28" />
        <line class="level-line" x1="57%" x2="57%" y1="0" y2="28" />
        <svg x={`${50 + at * 43}%`} y="14" overflow="visible">
          <ellipse class="level-bubble" rx="16" ry="8" />
          <path class="level-shine" d="M-9-3Q-4-6 3-5.4" />
        </svg>
      </svg>
    </div>
  );
}
