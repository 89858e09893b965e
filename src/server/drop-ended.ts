import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';

/** Drops the journals that were lent until a moment before this one (SYN-24). */
export async function dropEnded(store: SealedStore, nowMs: number): Promise<void> {
  for (const journal of await store.ended(nowMs)) await store.drop(journal);
}
