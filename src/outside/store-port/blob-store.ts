import type { Outcome } from '#core/problems/problem.ts';

/** Where photographs are kept, beside the journal that names them. */
export interface BlobStore {
  /** Keeps bytes under a name; keeping the same name again replaces them. */
  putBlob(key: string, blob: Blob): Promise<Outcome<string>>;
  getBlob(key: string): Promise<Blob | undefined>;
  deleteBlob(key: string): Promise<void>;
}
