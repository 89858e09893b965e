import type { JSX } from 'preact';
import { Button } from './button.tsx';
import './undo-strip.css';

export interface UndoStripProps {
  /** What was recorded: "Meal at 12:30 logged". Absent: nothing to take back. */
  readonly words: string | undefined;
  readonly onUndo: () => void;
  readonly onClose: () => void;
}

/** After each recording: what was recorded, and a way back. */
export function UndoStrip(props: UndoStripProps): JSX.Element {
  return (
    <div class="undo-place" role="status">
      {props.words !== undefined && (
        <div class="undo-strip">
          <p class="undo-words">{props.words}</p>
          <Button kind="quiet" records onPress={props.onUndo}>
            Undo
          </Button>
          <Button kind="quiet" label="Close this line" onPress={props.onClose}>
            <span aria-hidden="true">×</span>
          </Button>
        </div>
      )}
    </div>
  );
}
