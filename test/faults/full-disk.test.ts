import { afterEach, describe, expect, it, vi } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { journalKeys } from '../../src/outside/seal/journal-keys.ts';
import { openSealedFolder } from '../../src/outside/sealed-store/open-sealed-folder.ts';
import { type Ask, noMark, synchronize } from '../../src/outside/sync/synchronize.ts';
import { createServer } from '../../src/server/create-server.ts';
import { oneEntry } from '../journal/one-entry.ts';
import { type Disk, disks } from './full-disk.ts';

const keys = journalKeys(new Uint8Array(32).fill(6));
const journal = (device: string, count: number) =>
  createLedger(
    Array.from({ length: count }, (_, i) =>
      oneEntry({ id: `${device}-${i}`, stamp: `2027-${1000 + i}-${device}`, device }),
    ),
  );

let disk: Disk | undefined;
afterEach(() => {
  disk?.remove();
  disk = undefined;
  vi.restoreAllMocks();
});

describe.each(disks())('a server whose disk is full (%s)', (_name, make) => {
  it('[SYN-32] [SYN-33] says so, keeps nothing half, lets read, and takes again with room', async () => {
    disk = make();
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const store = await openSealedFolder(disk.folder);
    if (!store.ok) throw new Error(store.problem.message);
    let clock = 0;
    const app = createServer({
      files: new Map(),
      sync: { store: store.value, clockMs: () => (clock += 10_000), nowMs: Date.now },
    });
    const statuses: number[] = [];
    const ask: Ask = async (path, body) => {
      const answer = await app.request(`/sync/${path}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
        body: JSON.stringify(body),
      });
      statuses.push(answer.status);
      return { status: answer.status, body: await answer.json() };
    };
    const bring = (ledger: ReturnType<typeof createLedger>, device: string) =>
      synchronize(
        {
          keys,
          ask,
          device,
          entries: () => ledger.entries(),
          take: (entries) => {
            ledger.add(entries);
            return Promise.resolve(true);
          },
        },
        noMark,
      );
    const [one, two, reader] = [journal('one', 40), journal('two', 300), createLedger()];
    expect((await bring(one, 'one')).ok).toBe(true);
    disk.fill();
    const refused = await bring(two, 'two');
    expect(refused).toMatchObject({ ok: false, problem: { code: 'sync/server-full' } });
    expect(refused.ok ? '' : refused.problem.message).toContain('newest entries are not on the server');
    expect(refused.ok ? '' : refused.problem.remedy).toContain('Everything is kept on this device');
    expect(statuses).toContain(507);
    expect(said.mock.calls.join('')).not.toContain(keys.journal);
    // What the first wrote came all the same, to this device and to one that only reads.
    expect(two.size).toBe(340);
    expect(await bring(reader, 'reader')).toMatchObject({ ok: true, value: { received: 40 } });
    expect(await store.value.ids(keys.journal)).toHaveLength(40);
    expect(store.value.check()).toEqual([]);
    disk.makeRoom();
    for (const [ledger, device] of [
      [two, 'two'],
      [one, 'one'],
    ] as const)
      expect(await bring(ledger, device)).toMatchObject({ ok: true, value: { problems: [] } });
    expect(writeJournal(one.entries())).toBe(writeJournal(two.entries()));
    await store.value.close();
  });

  it('[SYN-32] answers a refusal of the shape every refusal has, and a new journal is not half begun', async () => {
    disk = make();
    vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const store = await openSealedFolder(disk.folder);
    if (!store.ok) throw new Error(store.problem.message);
    const app = createServer({
      files: new Map(),
      sync: { store: store.value, clockMs: () => 0, nowMs: Date.now },
    });
    await store.value.append('filler', journal('filler', 60).entries().map(sealedLike));
    disk.fill();
    const begin = () =>
      app.request('/sync/exchange', {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
        body: JSON.stringify({
          journal: keys.journal,
          since: 0,
          at: '',
          entries: journal('one', 300).entries().map(sealedLike),
        }),
      });
    const answer = await begin();
    expect([answer.status, answer.headers.get('x-content-type-options')]).toEqual([507, 'nosniff']);
    expect(await answer.json()).toMatchObject({ problem: { code: 'server/refused', path: '' } });
    expect(await store.value.ids(keys.journal)).toEqual([]);
    disk.makeRoom();
    expect((await begin()).status).toBe(200);
    await store.value.close();
  });
});

function sealedLike({ id, stamp }: { readonly id: string; readonly stamp: string }) {
  return { id, stamp, body: 'A'.repeat(400) };
}
