import { isEntry } from '#core/journal/entry-shape.ts';
import type { Entry } from '#core/journal/entry.ts';

const CHANNEL = 'stagewright';

/** A line to the other tabs of this device that have the same journal open. */
export interface Tabs {
  tell(entries: readonly Entry[]): void;
  close(): void;
}

/** Hears what other tabs wrote and tells them what this one did. A tab that sleeps misses it and reads the store later. */
export function listenToTabs(which: string, hear: (entries: readonly Entry[]) => void): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(`${CHANNEL}/${which}`);
  channel.onmessage = (message: MessageEvent<unknown>) => {
    if (Array.isArray(message.data)) hear(message.data.filter(isEntry));
  };
  let open = true;
  return {
    // A save that ends after its journal was left is not told: the other tabs read the store when they come to the front.
    tell: (entries) => {
      if (open) channel.postMessage(entries);
    },
    close: () => {
      open = false;
      channel.close();
    },
  };
}
