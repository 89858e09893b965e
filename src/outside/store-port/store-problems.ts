import type { Problem } from '#core/problems/problem.ts';

/** What a store says when it cannot keep something; the words are the same for every adapter. */
export function storageFull(): Problem {
  return {
    code: 'store/full',
    path: 'store',
    message: 'The storage of this device is full; the last entries are not saved yet.',
    remedy: 'Free some space, then try again; meanwhile download a copy of the journal.',
  };
}

export function storeUnreachable(detail: string): Problem {
  return {
    code: 'store/unreachable',
    path: 'store',
    message: `The storage of this browser does not answer (${detail}).`,
    remedy: 'Close other tabs of this app and try again; meanwhile download a copy of the journal.',
  };
}

export function storeSilent(seconds: number): Problem {
  return {
    code: 'store/silent',
    path: 'store',
    message: `The storage gave no answer within ${seconds} seconds; the last entries may or may not be saved.`,
    remedy: 'Try again: an entry saved twice counts once.',
  };
}
