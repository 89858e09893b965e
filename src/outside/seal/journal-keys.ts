import { hkdf } from '@noble/hashes/hkdf.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { entropyToMnemonic, mnemonicToEntropy, validateMnemonic } from '@scure/bip39';
import { wordlist } from '@scure/bip39/wordlists/english.js';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

/** What is drawn from a journal's secret; none of it leads back to the secret. */
export interface JournalKeys {
  /** Under this name the server files the journal. */
  readonly journal: string;
  /** Shown to the server to be let in; it keeps only its digest. */
  readonly access: string;
  /** Seals and opens entries; never leaves the device. */
  readonly seal: Uint8Array;
}

export const SECRET_BYTES = 32;

/** Keys of a journal from its secret (SYN-01), by HKDF with SHA-256 (RFC 5869), one purpose each. */
export function journalKeys(secret: Uint8Array): JournalKeys {
  if (secret.length !== SECRET_BYTES) throw new RangeError(`a secret has ${SECRET_BYTES} bytes`);
  const draw = (purpose: string, bytes: number) =>
    hkdf(sha256, secret, undefined, new TextEncoder().encode(`stagewright 1 ${purpose}`), bytes);
  return {
    journal: bytesToHex(draw('journal', 16)),
    access: bytesToHex(draw('access', 32)),
    seal: draw('seal', 32),
  };
}

/** The secret as 24 words (BIP 39, English list), to be read aloud, printed, and typed on a second device. */
export function phraseOf(secret: Uint8Array): string {
  return entropyToMnemonic(secret, wordlist);
}

/** The secret of a phrase as somebody typed it: any case, any spaces. Its checksum finds a slip. */
export function secretOf(typed: string): Outcome<Uint8Array> {
  const words = typed
    .toLowerCase()
    .normalize('NFKD')
    .split(/[^a-z]+/)
    .filter(Boolean);
  if (words.length !== 24)
    return refused(
      'sync/phrase-length',
      'phrase',
      `The phrase has ${words.length} words; it must have 24.`,
      'Type all 24 words in their order.',
    );
  const unknown = words.find((word) => !wordlist.includes(word));
  if (unknown !== undefined)
    return refused(
      'sync/phrase-word',
      'phrase',
      `"${unknown}" is not one of the words such a phrase is made of.`,
      'Compare it with the other device or with the printed sheet.',
    );
  const phrase = words.join(' ');
  if (!validateMnemonic(phrase, wordlist))
    return refused(
      'sync/phrase-checksum',
      'phrase',
      'These 24 words do not belong together: one is wrong, or two changed places.',
      'Compare them one by one.',
    );
  return answered(mnemonicToEntropy(phrase, wordlist));
}
