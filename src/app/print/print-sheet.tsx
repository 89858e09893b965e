import type { ComponentChildren, JSX } from 'preact';
import './print-sheet.css';

export interface PrintSheetProps {
  readonly title: string;
  /** "YYYY-MM-DD": the day it is for. */
  readonly date: string;
  /** Which plan it is, so that an old sheet on the wall is known: "second plan, 13:40". */
  readonly version: string;
  readonly children: ComponentChildren;
}

/** A sheet for the wall or the lid: on paper it stands alone, true black, with its date and version. */
export function PrintSheet(props: PrintSheetProps): JSX.Element {
  return (
    <article class="print-sheet">
      <header class="print-head">
        <h2 class="print-title">{props.title}</h2>
        <p class="print-date">{`${props.date} · ${props.version}`}</p>
      </header>
      {props.children}
    </article>
  );
}

/** A step with a box to tick by pencil. */
export function StepBox({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return (
    <p class="step-box">
      <span class="step-square" aria-hidden="true" />
      <span>{children}</span>
    </p>
  );
}
