import { signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';

const DEPTH = 30;

/** One recording that can be taken back: its entries, and what each of them stood in place of. */
export interface Recording {
  readonly entries: readonly Entry[];
  readonly before: readonly (Entry | undefined)[];
  readonly says: string;
  readonly atMs: number;
}

const stack = signal<readonly Recording[]>([]);

/** Recordings of this tab since the journal was opened, newest last. */
export const recordings: ReadonlySignal<readonly Recording[]> = stack;

export function rememberForUndo(recording: Recording): void {
  stack.value = [...stack.value, recording].slice(-DEPTH);
}

export function forgetRecording(recording: Recording): void {
  stack.value = stack.value.filter((other) => other !== recording);
}

export function forgetAllRecordings(): void {
  stack.value = [];
}
