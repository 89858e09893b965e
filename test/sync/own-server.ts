import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { oneEntry } from '../journal/one-entry.ts';
import type { JournalKeys } from '../../src/outside/seal/journal-keys.ts';
import { sealEntry } from '../../src/outside/seal/seal-entry.ts';

const PROGRAM = join(import.meta.dirname, 'serve-sealed.ts');

export interface OwnServer {
  readonly address: string;
  readonly process: ChildProcess;
  /** What it wrote on standard error so far. */
  readonly said: () => string;
}

/** A server in a process of its own, over a folder or a connection string; answers once it listens. */
export async function ownServer(place: string): Promise<OwnServer> {
  const child = spawn(process.execPath, ['--import', 'tsx', PROGRAM, place], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (text: Buffer) => (said += text.toString()));
  const address = await new Promise<string>((resolve, reject) => {
    child.once('close', (code) => reject(new Error(`the server ended with ${code}: ${said}`)));
    child.stdout.once('data', (text: Buffer) => resolve(text.toString().trim()));
  });
  return { address, process: child, said: () => said };
}

/** Sends entries of these names over HTTP; answers the status, or undefined where the connection broke off. */
export async function sendEntries(
  address: string,
  keys: JournalKeys,
  ids: readonly string[],
): Promise<number | undefined> {
  try {
    const answer = await fetch(`${address}sync/exchange`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
      body: JSON.stringify({
        journal: keys.journal,
        since: 0,
        at: '',
        entries: ids.map((id) => sealEntry(keys, oneEntry({ id, stamp: id }))),
      }),
    });
    await answer.arrayBuffer();
    return answer.status;
  } catch {
    // The server is gone, and nothing was acknowledged.
    return undefined;
  }
}
