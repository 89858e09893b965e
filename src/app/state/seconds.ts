import { signal, type ReadonlySignal } from '@preact/signals';
import { currentMs } from './moments.ts';

let timer: ReturnType<typeof setInterval> | undefined;

const ticking = signal(currentMs(), {
  watched: () => {
    ticking.value = currentMs();
    timer = setInterval(() => {
      ticking.value = currentMs();
    }, 1000);
  },
  unwatched: () => {
    clearInterval(timer);
  },
});

/** Epoch milliseconds, each second, only while something looks at it. A phone that slept shows the right time at once. */
export const seconds: ReadonlySignal<number> = ticking;
