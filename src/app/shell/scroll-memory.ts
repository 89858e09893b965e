/** Where each screen was scrolled to. A new screen starts at its top; going back finds the place again. */
const places = new Map<string, number>();
let shown = '';

/** Called while the screen still stands, at every scroll. */
export function noteScroll(): void {
  places.set(shown, window.scrollY);
}

/** Called when another screen has come up. */
export function arrive(hash: string): void {
  const returned: unknown = window.history.state;
  shown = hash;
  if (returned === null) window.history.replaceState('seen', '');
  const top = returned === null ? 0 : (places.get(hash) ?? 0);
  requestAnimationFrame(() => window.scrollTo(0, top));
}
