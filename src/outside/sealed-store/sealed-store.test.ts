import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { sealedStoreContract } from '../../../test/contract/sealed-store-contract.ts';
import { openSealedFolder } from './open-sealed-folder.ts';
import { openSqliteStore } from './sqlite-sealed-store.ts';

const folders: string[] = [];
function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'sealed-'));
  folders.push(made);
  return made;
}
afterEach(() => {
  for (const made of folders.splice(0)) rmSync(made, { recursive: true, force: true });
});

describe('sealed journals in SQLite', () => {
  sealedStoreContract('in a file', () => openSqliteStore(join(folder(), 'sealed.sqlite')));
  sealedStoreContract('in memory', () => openSqliteStore(':memory:'));

  const entries = Array.from({ length: 300 }, (_, i) => ({
    id: `e${i}`,
    stamp: `s${i}`,
    body: 'A'.repeat(400),
  }));

  it('[SYN-13] a backup taken while in use is whole, and opens to the same journals', async () => {
    const [here, copy] = [folder(), join(folder(), 'copy.sqlite')];
    const store = await openSealedFolder(here);
    if (!store.ok) throw new Error(store.problem.message);
    await store.value.append('one', entries);
    store.value.backup(copy);
    await store.value.append('one', [{ id: 'later', stamp: 's', body: 'AAAA' }]);
    await store.value.close();
    const again = openSqliteStore(copy);
    expect(again.check()).toEqual([]);
    expect(await again.ids('one')).toEqual(entries.map(({ id }) => id));
    await again.close();
  });

  it('[SYN-12] a folder in use by a process that lives is refused; a lock left by a dead one is taken over', async () => {
    const here = folder();
    writeFileSync(join(here, 'sealed.owner'), '1');
    expect(await openSealedFolder(here)).toMatchObject({
      ok: false,
      problem: { code: 'server/data-in-use' },
    });
    for (const left of ['999999999', '', '0', '-1', 'half']) {
      writeFileSync(join(here, 'sealed.owner'), left);
      const store = await openSealedFolder(here);
      expect([left, store.ok]).toEqual([left, true]);
      if (store.ok) await store.value.close();
    }
  });

  it.each([
    [
      'the head overwritten',
      (file: string) =>
        writeFileSync(file, Buffer.concat([Buffer.alloc(100, 7), readFileSync(file).subarray(100)])),
    ],
    [
      'a page in the middle overwritten',
      (file: string) => {
        const bytes = readFileSync(file);
        bytes.fill(0xee, 4096 * 3, 4096 * 5);
        writeFileSync(file, bytes);
      },
    ],
    ['cut off in the middle', (file: string) => truncateSync(file, 4096 * 6 + 100)],
  ])('[SYN-12] a damaged file is found at the start and named: %s', async (_what, damage) => {
    const here = folder();
    const store = await openSealedFolder(here);
    if (!store.ok) throw new Error(store.problem.message);
    await store.value.append('one', entries);
    await store.value.close();
    damage(join(here, 'sealed.sqlite'));
    expect(await openSealedFolder(here)).toMatchObject({
      ok: false,
      problem: { code: 'server/data-damaged' },
    });
  });
});
