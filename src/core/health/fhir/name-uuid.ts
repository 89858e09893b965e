/**
 * A UUID of version 8 (RFC 9562: made in one's own way) from a text: the same text gives the same UUID on every machine.
 * It names resources inside one file; it is no secret and guards nothing.
 */
export function nameUuid(text: string): string {
  const words = [0x9e3779b9, 0x85ebca6b, 0xc2b2ae35, 0x27d4eb2f].map((seed) => mix(text, seed));
  const hex = words.map((word) => word.toString(16).padStart(8, '0')).join('');
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 0x3) | 0x8).toString(16);
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}

/** Fowler-Noll-Vo steps with a final avalanche, 32 bit. */
function mix(text: string, seed: number): number {
  let hash = seed ^ 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
    hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x297a2d39);
  return (hash ^ (hash >>> 15)) >>> 0;
}
