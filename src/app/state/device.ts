import { localMemory } from './local-memory.ts';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz234567';

function letters(count: number): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(count)), (byte) => LETTERS[byte & 31]).join('');
}

function knownDevice(): string {
  const known = localMemory.get('device');
  if (known !== undefined && /^[a-z2-7]{8}$/.test(known)) return known;
  const made = letters(8);
  localMemory.set('device', made);
  return made;
}

/** This browser on this machine; a made-up name that says nothing about it. */
export const device = knownDevice();

/** Who stamps entries: two tabs of one device never share a stamp. */
export const writer = device + letters(4);

/** Chance for the name of one entry. */
export function entryChance(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(10));
}
