import type { ComponentChildren, JSX } from 'preact';
import { CautionSign } from './signs.tsx';
import './tag.css';

export interface TagProps {
  readonly kind?: 'plain' | 'next' | 'caution' | undefined;
  readonly children: ComponentChildren;
}

/** A word stamped beside a thing: "pinned", "frozen", "use today". */
export function Tag({ kind = 'plain', children }: TagProps): JSX.Element {
  return (
    <span class={`tag tag-${kind}`}>
      {kind === 'caution' && <CautionSign />}
      {children}
    </span>
  );
}
