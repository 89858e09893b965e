import { localMemory } from './local-memory.ts';

const SECRET = 'sync/secret';

/** The journal's secret, once the person asked for devices in step. */
export function keptSecret(): Uint8Array | undefined {
  const kept = localMemory.get(SECRET);
  return kept === undefined ? undefined : bytesOf(kept);
}

export function keepSecret(secret: Uint8Array): void {
  localMemory.set(SECRET, hexOf(secret));
}

export function dropSecret(): void {
  localMemory.drop(SECRET);
}

/** Whether it is still the one in force: it may be changed while a meeting is under way. */
export function sameSecret(secret: Uint8Array): boolean {
  return localMemory.get(SECRET) === hexOf(secret);
}

export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}
