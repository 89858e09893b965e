import type { JSX, TargetedEvent } from 'preact';
import { Field } from './field.tsx';
import type { FieldWords } from './field.tsx';

export interface FileFieldProps extends FieldWords {
  /** What the file chooser offers first: ".jsonl,.txt", "image/*". */
  readonly accept?: string | undefined;
  readonly onFile: (file: File) => void;
}

/** A file from the device. The same file may be chosen again after a problem. */
export function FileField(props: FileFieldProps): JSX.Element {
  const take = (event: TargetedEvent<HTMLInputElement>): void => {
    const input = event.currentTarget;
    const file = input.files?.item(0);
    if (file) props.onFile(file);
    input.value = '';
  };
  return (
    <Field {...props}>
      {(ties) => (
        <input {...ties} class="field-control field-file" type="file" accept={props.accept} onChange={take} />
      )}
    </Field>
  );
}
