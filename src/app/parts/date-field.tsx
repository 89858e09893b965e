import type { JSX } from 'preact';
import { Field } from './field.tsx';
import type { FieldWords } from './field.tsx';

export interface DateFieldProps extends FieldWords {
  /** "YYYY-MM-DD", or "" where none is chosen. */
  readonly value: string;
  readonly onValue: (value: string) => void;
  readonly min?: string | undefined;
  readonly max?: string | undefined;
}

/** A civil date, by the device's own calendar. */
export function DateField(props: DateFieldProps): JSX.Element {
  return (
    <Field {...props}>
      {(ties) => (
        <input
          {...ties}
          class="field-control"
          type="date"
          value={props.value}
          min={props.min}
          max={props.max}
          onInput={(event) => props.onValue(event.currentTarget.value)}
        />
      )}
    </Field>
  );
}
