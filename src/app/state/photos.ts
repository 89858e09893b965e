import { ulid } from '#core/journal/ulid.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { entryChance } from './device.ts';
import { openBlobs } from './journals.ts';

/** Keeps the bytes of a photograph on this device; the key goes into the `photo-taken` entry that names it. */
export async function keepPhoto(photo: Blob): Promise<Outcome<string>> {
  const blobs = openBlobs();
  if (!blobs) {
    return refused('store/no-journal', 'photo', 'No journal is open.', 'Reload the app and try again.');
  }
  return blobs.putBlob(ulid(Date.now(), entryChance()), photo);
}

/** The photograph under a key; undefined where this device does not have it. */
export async function photo(key: string): Promise<Blob | undefined> {
  return openBlobs()?.getBlob(key);
}
