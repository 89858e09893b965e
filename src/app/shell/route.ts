import { signal } from '@preact/signals';

/** Where one is: "#/kitchen/batch/new?from=stock" is place "kitchen", rest ["batch", "new"], query from=stock. */
export interface Route {
  readonly place: string;
  readonly rest: readonly string[];
  readonly query: ReadonlyMap<string, string>;
}

/** Reads a location hash. An empty hash is the front place, with the name "". */
export function readRoute(hash: string): Route {
  const [pathText = '', queryText = ''] = hash.replace(/^#?\/?/, '').split('?', 2);
  const [place = '', ...rest] = pathText
    .split('/')
    .filter((step) => step !== '')
    .map(decodeStep);
  return { place, rest, query: new Map(new URLSearchParams(queryText)) };
}

/** A path written by hand may hold a stray percent sign: it is then taken as it stands. */
function decodeStep(step: string): string {
  try {
    return decodeURIComponent(step);
  } catch {
    return step;
  }
}

/** The address of a screen, to be used in `href`: `pathTo('kitchen', 'batch', id)`. */
export function pathTo(...steps: readonly string[]): string {
  return `#/${steps.map(encodeURIComponent).join('/')}`;
}

/** The present route; screens read it as a signal. */
export const route = signal<Route>({ place: '', rest: [], query: new Map() });

/** Go to another screen; the back button returns. */
export function go(href: string): void {
  window.location.hash = href;
}

/** Follow the address bar. Returns what stops following. */
export function followRoute(changed: () => void): () => void {
  const follow = (): void => {
    route.value = readRoute(window.location.hash);
    changed();
  };
  route.value = readRoute(window.location.hash);
  window.addEventListener('hashchange', follow);
  return () => window.removeEventListener('hashchange', follow);
}
