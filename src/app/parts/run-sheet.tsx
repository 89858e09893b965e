import type { ComponentChildren, JSX } from 'preact';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import './run-sheet.css';
import { DoneSign } from './signs.tsx';

/** The day in the order of the clock. */
export function RunSheet({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <ol class="run-sheet">{children}</ol>;
}

export type RunState = 'done' | 'next' | 'planned' | 'skipped' | 'changed';

export interface RunRowProps {
  /** Minutes since midnight of the prep day. */
  readonly at: ClockMinutes;
  readonly title: string;
  readonly detail?: ComponentChildren | undefined;
  readonly state: RunState;
  /** One or two figures at the row's end; without a why where the row has an href. */
  readonly figures?: ComponentChildren | undefined;
  readonly href?: string | undefined;
  /** Open content under the row: what to weigh, buttons. */
  readonly children?: ComponentChildren | undefined;
}

const STATE_WORDS: Readonly<Record<RunState, string | undefined>> = {
  done: 'Done',
  next: 'Next',
  planned: undefined,
  skipped: 'Skipped',
  changed: 'Changed',
};

/** One line of the run sheet: the time at its tick, what, and how much. */
export function RunRow(props: RunRowProps): JSX.Element {
  const words = STATE_WORDS[props.state];
  const line = (
    <>
      <span class="run-time">{formatClock(props.at)}</span>
      <span class="run-words">
        <span class="run-title">{props.title}</span>
        <span class="run-detail">
          {words !== undefined && (
            <span class="run-state">
              {props.state === 'done' && <DoneSign />}
              {words}
            </span>
          )}
          {props.detail}
        </span>
      </span>
      {props.figures !== undefined && <span class="run-figures">{props.figures}</span>}
    </>
  );
  return (
    <li class={`run-row run-${props.state}`} aria-current={props.state === 'next' ? 'step' : undefined}>
      {props.href === undefined ? (
        <div class="run-line">{line}</div>
      ) : (
        <a class="run-line" href={props.href}>
          {line}
        </a>
      )}
      {props.children !== undefined && <div class="run-open">{props.children}</div>}
    </li>
  );
}
