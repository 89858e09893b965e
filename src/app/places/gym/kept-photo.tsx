import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Note } from '../../parts/note.tsx';
import { photo as photoOf } from '../../state/photos.ts';
import './machine-drawing.css';

/** A photograph kept on this device; said where this device does not have it. */
export function KeptPhoto({
  photo,
  words,
}: {
  readonly photo: string;
  readonly words: string;
}): JSX.Element | null {
  const address = useSignal<string | undefined>(undefined);
  const missing = useSignal(false);
  useEffect(() => {
    let url: string | undefined;
    let gone = false;
    void photoOf(photo).then((blob) => {
      if (gone) return;
      missing.value = blob === undefined;
      if (!blob) return;
      url = URL.createObjectURL(blob);
      address.value = url;
    });
    return () => {
      gone = true;
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [photo]);
  if (missing.value) return <Note>Its picture is not on this device.</Note>;
  return address.value === undefined ? null : <img class="kept-photo" src={address.value} alt={words} />;
}
