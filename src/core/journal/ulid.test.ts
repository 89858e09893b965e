import { describe, expect, test } from 'vitest';
import { ulid } from './ulid.ts';

describe('ULIDs', () => {
  test('[JRN-14] hold 48 bits of time and 80 bits of chance in 26 characters (the ULID specification)', () => {
    expect(ulid(0, new Uint8Array(10))).toBe('00000000000000000000000000');
    const largest = ulid(2 ** 48 - 1, new Uint8Array(10).fill(255));
    // The largest ULID the specification allows.
    expect(largest).toBe('7ZZZZZZZZZZZZZZZZZZZZZZZZZ');
  });

  test('[JRN-14] the time of the specification’s example reads the same here', () => {
    // "01ARYZ6S41" is the time part of the specification's example 01ARYZ6S41TSV4RRFFQ69G5FAV (from memory).
    expect(ulid(1_469_918_176_385, new Uint8Array(10)).slice(0, 10)).toBe('01ARYZ6S41');
  });

  test('[JRN-14] sort by time, and every bit of chance shows', () => {
    const random = new Uint8Array(10);
    expect(ulid(1, random) < ulid(2, random)).toBe(true);
    const all = new Set<string>();
    for (let bit = 0; bit < 80; bit++) {
      const one = new Uint8Array(10);
      one[bit >> 3] = 128 >> (bit & 7);
      all.add(ulid(0, one));
    }
    expect(all.size).toBe(80);
    expect(() => ulid(0, new Uint8Array(9))).toThrow(RangeError);
  });
});
