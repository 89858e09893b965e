import { hkdf } from '@noble/hashes/hkdf.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { journalKeys, phraseOf, secretOf } from './journal-keys.ts';
import { openEntry, sealEntry } from './seal-entry.ts';
import { isWhole, openTally, sealTally, tallyOf } from './tally.ts';

const secret = Uint8Array.from({ length: 32 }, (_, i) => i);
const keys = journalKeys(secret);
const other = journalKeys(Uint8Array.from({ length: 32 }, (_, i) => i + 1));

describe('keys of a journal', () => {
  it('[SYN-01] HKDF answers test case 1 of RFC 5869', () => {
    const ikm = hexToBytes('0b'.repeat(22));
    const okm = hkdf(
      sha256,
      ikm,
      hexToBytes('000102030405060708090a0b0c'),
      hexToBytes('f0f1f2f3f4f5f6f7f8f9'),
      42,
    );
    expect(bytesToHex(okm)).toBe(
      '3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf34007208d5b887185865',
    );
  });

  it('[SYN-01] name, access and seal differ, and differ between secrets', () => {
    expect(
      new Set([keys.journal, keys.access.slice(0, 32), bytesToHex(keys.seal).slice(0, 32), other.journal])
        .size,
    ).toBe(4);
  });

  it('[SYN-01] a phrase is 24 words of BIP 39 (vector of its reference list: 32 bytes of nought)', () => {
    const zero = phraseOf(new Uint8Array(32));
    expect(zero).toBe(`${'abandon '.repeat(23)}art`);
    expect(secretOf(`  ${zero.toUpperCase().replaceAll(' ', '\n')} `)).toEqual({
      ok: true,
      value: new Uint8Array(32),
    });
  });

  it.each([
    ['too few words', 'abandon abandon', 'sync/phrase-length'],
    ['a word that is none', `${'abandon '.repeat(23)}arrt`, 'sync/phrase-word'],
    ['a wrong checksum', 'abandon '.repeat(24), 'sync/phrase-checksum'],
  ])('[SYN-01] %s is said', (_what, phrase, code) => {
    expect(secretOf(phrase)).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('a sealed entry', () => {
  const entry = oneEntry({ kind: 'from-a-later-version', data: { anything: ['ä', 1, null] } });

  it('[SYN-02] opens to the same entry, unknown kinds and fields too, and shows nothing of it', () => {
    const sealed = sealEntry(keys, entry);
    expect(openEntry(keys, sealed)).toEqual({ ok: true, value: entry });
    expect(JSON.stringify(sealed)).not.toContain('later');
    expect(sealEntry(keys, entry).body).not.toBe(sealed.body);
  });

  it('[SYN-02] another key, another name, another stamp, or one changed letter does not open', () => {
    const sealed = sealEntry(keys, entry);
    const flipped = sealed.body.startsWith('A') ? `B${sealed.body.slice(1)}` : `A${sealed.body.slice(1)}`;
    expect(openEntry(other, sealed).ok).toBe(false);
    for (const forged of [
      { ...sealed, id: 'another' },
      { ...sealed, stamp: 'another' },
      { ...sealed, body: flipped },
      { ...sealed, body: sealed.body.slice(0, 40) },
      { ...sealed, body: 'AAAA' },
      { ...sealed, body: '' },
    ])
      expect(openEntry(keys, forged)).toMatchObject({ ok: false, problem: { code: 'sync/forged' } });
  });
});

describe('the tally of a device', () => {
  const entries = [1, 2, 3].map((n) => oneEntry({ device: 'phone', id: `p${n}`, stamp: `2027-0${n}` }));

  it('[SYN-03] finds an entry that is missing or was put in, and lets later ones pass', () => {
    const tally = tallyOf(entries, 'phone');
    expect(openTally(keys, sealTally(keys, tally))).toEqual(tally);
    expect(isWhole(entries, tally)).toBe(true);
    expect(isWhole(entries.slice(1), tally)).toBe(false);
    expect(isWhole([...entries, oneEntry({ device: 'phone', id: 'p9', stamp: '2027-00' })], tally)).toBe(
      false,
    );
    expect(isWhole([...entries, oneEntry({ device: 'phone', id: 'p9', stamp: '2027-09' })], tally)).toBe(
      true,
    );
    expect(isWhole([...entries, oneEntry({ device: 'tablet', id: 't1', stamp: '2027-01' })], tally)).toBe(
      true,
    );
  });

  it('[SYN-03] a sealed entry is no tally, and an entry of the journal cannot be passed off as one', () => {
    expect(openTally(keys, sealEntry(keys, oneEntry()))).toBeUndefined();
    expect(openTally(other, sealTally(keys, tallyOf(entries, 'phone')))).toBeUndefined();
  });
});
