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
  return {
    journal: bytesToHex(draw(secret, 'journal', 16)),
    access: bytesToHex(draw(secret, 'access', 32)),
    seal: draw(secret, 'seal', 32),
  };
}

/** So many bytes for one purpose; from those of another nothing can be told. */
export function draw(secret: Uint8Array, purpose: string, bytes: number): Uint8Array {
  return hkdf(sha256, secret, undefined, new TextEncoder().encode(`stagewright 1 ${purpose}`), bytes);
}

/** What a phrase opens: a journal of one's own, or a copy that somebody lent. Told apart by their length. */
const PHRASES = {
  journal: {
    words: 24,
    other: 18,
    otherwise: 'That is the phrase of a lent copy: type it under Journal, Lent copies.',
  },
  'lent copy': {
    words: 18,
    other: 24,
    otherwise:
      'That is the phrase of a whole journal: never give it away. It belongs under Journal, Devices.',
  },
} as const;

/** The secret as words (BIP 39, English list; 32 bytes 24, 24 bytes 18), to be read aloud, printed, and typed on another device. */
export function phraseOf(secret: Uint8Array): string {
  return entropyToMnemonic(secret, wordlist);
}

/** The secret of a phrase as somebody typed it: any case, any spaces. Its checksum finds a slip. */
export function secretOf(typed: string, opens: keyof typeof PHRASES = 'journal'): Outcome<Uint8Array> {
  const words = typed
    .toLowerCase()
    .normalize('NFKD')
    .split(/[^a-z]+/)
    .filter(Boolean);
  const asked = PHRASES[opens];
  if (words.length !== asked.words)
    return refused(
      'sync/phrase-length',
      'phrase',
      `The phrase has ${words.length} words; it must have ${asked.words}.`,
      words.length === asked.other ? asked.otherwise : `Type all ${asked.words} words in their order.`,
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
      `These ${words.length} words do not belong together: one is wrong, or two changed places.`,
      'Compare them one by one.',
    );
  return answered(mnemonicToEntropy(phrase, wordlist));
}
