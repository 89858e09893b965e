import type { ComponentChildren, JSX } from 'preact';
import './columns.css';

export interface ColumnsProps {
  /** Which column is the wide one where there is room for two or more. */
  readonly wide?: 'first' | 'last' | 'even' | undefined;
  readonly children: ComponentChildren;
}

/** One column on the phone; on the desk each child is a sheet of paper beside the other. */
export function Columns(props: ColumnsProps): JSX.Element {
  return <div class={`columns columns-${props.wide ?? 'even'}`}>{props.children}</div>;
}
