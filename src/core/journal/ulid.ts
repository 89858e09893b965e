/** Crockford's base 32: no I, L, O, U, so that it can be read aloud. */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * A unique name: 48 bits of time and 80 bits of chance as 26 characters (ULID, an open specification).
 * `random` are at least 10 bytes drawn by the caller; the core draws no chance of its own.
 */
export function ulid(epochMs: number, random: Uint8Array): string {
  if (random.length < 10) throw new RangeError('a ULID needs 10 random bytes');
  let time = '';
  for (let rest = Math.max(0, Math.floor(epochMs)), i = 0; i < 10; i++) {
    time = DIGITS.charAt(rest % 32) + time;
    rest = Math.floor(rest / 32);
  }
  let chance = '';
  for (let i = 0; i < 16; i++) {
    const bit = i * 5;
    const pair = ((random[bit >> 3] ?? 0) << 8) | (random[(bit >> 3) + 1] ?? 0);
    chance += DIGITS.charAt((pair >> (11 - (bit & 7))) & 31);
  }
  return time + chance;
}
