import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import './field.css';

export interface FileFieldProps {
  readonly label: string;
  /** What the file chooser offers first, such as ".jsonl,.txt". */
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

/** Takes a file from the device. The same file may be chosen again. */
export function FileField({ label, accept, onFile }: FileFieldProps): JSX.Element {
  const id = useId();
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="field-file"
        type="file"
        accept={accept}
        onChange={(event) => {
          const { files } = event.currentTarget;
          const file = files?.item(0);
          if (file) onFile(file);
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}
