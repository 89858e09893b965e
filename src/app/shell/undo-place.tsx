import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { UndoStrip } from '../parts/undo-strip.tsx';
import { undo, undoable } from '../state/open-journal.ts';

const SHOWN_MS = 20_000;

interface Line {
  readonly words: string;
  readonly atMs: number;
  readonly takenBack: boolean;
}

/** After each recording a line with "Undo" above the steel rule, for twenty seconds or until it is closed. */
export function UndoPlace({ onShown }: { readonly onShown: (shown: boolean) => void }): JSX.Element {
  const [line, setLine] = useState<Line | undefined>(undefined);
  const [newestMs, setNewestMs] = useState(undoable.peek()?.atMs ?? 0);
  const last = undoable.value;
  useEffect(() => {
    // What undo uncovers is older than what was taken back: it is not offered anew.
    if (!last || last.atMs <= newestMs) return;
    setNewestMs(last.atMs);
    setLine({ words: last.says, atMs: last.atMs, takenBack: false });
  }, [last]);
  useEffect(() => {
    onShown(line !== undefined);
    if (!line) return undefined;
    const timer = setTimeout(() => setLine(undefined), SHOWN_MS);
    return () => clearTimeout(timer);
  }, [line]);
  const takeBack = async (shown: Line): Promise<void> => {
    await undo();
    setLine({ words: `Taken back: ${shown.words}`, atMs: shown.atMs, takenBack: true });
  };
  return (
    <div class="undo-place" role="status">
      {line !== undefined && (
        <UndoStrip
          key={`${line.atMs} ${line.words}`}
          words={line.words}
          onUndo={line.takenBack ? undefined : () => void takeBack(line)}
          onClose={() => setLine(undefined)}
        />
      )}
    </div>
  );
}
