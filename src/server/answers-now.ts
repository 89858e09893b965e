import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';
import { StoreAwayError } from '#outside/sealed-store/store-away-error.ts';

/** Who asks whether a server is ready sends nobody there that it keeps waiting. */
const PATIENCE_MS = 3000;

/** Whether the store can be asked now: about a name that no journal has. */
export async function answersNow(store: SealedStore, patienceMs = PATIENCE_MS): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), patienceMs);
  });
  try {
    return await Promise.race([store.knows('').then(() => true), tooLate]);
  } catch (fault) {
    if (fault instanceof StoreAwayError) return false;
    throw fault;
  } finally {
    clearTimeout(timer);
  }
}
