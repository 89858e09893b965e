import type { JSX } from 'preact';
import './field.css';

export interface CheckFieldProps {
  readonly label: string;
  readonly detail?: string | undefined;
  readonly checked: boolean;
  readonly onChecked: (checked: boolean) => void;
}

/** One thing that is so or not. */
export function CheckField(props: CheckFieldProps): JSX.Element {
  return (
    <label class="check-option">
      <input
        type="checkbox"
        checked={props.checked}
        onChange={(event) => props.onChecked(event.currentTarget.checked)}
      />
      <span class="choice-words">
        {props.label}
        {props.detail !== undefined && <span class="choice-detail">{props.detail}</span>}
      </span>
    </label>
  );
}
