import '@fontsource-variable/atkinson-hyperlegible-next';
import { render } from 'preact';
import './shell/tokens.css';
import './shell/base.css';
import { noteScreenChange } from './parts/press-guard.ts';
import { closeWhy } from './parts/why.ts';
import { rememberLight } from './shell/light.ts';
import { PLACES } from './shell/places.ts';
import { followRoute } from './shell/route.ts';
import { arrive, noteScroll } from './shell/scroll-memory.ts';
import { Shell } from './shell/shell.tsx';
import { keepOnDevice } from './shell/updates.ts';
import { start } from './state/journals.ts';
import { followSync } from './state/sync.ts';

/** Another screen has come up: reasons of the old one go, and the finger still in the air touches nothing. */
function screenChanged(): void {
  closeWhy();
  noteScreenChange(performance.now());
  arrive(window.location.hash);
}

function draw(root: HTMLElement): void {
  render(<Shell places={PLACES} />, root);
}

const root = document.getElementById('app');
if (root) {
  rememberLight(window.localStorage);
  followRoute(screenChanged);
  arrive(window.location.hash);
  window.addEventListener('scroll', noteScroll, { passive: true });
  draw(root);
  void start({ demo: async () => (await import('./start/demo.ts')).openDemo() });
  followSync();
  // The week's planning is no part of the first screen.
  void import('./views/week-watch.ts').then(({ followWeek }) => followWeek());
  if (import.meta.env.PROD && 'serviceWorker' in navigator) void keepOnDevice(navigator.serviceWorker);
}
