import * as v from 'valibot';
import type { SyncMark } from '#outside/sync/synchronize.ts';
import { keptValue } from './kept-value.ts';
import { localMemory } from './local-memory.ts';

const shape = v.strictObject({ since: v.number(), at: v.string(), stamp: v.string(), count: v.number() });

/**
 * How far this device and the server were in step, under a name of its own for each sealed journal. Where it cannot be
 * read everything is compared anew.
 */
export function keptMark(key: string): SyncMark | undefined {
  return keptValue(key, shape);
}

export function keepMark(key: string, mark: SyncMark): void {
  localMemory.set(key, JSON.stringify(mark));
}
