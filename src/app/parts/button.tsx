import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import './button.css';
import { pressGate } from './press-guard.ts';

export interface ButtonProps {
  readonly children: ComponentChildren;
  /** `next` is the accent: the one thing to do next on this screen. `quiet` has no frame. */
  readonly kind?: 'next' | 'plain' | 'quiet' | 'caution' | undefined;
  readonly onPress?: (() => void) | undefined;
  /** A link that looks like a button. */
  readonly href?: string | undefined;
  /** Writes to the journal: a second press within a second does nothing. */
  readonly records?: boolean | undefined;
  readonly wide?: boolean | undefined;
  readonly disabled?: boolean | undefined;
  /** Only where the words on the button do not suffice ("Remove" -> "Remove rice"). Begins with the same words. */
  readonly label?: string | undefined;
  /** Submits the form it stands in. */
  readonly submits?: boolean | undefined;
  readonly pressed?: boolean | undefined;
}

/** A button of at least 48 px (64 px within `.busy`). */
export function Button(props: ButtonProps): JSX.Element {
  const [gate] = useState(() => pressGate());
  const classes = `button button-${props.kind ?? 'plain'}${props.wide === true ? ' button-wide' : ''}`;
  if (props.href !== undefined) {
    return (
      <a class={classes} href={props.href} aria-label={props.label} onClick={props.onPress}>
        {props.children}
      </a>
    );
  }
  const press = (event: MouseEvent): void => {
    if (props.records === true && !gate(event.timeStamp)) {
      event.preventDefault();
      return;
    }
    props.onPress?.();
  };
  return (
    <button
      type={props.submits === true ? 'submit' : 'button'}
      class={classes}
      aria-label={props.label}
      aria-pressed={props.pressed}
      disabled={props.disabled}
      onClick={press}
    >
      {props.children}
    </button>
  );
}
