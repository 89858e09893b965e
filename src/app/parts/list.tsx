import type { ComponentChildren, JSX } from 'preact';
import './list.css';
import { Arrow, DoneSign } from './signs.tsx';

/** Rows of the same kind, ruled like a ledger. */
export function List(props: {
  readonly children: ComponentChildren;
  readonly label?: string | undefined;
}): JSX.Element {
  return (
    <ul class="list" aria-label={props.label}>
      {props.children}
    </ul>
  );
}

export interface ListRowProps {
  readonly title: ComponentChildren;
  readonly detail?: ComponentChildren | undefined;
  /** Figures, tags or a button at the row's end. Figures with a why and buttons need a row without href or onPress. */
  readonly figure?: ComponentChildren | undefined;
  readonly href?: string | undefined;
  readonly onPress?: (() => void) | undefined;
  readonly state?: 'plain' | 'done' | 'next' | undefined;
}

/** One row: what it is on the left, its figure on the right. The whole row is the target where it leads somewhere. */
export function ListRow(props: ListRowProps): JSX.Element {
  const body = (
    <>
      <span class="list-words">
        <span class="list-title">
          {props.state === 'done' && <DoneSign />}
          {props.title}
          {props.state === 'done' && <span class="unseen">, done</span>}
        </span>
        {props.detail !== undefined && <span class="list-detail">{props.detail}</span>}
      </span>
      {props.figure !== undefined && <span class="list-figure">{props.figure}</span>}
    </>
  );
  return <li class={`list-row list-row-${props.state ?? 'plain'}`}>{rowTarget(props, body)}</li>;
}

function rowTarget({ href, onPress }: ListRowProps, body: JSX.Element): JSX.Element {
  if (href !== undefined) {
    return (
      <a class="list-target" href={href} onClick={onPress}>
        {body}
        <Arrow />
      </a>
    );
  }
  if (onPress !== undefined) {
    return (
      <button type="button" class="list-target" onClick={onPress}>
        {body}
        <Arrow />
      </button>
    );
  }
  return <div class="list-target">{body}</div>;
}
