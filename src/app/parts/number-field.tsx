import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Field } from './field.tsx';
import type { FieldWords, Ties } from './field.tsx';
import { fieldText, readNumber } from './read-number.ts';
import type { NumberReading } from './read-number.ts';

export interface NumberFieldProps extends FieldWords {
  readonly unit?: string | undefined;
  readonly value: number | undefined;
  /** Called at every keystroke; the value is absent where nothing is typed or the text is no number. */
  readonly onValue: (value: number | undefined, reading: NumberReading) => void;
  readonly decimals?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** Figures that are read from a distance. */
  readonly big?: boolean | undefined;
}

/** A number with its unit. Takes a decimal comma, keeps what was typed, and says how to mend it on leaving. */
export function NumberField(props: NumberFieldProps): JSX.Element {
  const typing = useNumberText(props);
  const classes = props.big === true ? 'field-big' : undefined;
  return (
    <Field {...props} class={classes} problem={props.problem ?? typing.problem}>
      {(ties) => (
        <span class="field-joined">
          <NumberInput {...ties} typing={typing} decimals={props.decimals ?? 0} unit={props.unit} />
        </span>
      )}
    </Field>
  );
}

interface NumberTyping {
  readonly text: string;
  readonly problem: string | undefined;
  readonly type: (text: string) => void;
  readonly leave: () => void;
}

/** The text of a number being typed. A value that comes from elsewhere replaces the text; an own one never does. */
export function useNumberText(props: NumberFieldProps): NumberTyping {
  const decimals = props.decimals ?? 0;
  const rule = { label: props.label, unit: props.unit, decimals, min: props.min, max: props.max };
  const [typed, setTyped] = useState({ text: fieldText(props.value, decimals), value: props.value });
  const [left, setLeft] = useState(false);
  const text = Object.is(props.value, typed.value) ? typed.text : fieldText(props.value, decimals);
  const type = (next: string): void => {
    const reading = readNumber(next, rule);
    setTyped({ text: next, value: reading.value });
    setLeft(false);
    props.onValue(reading.value, reading);
  };
  return {
    text,
    problem: left ? readNumber(text, rule).problem : undefined,
    type,
    leave: () => setLeft(true),
  };
}

interface NumberInputProps extends Ties {
  readonly typing: NumberTyping;
  readonly decimals: number;
  readonly unit: string | undefined;
}

export function NumberInput({ typing, decimals, unit, ...ties }: NumberInputProps): JSX.Element {
  return (
    <>
      <input
        {...ties}
        class="field-control"
        type="text"
        inputMode={decimals === 0 ? 'numeric' : 'decimal'}
        autocomplete="off"
        enterkeyhint="done"
        value={typing.text}
        onInput={(event) => typing.type(event.currentTarget.value)}
        onBlur={typing.leave}
      />
      {unit !== undefined && <span class="field-unit">{unit}</span>}
    </>
  );
}
