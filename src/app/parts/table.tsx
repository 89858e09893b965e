import type { ComponentChildren, JSX } from 'preact';
import './table.css';

export interface TableColumn<Key extends string> {
  readonly key: Key;
  readonly label: string;
  readonly unit?: string | undefined;
  readonly numeric?: boolean | undefined;
}

export interface TableProps<Key extends string> {
  readonly caption: string;
  readonly captionHidden?: boolean | undefined;
  /** The first column names the row. */
  readonly columns: readonly TableColumn<Key>[];
  readonly rows: readonly Readonly<Record<Key, ComponentChildren>>[];
}

/** Columns under their unit, rows under their name. Scrolls sideways within itself where it must. */
export function Table<Key extends string>(props: TableProps<Key>): JSX.Element {
  return (
    <div class="table-frame" tabIndex={0} role="group" aria-label={props.caption}>
      <table class="table">
        <caption class={props.captionHidden === true ? 'unseen' : undefined}>{props.caption}</caption>
        <thead>
          <tr>
            {props.columns.map((column) => (
              <th key={column.key} scope="col" class={column.numeric === true ? 'table-number' : undefined}>
                {column.label}
                {column.unit !== undefined && <span class="table-unit">{` ${column.unit}`}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {props.rows.map((row, index) => (
            <tr key={index}>
              {props.columns.map((column, place) =>
                place === 0 ? (
                  <th key={column.key} scope="row">
                    {row[column.key]}
                  </th>
                ) : (
                  <td key={column.key} class={column.numeric === true ? 'table-number' : undefined}>
                    {row[column.key]}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
