import { describe, expect, it } from 'vitest';
import { keepAwake } from './stay-awake.ts';

/** A tab whose visibility the test turns. */
function tab(): {
  visibilityState: DocumentVisibilityState;
  addEventListener: (name: string, heard: () => void) => void;
  removeEventListener: (name: string, heard: () => void) => void;
  turn: (state: DocumentVisibilityState) => void;
} {
  const listeners = new Set<() => void>();
  return {
    visibilityState: 'visible',
    addEventListener: (_name, heard) => void listeners.add(heard),
    removeEventListener: (_name, heard) => void listeners.delete(heard),
    turn(state) {
      this.visibilityState = state;
      for (const heard of listeners) heard();
    },
  };
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe('[LOOK-17] hands-busy screens stay awake', () => {
  it('[LOOK-17] asks at once, again when the tab comes back, and lets go at the end', async () => {
    const log: string[] = [];
    const keeper = {
      request: async () => {
        log.push('asked');
        return { release: async () => void log.push('released') };
      },
    };
    const visible = tab();
    const end = keepAwake(keeper, visible, (kept) => log.push(kept ? 'kept' : 'not kept'));
    await settled();
    visible.turn('hidden');
    visible.turn('visible');
    await settled();
    end();
    await settled();
    visible.turn('visible');
    await settled();
    expect(log).toEqual(['asked', 'kept', 'asked', 'kept', 'released']);
  });

  it('[LOOK-17] says so where the browser refuses or has no such thing', async () => {
    const said: boolean[] = [];
    keepAwake({ request: () => Promise.reject(new Error('low battery')) }, tab(), (kept) => said.push(kept));
    keepAwake(undefined, tab(), (kept) => said.push(kept));
    await settled();
    expect(said).toEqual([false, false]);
  });

  it('[LOOK-17] an answer that comes after the end is let go at once', async () => {
    const log: string[] = [];
    const keeper = { request: async () => ({ release: async () => void log.push('released') }) };
    keepAwake(keeper, tab(), () => log.push('said'))();
    await settled();
    expect(log).toEqual(['released']);
  });
});
