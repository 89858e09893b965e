import type { ComponentChildren, JSX } from 'preact';
import './empty-state.css';

export interface EmptyStateProps {
  readonly title: string;
  /** What belongs here and what to do next. */
  readonly words: string;
  readonly action?: ComponentChildren | undefined;
}

/** Nothing here yet: says what to do next. */
export function EmptyState(props: EmptyStateProps): JSX.Element {
  return (
    <div class="empty">
      <p class="empty-title">{props.title}</p>
      <p>{props.words}</p>
      {props.action}
    </div>
  );
}
