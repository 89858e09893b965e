import type { JSX } from 'preact';
import { Field } from './field.tsx';
import type { FieldWords } from './field.tsx';

export interface TextFieldProps extends FieldWords {
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** More than one: a field of several lines. */
  readonly lines?: number | undefined;
}

export function TextField(props: TextFieldProps): JSX.Element {
  const { lines = 1 } = props;
  return (
    <Field {...props}>
      {(ties) =>
        lines > 1 ? (
          <textarea
            {...ties}
            class="field-control"
            rows={lines}
            value={props.value}
            onInput={(event) => props.onValue(event.currentTarget.value)}
          />
        ) : (
          <input
            {...ties}
            class="field-control"
            type="text"
            autocomplete="off"
            value={props.value}
            onInput={(event) => props.onValue(event.currentTarget.value)}
          />
        )
      }
    </Field>
  );
}
