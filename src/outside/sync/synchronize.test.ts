import { describe, expect, it } from 'vitest';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { createServer } from '../../server/create-server.ts';
import { journalKeys } from '../seal/journal-keys.ts';
import { sealEntry } from '../seal/seal-entry.ts';
import { openSqliteStore } from '../sealed-store/sqlite-sealed-store.ts';
import type { SealedStore } from '../sealed-store/sealed-store.ts';
import { exchangeAnswer } from './exchange.ts';
import { type Ask, noMark, type SyncMark, synchronize } from './synchronize.ts';
import * as v from 'valibot';

const keys = journalKeys(new Uint8Array(32).fill(3));

function server(): Ask {
  return serverOf(openSqliteStore(':memory:'));
}

function serverOf(store: SealedStore): Ask {
  let clock = 0;
  const app = createServer({
    files: new Map(),
    sync: { store, clockMs: () => (clock += 10_000), nowMs: Date.now },
  });
  return async (path, body) => {
    const answer = await app.request(`/sync/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
      body: JSON.stringify(body),
    });
    return { status: answer.status, body: await answer.json() };
  };
}

function journal(device: string, count: number): GrowingLedger {
  return createLedger(
    Array.from({ length: count }, (_, i) => {
      const number = String(i).padStart(6, '0');
      return oneEntry({ id: `${device}-${number}`, stamp: `2027-${number}-${device}`, device });
    }),
  );
}

function bring(
  ask: Ask,
  ledger: GrowingLedger,
  device: string,
  mark: SyncMark = noMark,
  keeps = true,
  batch = 40,
) {
  return synchronize(
    {
      keys,
      ask,
      device,
      entries: () => ledger.entries(),
      take: (entries) => {
        if (keeps) ledger.add(entries);
        return Promise.resolve(keeps);
      },
      batch,
    },
    mark,
  );
}

describe('bringing two devices together', () => {
  it('[SYN-05] a day goes both ways in one round trip', async () => {
    const honest = server();
    const paths: string[] = [];
    const ask: Ask = (path, body) => {
      paths.push(path);
      return honest(path, body);
    };
    const [one, two] = [journal('one', 30), journal('two', 40)];
    const first = await bring(ask, one, 'one');
    await bring(ask, two, 'two');
    expect(paths).toEqual(['exchange', 'exchange']);
    const again = await bring(ask, one, 'one', first.ok ? first.value.mark : noMark);
    expect(again).toMatchObject({ ok: true, value: { sent: 0, received: 40, problems: [] } });
    expect(paths).toHaveLength(3);
    expect(writeJournal(one.entries())).toBe(writeJournal(two.entries()));
  });

  it('[SYN-06] broken off at any request, before or after it was answered, it goes on and loses nothing', {
    timeout: 30_000,
  }, async () => {
    const requests = 6;
    for (let at = 1; at <= requests; at++) {
      for (const when of ['before', 'after'] as const) {
        const honest = server();
        const [one, two] = [journal('one', 220), createLedger()];
        let count = 0;
        const ask: Ask = async (path, body) => {
          count += 1;
          if (count === at && when === 'before') throw new Error('cut');
          const answer = await honest(path, body);
          if (count === at) throw new Error('cut');
          return answer;
        };
        const broken = await bring(ask, one, 'one');
        expect([at, when, broken.ok]).toEqual([at, when, false]);
        expect((await bring(honest, one, 'one')).ok).toBe(true);
        expect((await bring(honest, two, 'two')).ok).toBe(true);
        expect(writeJournal(two.entries())).toBe(writeJournal(one.entries()));
      }
    }
  });

  it('[SYN-06] what came and could not be kept here is not said to be in step, and comes again', async () => {
    const ask = server();
    await bring(ask, journal('one', 10), 'one');
    const two = createLedger();
    expect(await bring(ask, two, 'two', noMark, false)).toMatchObject({
      ok: false,
      problem: { code: 'sync/not-kept' },
    });
    expect(await bring(ask, two, 'two')).toMatchObject({ ok: true, value: { received: 10 } });
  });

  it('[SYN-06] an import of older entries upsets the count, and names are compared', async () => {
    const ask = server();
    const one = journal('one', 10);
    const first = await bring(ask, one, 'one');
    one.add([oneEntry({ id: 'imported', stamp: '2020-1', device: 'one' })]);
    expect(await bring(ask, one, 'one', first.ok ? first.value.mark : noMark)).toMatchObject({
      ok: true,
      value: { sent: 1 },
    });
  });

  it('[SYN-17] a server put back to an older copy is given again what it lacks, and nobody misses anything', async () => {
    const older = openSqliteStore(':memory:');
    const [one, two] = [journal('one', 30), journal('two', 20)];
    const before = await bring(serverOf(older), one, 'one');
    const newer = server();
    const moved = await bring(newer, one, 'one');
    const heard = await bring(newer, two, 'two');
    expect([before.ok, moved.ok, heard.ok]).toEqual([true, true, true]);
    if (!heard.ok || !moved.ok) return;
    expect(heard.value.mark.since).toBe(50);
    // The copy has the first thirty; a third device has written since, so that its places are taken again.
    const third = journal('three', 40);
    await bring(serverOf(older), third, 'three');
    const again = await bring(serverOf(older), two, 'two', heard.value.mark);
    expect(again).toMatchObject({ ok: true, value: { sent: 20, problems: [] } });
    expect((await bring(serverOf(older), one, 'one', moved.value.mark)).ok).toBe(true);
    expect((await bring(serverOf(older), third, 'three')).ok).toBe(true);
    expect(new Set([one, two, third].map((ledger) => writeJournal(ledger.entries()))).size).toBe(1);
    expect(one.entries()).toHaveLength(90);
  });

  it('[SYN-28] a server that keeps no journals is said to be one', async () => {
    const app = createServer({ files: new Map() });
    const ask: Ask = async (path, body) => {
      const answer = await app.request(`/sync/${path}`, { method: 'POST', body: JSON.stringify(body) });
      return { status: answer.status, body: await answer.text() };
    };
    expect(await bring(ask, journal('one', 1), 'one')).toMatchObject({ problem: { code: 'sync/no-store' } });
  });

  it('[SYN-18] an entry that no server takes stays here, is said, and does not hold up the others', async () => {
    const ask = server();
    const one = journal('one', 3);
    one.add([
      oneEntry({ id: 'long', stamp: '2026-2', device: 'one', data: { text: 'y'.repeat(80_000) } }),
      oneEntry({ id: 'x'.repeat(100), stamp: '2'.repeat(100), device: 'one' }),
    ]);
    const sent = await bring(ask, one, 'one');
    expect(sent).toMatchObject({ ok: true, value: { sent: 4 } });
    const stays = sent.ok ? sent.value.problems.filter(({ code }) => code === 'sync/stays-here') : [];
    expect(stays.map(({ path }) => path)).toEqual(['long']);
    const two = createLedger();
    await bring(ask, two, 'two');
    expect(two.entry('x'.repeat(100))).toBeDefined();
    expect(two.size).toBe(4);
  });

  it('[SYN-05] large entries go in batches by their size, so that no request and no answer is refused', async () => {
    const ask = server();
    const one = createLedger(
      Array.from({ length: 130 }, (_, i) =>
        oneEntry({ id: `l${i}`, stamp: `s${1000 + i}`, device: 'one', data: { text: 'z'.repeat(60_000) } }),
      ),
    );
    expect(await bring(ask, one, 'one', noMark, true, 2000)).toMatchObject({
      ok: true,
      value: { sent: 130 },
    });
    const two = createLedger();
    expect(await bring(ask, two, 'two')).toMatchObject({ ok: true, value: { received: 130, problems: [] } });
  });

  it('[SYN-19] after a key was given up, a device that still has it hears so', async () => {
    const store = openSqliteStore(':memory:');
    const one = journal('one', 3);
    const first = await bring(serverOf(store), one, 'one');
    await store.drop(keys.journal);
    for (const mark of [noMark, first.ok ? first.value.mark : noMark])
      expect(await bring(serverOf(store), one, 'one', mark)).toMatchObject({
        ok: false,
        problem: { code: 'sync/not-let-in' },
      });
    expect(await store.ids(keys.journal)).toEqual([]);
  });

  it('[SYN-03] a server that drops an entry of another device is found out', async () => {
    const honest = server();
    await bring(honest, journal('one', 10), 'one');
    const dropping: Ask = async (path, body) => {
      const answer = await honest(path, body);
      const read = v.parse(exchangeAnswer, answer.body);
      return { status: 200, body: { ...read, entries: read.entries.filter((_, i) => i !== 4) } };
    };
    expect(await bring(dropping, createLedger(), 'two')).toMatchObject({
      ok: true,
      value: { received: 9, problems: [{ code: 'sync/missing', path: 'one' }] },
    });
  });

  it('[SYN-02] a server that forges one is found out, and nothing forged is kept', async () => {
    const honest = server();
    await bring(honest, journal('one', 3), 'one');
    const forging: Ask = async (path, body) => {
      const answer = await honest(path, body);
      const read = v.parse(exchangeAnswer, answer.body);
      const forged = sealEntry(journalKeys(new Uint8Array(32)), oneEntry({ id: 'forged' }));
      return { status: 200, body: { ...read, entries: [...read.entries, forged] } };
    };
    const two = createLedger();
    expect(await bring(forging, two, 'two')).toMatchObject({
      ok: true,
      value: { received: 3, problems: [{ code: 'sync/forged', path: 'forged' }] },
    });
    expect(two.entry('forged')).toBeUndefined();
  });

  it.each([
    ['no answer', () => Promise.reject(new Error('no net')), 'sync/not-reached'],
    ['another key', () => Promise.resolve({ status: 403, body: {} }), 'sync/not-let-in'],
    [
      'a page instead of an answer',
      () => Promise.resolve({ status: 200, body: undefined }),
      'sync/broken-off',
    ],
    ['a server that can keep nothing', () => Promise.resolve({ status: 503, body: {} }), 'sync/server-away'],
    ['an answer of a later version', () => Promise.resolve({ status: 418, body: {} }), 'sync/not-understood'],
    ['a fault of the server', () => Promise.resolve({ status: 500, body: {} }), 'sync/server-fault'],
    [
      'a server in front without one behind',
      () => Promise.resolve({ status: 502, body: 0 }),
      'sync/server-fault',
    ],
    ['a server that asks to wait', () => Promise.resolve({ status: 429, body: {} }), 'sync/asked-to-wait'],
    ['a server without room', () => Promise.resolve({ status: 507, body: {} }), 'sync/server-full'],
  ])('[SYN-06] %s is said as what it is', async (_what, ask, code) => {
    expect(await bring(ask, journal('one', 1), 'one')).toMatchObject({ ok: false, problem: { code } });
  });
});
