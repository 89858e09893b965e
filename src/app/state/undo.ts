import { computed, type ReadonlySignal } from '@preact/signals';
import { REMOVED, type Entry } from '#core/journal/entry.ts';
import { write, type Saved, type Writing } from './record.ts';
import { forgetRecording, recordings } from './undo-stack.ts';

/** What undo would take back, in the words of who wrote it. */
export const undoable: ReadonlySignal<{ readonly says: string; readonly atMs: number } | undefined> =
  computed(() => recordings.value.at(-1));

/**
 * Takes back the last recording of this tab, by correcting entries: what was new is removed, what was corrected gets
 * its earlier data back, what was removed returns. Undefined where there is nothing to take back.
 */
export async function undo(): Promise<Saved | undefined> {
  const last = recordings.peek().at(-1);
  if (!last) return undefined;
  forgetRecording(last);
  const writings = last.entries.map((entry, index) => takenBack(entry, last.before[index])).reverse();
  return write(writings, undefined, true);
}

function takenBack(entry: Entry, before: Entry | undefined): Writing {
  const { kind, data, day, at } = before ?? { ...entry, kind: REMOVED, data: {} };
  return { kind, data, at: { day, atMs: Date.parse(at) }, replaces: entry.id };
}
