import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { FieldProblem } from './field.tsx';
import type { FieldWords } from './field.tsx';

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly detail?: string | undefined;
}

export interface ChoiceFieldProps<Value extends string> extends FieldWords {
  readonly value: Value | undefined;
  readonly options: readonly ChoiceOption<Value>[];
  readonly onValue: (value: Value) => void;
  /** Short options stand side by side. */
  readonly layout?: 'row' | 'column' | undefined;
}

/** One of a few, all in sight. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>): JSX.Element {
  const id = useId();
  const described = props.hint === undefined ? undefined : `${id}-hint`;
  return (
    <fieldset
      class={`field ${props.problem === undefined ? '' : 'field-wrong'}`}
      aria-describedby={described}
    >
      <legend class="field-label">{props.label}</legend>
      {props.hint !== undefined && (
        <p class="field-hint" id={`${id}-hint`}>
          {props.hint}
        </p>
      )}
      <div class={props.layout === 'row' ? 'choice-options choice-row' : 'choice-options'}>
        {props.options.map((option) => (
          <label class="choice-option" key={option.value}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === props.value}
              onChange={() => props.onValue(option.value)}
            />
            <span class="choice-words">
              {option.label}
              {option.detail !== undefined && <span class="choice-detail">{option.detail}</span>}
            </span>
          </label>
        ))}
      </div>
      <FieldProblem id={`${id}-problem`} problem={props.problem} />
    </fieldset>
  );
}
