import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from './button.tsx';
import { pressGate } from './press-guard.ts';
import { CrossSign } from './signs.tsx';
import './undo-strip.css';

export interface UndoStripProps {
  /** What was recorded: "Meal at 12:30 logged". */
  readonly words: string;
  /** Absent where there is nothing to take back any more. */
  readonly onUndo?: (() => void) | undefined;
  readonly onClose: () => void;
}

/** After each recording: what was recorded, and a way back. It takes no press in its first second. */
export function UndoStrip(props: UndoStripProps): JSX.Element {
  const [gate] = useState(() => pressGate(performance.now()));
  const { onUndo } = props;
  return (
    <div class="undo-strip">
      <p class="undo-words">{props.words}</p>
      {onUndo !== undefined && (
        <Button
          kind="quiet"
          onPress={() => {
            if (gate(performance.now())) onUndo();
          }}
        >
          Undo
        </Button>
      )}
      <Button kind="quiet" label="Close this line" onPress={props.onClose}>
        <CrossSign />
      </Button>
    </div>
  );
}
