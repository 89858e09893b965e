import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { StepperField, type StepperFieldProps } from '../../parts/stepper-field.tsx';

export interface SetNumberProps extends Omit<StepperFieldProps, 'onValue'> {
  readonly onNumber: (value: number) => void;
  /** Told what is wrong with the text while it is no number, and undefined once it is one again. */
  readonly onUnread: (label: string, words: string | undefined) => void;
}

/** A number of a set that starts from a suggestion: while it is empty or cannot be read, no set is logged with another. */
export function SetNumber({ onNumber, onUnread, ...props }: SetNumberProps): JSX.Element {
  const unread = useSignal(false);
  // A field that is put away keeps nothing from being logged.
  useEffect(() => () => onUnread(props.label, undefined), [props.label]);
  return (
    <StepperField
      {...props}
      value={unread.value ? undefined : props.value}
      onValue={(value, reading) => {
        unread.value = value === undefined;
        onUnread(
          props.label,
          value === undefined ? (reading.problem ?? `${props.label}: nothing is entered.`) : undefined,
        );
        if (value !== undefined) onNumber(value);
      }}
    />
  );
}
