import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import './page.css';
import { Note } from './note.tsx';
import { Arrow } from './signs.tsx';
import { useAwake } from './stay-awake.ts';

export interface PageProps {
  readonly title: string;
  /** A few words beside the title: the date, how many. */
  readonly detail?: ComponentChildren | undefined;
  /** Where the way back leads: a subpage names its place's address. */
  readonly back?: string | undefined;
  readonly backWords?: string | undefined;
  /** Wet or chalked hands: 64 px targets, 12 px apart, and the screen stays on. */
  readonly busy?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** One screen. Its heading takes the focus when the screen comes up, and names the tab. */
export function Page(props: PageProps): JSX.Element {
  const awake = useAwake(props.busy === true);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${props.title} · Stagewright`;
  }, [props.title]);
  useEffect(() => {
    // Focus moves only where nothing on the new screen asked for it first, and the page starts at its top.
    if (heading.current?.parentElement?.parentElement?.contains(document.activeElement) === true) return;
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div class={props.busy === true ? 'page busy' : 'page'}>
      <header class="page-head">
        {props.back !== undefined && (
          <a class="page-back" href={props.back}>
            <Arrow turn="left" />
            {props.backWords ?? 'Back'}
          </a>
        )}
        <h1 class="page-title" tabIndex={-1} ref={heading}>
          {props.title}
        </h1>
        {props.detail !== undefined && <p class="page-detail">{props.detail}</p>}
      </header>
      {!awake && <Note>This browser does not keep the screen on: it may go dark while you work.</Note>}
      {props.children}
    </div>
  );
}
