import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Caution } from './caution.tsx';
import { pressGate } from './press-guard.ts';
import './field.css';

export interface FormProps {
  /** Called once a second at most: by the submit button or the Enter key. */
  readonly onSubmit: () => void;
  /** What kept it from being recorded: stands on top and takes the focus. */
  readonly problems?: readonly { readonly message: string; readonly remedy: string }[] | undefined;
  readonly children: ComponentChildren;
}

export function Form(props: FormProps): JSX.Element {
  const [gate] = useState(() => pressGate());
  const problems = props.problems ?? [];
  const words = problems.map((problem) => `${problem.message} ${problem.remedy}`);
  const top = useRef<HTMLDivElement>(null);
  const said = words.join(' ');
  useEffect(() => {
    if (said !== '') top.current?.focus();
  }, [said]);
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    if (gate(event.timeStamp)) props.onSubmit();
  };
  return (
    <form class="form" noValidate onSubmit={submit}>
      {words.length > 0 && (
        <div ref={top} tabIndex={-1}>
          <Caution title="Not recorded yet" words={words} />
        </div>
      )}
      {props.children}
    </form>
  );
}
