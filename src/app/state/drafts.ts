import { effect, signal, type Signal } from '@preact/signals';
import type { GenericSchema, InferOutput } from 'valibot';
import { which } from './journals.ts';
import { keptValue } from './kept-value.ts';
import { localMemory } from './local-memory.ts';

interface Kept {
  readonly text: Signal<unknown>;
  readonly stop: () => void;
}
const kept = new Map<string, Kept>();

/**
 * What is being typed, kept at each change so that it survives a killed tab. One signal a key and journal: asking
 * again answers the same one. What was kept by an older version and no longer fits the schema gives way to `initial`.
 */
export function draft<Schema extends GenericSchema>(
  key: string,
  schema: Schema,
  initial: InferOutput<Schema>,
): Signal<InferOutput<Schema>> {
  const place = placeOf(key);
  const known = kept.get(place);
  if (known) return known.text;
  const typed = signal<InferOutput<Schema>>(keptValue(place, schema) ?? initial);
  let first = true;
  const stop = effect(() => {
    const text = JSON.stringify(typed.value);
    if (!first) localMemory.set(place, text);
    first = false;
  });
  kept.set(place, { text: typed, stop });
  return typed;
}

/** Forgets what was typed: after it was recorded, or on the person's wish. */
export function clearDraft(key: string): void {
  const place = placeOf(key);
  kept.get(place)?.stop();
  kept.delete(place);
  localMemory.drop(place);
}

function placeOf(key: string): string {
  return `${which.peek()}/draft/${key}`;
}
