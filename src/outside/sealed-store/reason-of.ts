import { StoreAwayError } from './store-away-error.ts';

/** Why something failed, in few words: the system's own code where there is one. */
export function reasonOf(fault: unknown): string {
  if (fault instanceof StoreAwayError) return fault.reason;
  if (!(fault instanceof Error)) return String(fault);
  return 'code' in fault && typeof fault.code === 'string' ? fault.code : fault.message;
}
