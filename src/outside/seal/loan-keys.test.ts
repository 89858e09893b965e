import { bytesToHex } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { journalKeys, phraseOf, secretOf } from './journal-keys.ts';
import { lenderKeys, loanKeys, loanSecret, readerDigest } from './loan-keys.ts';
import { openEntry, sealEntry } from './seal-entry.ts';

const secret = Uint8Array.from({ length: 32 }, (_, i) => i);
const reader = loanKeys(loanSecret(secret, 'one'));
const lender = lenderKeys(secret, 'one');

describe('keys of a lent copy', () => {
  it('[SYN-24] reader and lender file and open the same copy, and only the lender has the token that writes', () => {
    expect([reader.journal, bytesToHex(reader.seal)]).toEqual([lender.journal, bytesToHex(lender.seal)]);
    expect(reader.access).not.toBe(lender.access);
    const entry = oneEntry();
    expect(openEntry(reader, sealEntry(lender, entry))).toEqual({ ok: true, value: entry });
    expect(readerDigest(reader)).not.toContain(reader.access.slice(0, 16));
  });

  it('[SYN-24] two loans, and a loan and its journal, have nothing in common', () => {
    const [own, other] = [journalKeys(secret), loanKeys(loanSecret(secret, 'two'))];
    expect(new Set([own.journal, reader.journal, other.journal]).size).toBe(3);
    expect(new Set([own.access, reader.access, lender.access, other.access]).size).toBe(4);
    const sealed = sealEntry(own, oneEntry());
    for (const keys of [reader, other]) expect(openEntry(keys, sealed).ok).toBe(false);
  });

  it('[SYN-24] its phrase has 18 words, and neither phrase is taken for the other', () => {
    const phrase = phraseOf(loanSecret(secret, 'one'));
    expect(phrase.split(' ')).toHaveLength(18);
    expect(secretOf(phrase, 'lent copy')).toEqual({ ok: true, value: loanSecret(secret, 'one') });
    expect(secretOf(phrase)).toMatchObject({ problem: { remedy: expect.stringContaining('Lent copies') } });
    expect(secretOf(phraseOf(secret), 'lent copy')).toMatchObject({
      problem: { remedy: expect.stringContaining('never give it away') },
    });
  });
});
