import { signal, type ReadonlySignal } from '@preact/signals';

const promised = signal<boolean | undefined>(undefined);

/** Whether the browser promised not to clear this app's storage by itself; undefined until known. */
export const persisted: ReadonlySignal<boolean | undefined> = promised;

/** Looks whether it has promised, without asking anyone. */
export async function lookPersisted(): Promise<void> {
  promised.value = (await navigator.storage?.persisted?.()) ?? false;
}

/** Asks the browser for the promise. */
export async function askToPersist(): Promise<boolean> {
  const answer = (await navigator.storage?.persist?.()) ?? false;
  promised.value = answer;
  return answer;
}
