import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { Field } from './field.tsx';
import type { FieldWords } from './field.tsx';
import { readClock } from './read-clock.ts';

export interface ClockFieldProps extends FieldWords {
  /** Minutes since midnight of the prep day. */
  readonly value: ClockMinutes | undefined;
  readonly onValue: (value: ClockMinutes | undefined) => void;
}

/** A clock time typed with digits alone ("730") or with a colon; 24:30 is past midnight of the same prep day. */
export function ClockField(props: ClockFieldProps): JSX.Element {
  const written = props.value === undefined ? '' : formatClock(props.value);
  const [typed, setTyped] = useState({ text: written, value: props.value });
  const [left, setLeft] = useState(false);
  const text = Object.is(typed.value, props.value) ? typed.text : written;
  const type = (next: string): void => {
    const { minutes } = readClock(next, props.label);
    setTyped({ text: next, value: minutes });
    setLeft(false);
    props.onValue(minutes);
  };
  const leave = (): void => {
    setLeft(true);
    if (props.value !== undefined) setTyped({ text: written, value: props.value });
  };
  const problem = left ? readClock(text, props.label).problem : undefined;
  return (
    <Field {...props} problem={props.problem ?? problem}>
      {(ties) => (
        <span class="field-joined">
          <input
            {...ties}
            class="field-control"
            type="text"
            inputMode="numeric"
            autocomplete="off"
            value={text}
            onInput={(event) => type(event.currentTarget.value)}
            onBlur={leave}
          />
          <span class="field-unit">h:min</span>
        </span>
      )}
    </Field>
  );
}
