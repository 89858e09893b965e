import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { FieldProblem } from './field.tsx';
import './field.css';

export interface CheckFieldProps {
  readonly label: string;
  readonly detail?: string | undefined;
  readonly checked: boolean;
  readonly onChecked: (checked: boolean) => void;
  readonly problem?: string | undefined;
}

/** One thing that is so or not. */
export function CheckField(props: CheckFieldProps): JSX.Element {
  const problemId = `${useId()}-problem`;
  const wrong = props.problem !== undefined;
  return (
    <div class={wrong ? 'field field-wrong' : 'field'}>
      <label class="check-option">
        <input
          type="checkbox"
          checked={props.checked}
          aria-invalid={wrong || undefined}
          aria-describedby={wrong ? problemId : undefined}
          onChange={(event) => props.onChecked(event.currentTarget.checked)}
        />
        <span class="choice-words">
          {props.label}
          {props.detail !== undefined && <span class="choice-detail">{props.detail}</span>}
        </span>
      </label>
      <FieldProblem id={problemId} problem={props.problem} />
    </div>
  );
}
