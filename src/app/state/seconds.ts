import { signal, type ReadonlySignal } from '@preact/signals';
import { currentMs } from './moments.ts';

const TICK_MS = 1000;
let timer: ReturnType<typeof setInterval> | undefined;

const ticking = signal(currentMs(), { watched: watch, unwatched: rest });

function tick(): void {
  ticking.value = currentMs();
}

function watch(): void {
  tick();
  timer = setInterval(tick, TICK_MS);
  document.addEventListener('visibilitychange', tick);
}

function rest(): void {
  clearInterval(timer);
  document.removeEventListener('visibilitychange', tick);
}

/** Epoch milliseconds, anew each second while a screen looks at it, and at once when the tab comes back to the front. */
export const nowToSecond: ReadonlySignal<number> = ticking;
