import { answered, type Outcome } from '#core/problems/problem.ts';
import type { BlobStore } from '../store-port/blob-store.ts';
import { storageFull, storeUnreachable } from '../store-port/store-problems.ts';
import type { Connection } from './open-database.ts';

/** Photographs in the same database as the journal, so that they come and go together. */
export function indexedDbBlobs(connection: Connection): BlobStore {
  return {
    putBlob: async (key, blob): Promise<Outcome<string>> => {
      try {
        const database = await connection.get();
        const change = database.transaction('blobs', 'readwrite', { durability: 'strict' });
        await Promise.all([change.store.put(blob, key), change.done]);
        return answered(key);
      } catch (fault) {
        const full = fault instanceof DOMException && fault.name === 'QuotaExceededError';
        const detail = fault instanceof Error ? fault.message || fault.name : String(fault);
        return { ok: false, problem: full ? storageFull() : storeUnreachable(detail) };
      }
    },
    getBlob: async (key) => (await connection.get()).get('blobs', key),
    deleteBlob: async (key) => (await connection.get()).delete('blobs', key),
  };
}
