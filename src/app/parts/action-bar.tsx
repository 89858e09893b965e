import type { ComponentChildren, JSX } from 'preact';
import './action-bar.css';

/** The screen's main actions: held at the lower edge, within the thumb's reach, above the steel rule. */
export function ActionBar({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <div class="action-bar">{children}</div>;
}
