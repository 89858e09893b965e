import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';
import { StoreAwayError } from '#outside/sealed-store/store-away-error.ts';

/** Whether the store can be asked now: about a name that no journal has. */
export async function answersNow(store: SealedStore): Promise<boolean> {
  try {
    return !(await store.knows(''));
  } catch (fault) {
    if (fault instanceof StoreAwayError) return false;
    throw fault;
  }
}
