import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownServer, sendEntries } from './own-server.ts';
import { journalKeys } from '../../src/outside/seal/journal-keys.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { openSealedFolder } from '../../src/outside/sealed-store/open-sealed-folder.ts';

const keys = journalKeys(new Uint8Array(32).fill(5));

describe('a server that is killed under load', () => {
  it('[SYN-16] has every entry whose keeping it acknowledged, and its file is whole', {
    timeout: 30_000,
  }, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'killed-'));
    const acknowledged = new Set<string>();
    for (let round = 0; round < 3; round++) {
      const { address, process: child } = await ownServer(folder);
      const ended = new Promise((resolve) => child.once('exit', resolve));
      // Counted in batches, not in time, so that a slow machine kills it under the same load.
      for (let n = 0; ; n++) {
        const batch = Array.from({ length: 5 }, (_, i) => `r${round}-${n}-${i}`);
        if (n === 4 + round) setTimeout(() => child.kill('SIGKILL'), 3 * round);
        const kept = await send(address, batch);
        if (!kept) break;
        for (const id of batch) acknowledged.add(id);
      }
      await ended;
    }
    const store = await openSealedFolder(folder);
    if (!store.ok) throw new Error(store.problem.message);
    const ids = new Set(await store.value.ids(keys.journal));
    expect(acknowledged.size).toBeGreaterThan(20);
    expect([...acknowledged].filter((id) => !ids.has(id))).toEqual([]);
    await store.value.close();
    rmSync(folder, { recursive: true, force: true });
  });
});

describe('a backup under load', () => {
  it('[SYN-13] is whole each time, and stops nobody from writing', { timeout: 30_000 }, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'backup-'));
    const { address, process: child } = await ownServer(folder);
    const ended = new Promise((resolve) => child.once('exit', resolve));
    let sent = 0;
    const load = async (): Promise<void> => {
      for (let n = 0; n < 30; n++) sent += (await send(address, [`b${n}`])) ? 1 : 0;
    };
    const loading = load();
    const sizes: number[] = [];
    for (let copy = 0; copy < 3; copy++) {
      const file = join(folder, `copy-${copy}`);
      const said = await backup(folder, file);
      expect(said).toContain('Copied to');
      const store = openSqliteStore(file);
      expect(store.check()).toEqual([]);
      sizes.push((await store.ids(keys.journal)).length);
      await store.close();
    }
    await loading;
    child.kill('SIGKILL');
    await ended;
    expect(sent).toBe(30);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    rmSync(folder, { recursive: true, force: true });
  });
});

/** The command, in a process of its own; answers what it printed. */
function backup(folder: string, file: string): Promise<string> {
  const program = join(import.meta.dirname, '../../bin/stagewright');
  const child = spawn(process.execPath, [program, 'backup', folder, file], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said: string[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => said.push(String(text)));
  return new Promise((resolve) => child.once('close', () => resolve(said.join(''))));
}

async function send(address: string, ids: readonly string[]): Promise<boolean> {
  return (await sendEntries(address, keys, ids)) === 200;
}
