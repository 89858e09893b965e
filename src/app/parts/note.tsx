import type { ComponentChildren, JSX } from 'preact';
import './note.css';

/** A remark in soft ink, no wider than it reads well. */
export function Note({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <p class="note">{children}</p>;
}
