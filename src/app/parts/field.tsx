import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';
import { CautionSign } from './signs.tsx';
import './field.css';

/** What all fields share. */
export interface FieldWords {
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong, with the label and the remedy in it; what was typed stays. */
  readonly problem?: string | undefined;
  /** Says "may stay empty" beside the label. */
  readonly optional?: boolean | undefined;
}

/** The attributes that tie a control to its words. */
export interface Ties {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean | undefined;
}

export interface FieldProps extends FieldWords {
  readonly class?: string | undefined;
  readonly children: (ties: Ties) => ComponentChildren;
}

/** Label above, control, hint and problem; the problem stands beside what it concerns. */
export function Field(props: FieldProps): JSX.Element {
  const id = useId();
  const hintId = `${id}-hint`;
  const problemId = `${id}-problem`;
  const described = [props.hint !== undefined && hintId, props.problem !== undefined && problemId];
  const ties: Ties = {
    id,
    'aria-describedby': described.filter((part) => part !== false).join(' ') || undefined,
    'aria-invalid': props.problem === undefined ? undefined : true,
  };
  return (
    <div class={`field ${props.problem === undefined ? '' : 'field-wrong'} ${props.class ?? ''}`}>
      <label class="field-label" for={id}>
        {props.label}
        {props.optional === true && <span class="field-optional">may stay empty</span>}
      </label>
      {props.children(ties)}
      {props.hint !== undefined && (
        <p class="field-hint" id={hintId}>
          {props.hint}
        </p>
      )}
      <FieldProblem id={problemId} problem={props.problem} />
    </div>
  );
}

export function FieldProblem(props: {
  readonly id: string;
  readonly problem: string | undefined;
}): JSX.Element | null {
  if (props.problem === undefined) return null;
  return (
    <p class="field-problem" id={props.id}>
      <CautionSign />
      {props.problem}
    </p>
  );
}
