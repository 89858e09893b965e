import '@fontsource-variable/atkinson-hyperlegible-next';
import { render } from 'preact';
import '../shell/tokens.css';
import '../shell/base.css';
import '../shell/shell.css';
import { rememberLight } from '../shell/light.ts';
import { followRoute } from '../shell/route.ts';
import { Gallery } from './gallery.tsx';

const root = document.getElementById('app');
if (root) {
  rememberLight(window.localStorage);
  followRoute(() => window.scrollTo(0, 0));
  render(<Gallery />, root);
}
