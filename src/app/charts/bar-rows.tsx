import type { JSX } from 'preact';
import { writeNumber } from '../parts/write-number.ts';
import './bar-rows.css';

export interface BarRow {
  readonly name: string;
  readonly value: number;
  readonly planned?: number | undefined;
  readonly detail?: string | undefined;
}

export interface BarRowsProps {
  readonly title: string;
  readonly unit: string;
  readonly decimals?: number | undefined;
  readonly rows: readonly BarRow[];
}

/** Amounts side by side, each written out; what is planned is a stroke across the bar. */
export function BarRows(props: BarRowsProps): JSX.Element {
  const { decimals = 0, rows, unit } = props;
  const most = Math.max(...rows.flatMap((row) => [row.value, row.planned ?? 0]), 0) || 1;
  const share = (value: number): string => `${(100 * Math.max(0, value)) / most}%`;
  return (
    <figure class="bars">
      <figcaption class="bars-title">{props.title}</figcaption>
      <ul class="bars-list">
        {rows.map((row) => (
          <li class="bars-row" key={row.name}>
            <span class="bars-name">
              {row.name}
              {row.detail !== undefined && <span class="bars-detail">{` ${row.detail}`}</span>}
            </span>
            <span class="bars-value">
              <strong>{writeNumber(row.value, decimals, false)}</strong>
              {row.planned !== undefined && ` of ${writeNumber(row.planned, decimals, false)}`}
              {` ${unit}`}
            </span>
            <svg class="bars-bar" width="100%" height="14" aria-hidden="true">
              <rect class="bars-fill" x="0" y="2" width={share(row.value)} height="10" />
              {row.planned !== undefined && (
                <line class="bars-planned" x1={share(row.planned)} x2={share(row.planned)} y1="0" y2="14" />
              )}
            </svg>
          </li>
        ))}
      </ul>
    </figure>
  );
}
