import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';
import './section.css';

export interface SectionProps {
  readonly title: string;
  readonly detail?: ComponentChildren | undefined;
  /** A button or a figure at the heading's end. */
  readonly action?: ComponentChildren | undefined;
  /** Heading level; 2 unless it stands within another section. */
  readonly level?: 2 | 3 | undefined;
  readonly titleHidden?: boolean | undefined;
  readonly children?: ComponentChildren | undefined;
}

/** A part of the page under its heading. */
export function Section(props: SectionProps): JSX.Element {
  const id = useId();
  const Heading = props.level === 3 ? 'h3' : 'h2';
  return (
    <section class={`section section-${props.level ?? 2}`} aria-labelledby={id}>
      <div class={props.titleHidden === true ? 'unseen' : 'section-head'}>
        <div class="section-words">
          <Heading class="section-title" id={id}>
            {props.title}
          </Heading>
          {props.detail !== undefined && <span class="section-detail">{props.detail}</span>}
        </div>
        {props.action !== undefined && <span class="section-action">{props.action}</span>}
      </div>
      {props.children}
    </section>
  );
}
