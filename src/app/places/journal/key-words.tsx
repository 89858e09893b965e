import type { JSX } from 'preact';
import { QrSquare } from '../../parts/qr-square.tsx';
import './key-words.css';

/** The words of a phrase, numbered, and the same as a square for a camera. */
export function KeyWords({ words, label }: { readonly words: string; readonly label: string }): JSX.Element {
  return (
    <>
      <ol class="key-words">
        {words.split(' ').map((word, place) => (
          <li key={place}>{word}</li>
        ))}
      </ol>
      <QrSquare text={words} label={label} />
    </>
  );
}
