import * as v from 'valibot';
import type { SyncMark } from '#outside/sync/synchronize.ts';
import { localMemory } from './local-memory.ts';

const shape = v.strictObject({ since: v.number(), at: v.string(), stamp: v.string(), count: v.number() });

/** How far this device and the server were in step, under a name of its own for each sealed journal. */
export function keptMark(key: string): SyncMark | undefined {
  try {
    const read = v.safeParse(shape, JSON.parse(localMemory.get(key) ?? 'null'));
    return read.success ? read.output : undefined;
  } catch {
    // A mark that cannot be read is no mark: everything is compared anew.
    return undefined;
  }
}

export function keepMark(key: string, mark: SyncMark): void {
  localMemory.set(key, JSON.stringify(mark));
}
