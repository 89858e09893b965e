import { useEffect, useState } from 'preact/hooks';

/** What a browser offers to keep the screen on (W3C Screen Wake Lock). */
export interface WakeKeeper {
  readonly request: (kind: 'screen') => Promise<{ readonly release: () => Promise<void> }>;
}

/** The part of a document that says whether its tab is in front. */
export interface Visibility {
  readonly visibilityState: DocumentVisibilityState;
  addEventListener(name: 'visibilitychange', heard: () => void): void;
  removeEventListener(name: 'visibilitychange', heard: () => void): void;
}

/**
 * Keeps the screen on until the answered function is called. `said` hears whether it is kept: browsers may refuse (a
 * low battery) and let go whenever the tab is hidden, so it is asked for again when the tab comes back.
 */
export function keepAwake(
  keeper: WakeKeeper | undefined,
  visibility: Visibility,
  said: (kept: boolean) => void,
): () => void {
  let ended = false;
  let release: (() => Promise<void>) | undefined;
  const ask = async (): Promise<void> => {
    if (ended || visibility.visibilityState !== 'visible') return;
    try {
      const lock = keeper && (await keeper.request('screen'));
      release = lock && (() => lock.release());
      if (ended) await release?.();
      else said(lock !== undefined);
    } catch {
      // Refused: the person is told, and nothing else depends on it.
      if (!ended) said(false);
    }
  };
  const askAgain = (): void => void ask();
  visibility.addEventListener('visibilitychange', askAgain);
  askAgain();
  return () => {
    ended = true;
    visibility.removeEventListener('visibilitychange', askAgain);
    void release?.();
  };
}

/** While `busy`, the screen stays on. False once it is known that the browser does not keep it on. */
export function useAwake(busy: boolean): boolean {
  const [kept, setKept] = useState(true);
  useEffect(() => {
    if (!busy) return undefined;
    return keepAwake('wakeLock' in navigator ? navigator.wakeLock : undefined, document, setKept);
  }, [busy]);
  return kept;
}
