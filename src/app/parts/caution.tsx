import type { ComponentChildren, JSX } from 'preact';
import { CautionSign } from './signs.tsx';
import './caution.css';

export interface CautionProps {
  /** "Caution" unless a more telling word fits. */
  readonly title?: string | undefined;
  readonly words: string | readonly string[];
  /** Citation of the rule or study. */
  readonly source?: string | undefined;
  /** `urgent`: seek care now. It is read out at once. */
  readonly kind?: 'caution' | 'urgent' | undefined;
  readonly children?: ComponentChildren | undefined;
}

/** A caution: rust, with its sign and its words. */
export function Caution(props: CautionProps): JSX.Element {
  const kind = props.kind ?? 'caution';
  const words = typeof props.words === 'string' ? [props.words] : props.words;
  return (
    <div class={`caution caution-${kind}`} role={kind === 'urgent' ? 'alert' : undefined}>
      <CautionSign />
      <div class="caution-text">
        <p class="caution-title">{props.title ?? (kind === 'urgent' ? 'Seek care now' : 'Caution')}</p>
        {words.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {props.source !== undefined && <p class="caution-source">{`Source: ${props.source}`}</p>}
        {props.children}
      </div>
    </div>
  );
}
