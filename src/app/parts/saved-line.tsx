import type { JSX } from 'preact';
import './saved-line.css';
import { CautionSign, DoneSign } from './signs.tsx';

export interface SavedLineProps {
  readonly status: 'saved' | 'saving' | 'notSaved' | 'maybeSaved';
  /** Why, and what to do. */
  readonly words?: string | undefined;
}

const STATUS_WORDS: Readonly<Record<SavedLineProps['status'], string>> = {
  saved: 'Saved',
  saving: 'Saving',
  notSaved: 'Not saved',
  maybeSaved: 'Perhaps not saved',
};

/** Whether what was entered is kept on the device; read aloud when it changes. */
export function SavedLine({ status, words }: SavedLineProps): JSX.Element {
  const wrong = status === 'notSaved' || status === 'maybeSaved';
  return (
    <p class={`saved-line ${wrong ? 'saved-line-wrong' : ''}`} role="status">
      {wrong ? <CautionSign /> : status === 'saved' ? <DoneSign /> : <SavingSign />}
      <span>
        <strong>{STATUS_WORDS[status]}</strong>
        {words !== undefined && ` ${words}`}
      </span>
    </p>
  );
}

function SavingSign(): JSX.Element {
  return (
    <svg class="sign" width="16" height="14" viewBox="0 0 16 14" aria-hidden="true">
      <path d="M2 7h2M7 7h2M12 7h2" stroke="currentColor" stroke-width="2.2" />
    </svg>
  );
}
