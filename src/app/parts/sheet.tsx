import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { Button } from './button.tsx';
import './sheet.css';

export interface SheetProps {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
  /** Buttons at the lower edge, beside the one that closes. */
  readonly actions?: ComponentChildren | undefined;
  readonly closeWords?: string | undefined;
  /** On a wide screen: a note in the margin that leaves the page in use, instead of a dialog over it. */
  readonly margin?: boolean | undefined;
}

const WIDE = '(min-width: 64em)';

/** A sheet laid over the page: from below on the phone, in the middle (or the margin) of a wide screen. */
export function Sheet(props: SheetProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const element = dialog.current;
    if (!element || props.open === element.open) return;
    if (!props.open) element.close();
    else if (props.margin === true && window.matchMedia(WIDE).matches) element.show();
    else element.showModal();
  }, [props.open, props.margin]);
  const closeByKey = (event: KeyboardEvent): void => {
    // A modal sheet closes by itself on Escape; a margin note does not.
    if (event.key === 'Escape') dialog.current?.close();
  };
  const closeBeside = (event: MouseEvent): void => {
    if (event.target === dialog.current) dialog.current?.close();
  };
  return (
    <dialog
      class={props.margin === true ? 'sheet sheet-margin' : 'sheet'}
      ref={dialog}
      aria-labelledby={titleId}
      onClose={props.onClose}
      onKeyDown={closeByKey}
      onClick={closeBeside}
    >
      {props.open && (
        <div class="sheet-paper">
          <h2 class="sheet-title" id={titleId} tabIndex={-1}>
            {props.title}
          </h2>
          <div class="sheet-body">{props.children}</div>
          <div class="sheet-actions">
            <Button onPress={() => dialog.current?.close()}>{props.closeWords ?? 'Close'}</Button>
            {props.actions}
          </div>
        </div>
      )}
    </dialog>
  );
}
