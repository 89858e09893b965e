import { xchacha20poly1305 } from '@noble/ciphers/chacha.js';
import { managedNonce } from '@noble/ciphers/utils.js';
import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { JournalKeys } from './journal-keys.ts';

/** Names, stamps and texts of the outside world are no longer than these. */
export const MOST_BODY_CHARACTERS = 90_000;

/** What the server holds of an entry: a name, a stamp that sorts, and what it cannot read. */
export const sealedEntry = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[\x21-\x7e]{1,120}$/, 'a name of visible letters')),
  stamp: v.pipe(v.string(), v.regex(/^[\x21-\x7e]{1,100}$/, 'a stamp of visible letters')),
  /** base64 of nonce, ciphertext and tag. */
  body: v.pipe(v.string(), v.regex(/^[A-Za-z0-9+/]+={0,2}$/), v.maxLength(MOST_BODY_CHARACTERS)),
});
export type SealedEntry = v.InferOutput<typeof sealedEntry>;

const cipher = managedNonce(xchacha20poly1305);

/** Journal, name and stamp are authenticated with the entry: none of them can be swapped for another's (SYN-02). */
function boundTo(keys: JournalKeys, id: string, stamp: string): Uint8Array {
  return new TextEncoder().encode(JSON.stringify([keys.journal, id, stamp]));
}

/** An entry nobody without the key can read or change (XChaCha20-Poly1305, a random nonce for each). */
export function sealEntry(keys: JournalKeys, entry: Entry): SealedEntry {
  const plain = new TextEncoder().encode(canonicalLine(entry));
  const body = cipher(keys.seal, boundTo(keys, entry.id, entry.stamp)).encrypt(plain);
  return { id: entry.id, stamp: entry.stamp, body: toBase64(body) };
}

/** The entry again, or that it was not sealed with this key for this place. */
export function openEntry(keys: JournalKeys, { id, stamp, body }: SealedEntry): Outcome<Entry> {
  const forged = refused<Entry>(
    'sync/forged',
    id,
    `An entry that the server handed over (${id}) was not sealed by a device of this journal, or was changed since.`,
    'It was left out. If this goes on, keep a copy of the journal and use another server.',
  );
  const plain = opened(keys, id, stamp, body);
  if (plain === undefined) return forged;
  const [entry] = readJournal(new TextDecoder().decode(plain)).entries;
  return entry && entry.id === id && entry.stamp === stamp ? answered(entry) : forged;
}

function opened(keys: JournalKeys, id: string, stamp: string, body: string): Uint8Array | undefined {
  try {
    return cipher(keys.seal, boundTo(keys, id, stamp)).decrypt(fromBase64(body));
  } catch {
    // A tag that does not fit and text that is no base64 mean the same: this is not ours.
    return undefined;
  }
}

export function toBase64(bytes: Uint8Array): string {
  let text = '';
  // Applied, not spread: spreading walks the bytes one by one and takes seven times as long.
  for (let i = 0; i < bytes.length; i += 0x8000)
    text += Reflect.apply(String.fromCharCode, undefined, bytes.subarray(i, i + 0x8000));
  return btoa(text);
}

export function fromBase64(text: string): Uint8Array {
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) bytes[i] = letters.charCodeAt(i);
  return bytes;
}
