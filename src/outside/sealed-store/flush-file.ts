import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Answers once what was written to a file, or the names in a folder, will outlive a power cut. */
export function flushFile(path: string): void {
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
