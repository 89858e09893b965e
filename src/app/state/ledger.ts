import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger, type GrowingLedger, type Ledger } from '#core/journal/ledger.ts';

let growing: GrowingLedger = createLedger();
const issued = signal<Ledger>(view());

/** The open journal, issued anew whenever entries arrive. Arrays that `of` answers stay the same while their kind does. */
export const ledger: ReadonlySignal<Ledger> = computed(() => issued.value);

/** Takes entries in, from a save, another tab, the store or a file. Answers how many were new. */
export function takeIn(entries: Iterable<Entry>): number {
  const added = growing.add(entries);
  if (added > 0) issued.value = view();
  return added;
}

/** Puts another journal in place of the open one. */
export function replaceLedger(entries: Iterable<Entry>): void {
  growing = createLedger(entries);
  issued.value = view();
}

/** The same ledger under a new identity, so that signals see that it grew. */
function view(): Ledger {
  return Object.create(growing);
}
