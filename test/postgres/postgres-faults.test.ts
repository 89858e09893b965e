import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import pg from 'pg';
import { createLedger } from '#core/journal/ledger.ts';
import { journalKeys } from '../../src/outside/seal/journal-keys.ts';
import { openPostgresStore } from '../../src/outside/sealed-store/open-postgres-store.ts';
import type { SealedStore } from '../../src/outside/sealed-store/sealed-store.ts';
import { StoreAwayError } from '../../src/outside/sealed-store/store-away-error.ts';
import { type Ask, noMark, synchronize } from '../../src/outside/sync/synchronize.ts';
import { createServer } from '../../src/server/create-server.ts';
import { oneEntry } from '../journal/one-entry.ts';
import { simulateDevices } from '../simulation/devices.ts';
import { type OwnServer, ownServer, sendEntries } from '../sync/own-server.ts';
import { type OwnPostgres, ownPostgres, PASSWORD } from './own-postgres.ts';

const keysOf = (byte: number) => journalKeys(new Uint8Array(32).fill(byte));

let database: OwnPostgres;
let schemas = 0;
const said: string[] = [];
const freshAddress = (): Promise<string> => database.address(`f${(schemas += 1)}`);

async function open(address: string): Promise<SealedStore> {
  const store = await openPostgresStore(address, (words) => said.push(words));
  if (!store.ok) throw new Error(store.problem.message);
  return store.value;
}

beforeAll(async () => {
  database = await ownPostgres();
}, 60_000);
afterAll(() => database.remove(), 60_000);

async function killed(server: OwnServer): Promise<void> {
  const ended = new Promise((resolve) => server.process.once('exit', resolve));
  server.process.kill('SIGKILL');
  await ended;
}

describe('two server processes on one PostgreSQL', () => {
  it('[SYN-25] [SYN-26] bring two devices together; killed under load, each and the database, they lose nothing acknowledged', {
    timeout: 60_000,
  }, async () => {
    const address = await freshAddress();
    const [one, two] = await Promise.all([ownServer(address), ownServer(address)]);
    await bringTogether(one, two);
    const keys = keysOf(5);
    const acknowledged = new Set<string>();
    const load = async (
      server: OwnServer,
      name: string,
      until: (kept: number) => void,
    ): Promise<number[]> => {
      const others: number[] = [];
      for (let [n, kept] = [0, 0]; n < 400 && others.length < 3; n++) {
        const batch = Array.from({ length: 5 }, (_, i) => `${name}-${n}-${i}`);
        const status = await sendEntries(server.address, keys, batch);
        if (status === 200) {
          for (const id of batch) acknowledged.add(id);
          until((kept += 1));
        } else if (status === undefined) return others;
        else others.push(status);
      }
      return others;
    };
    // One server is killed while both write one journal; the other does not notice.
    let ended = false;
    two.process.once('exit', () => (ended = true));
    const both = await Promise.all([
      load(one, 'one', (kept) => ended && kept >= 12 && void database.kill('SIGKILL')),
      load(two, 'two', (kept) => kept === 6 && void two.process.kill('SIGKILL')),
    ]);
    // Then the database was, in the middle of what the first still sent.
    expect(both).toEqual([[503, 503, 503], []]);
    await database.start();
    expect(await sendEntries(one.address, keys, ['back'])).toBe(200);
    const store = await open(address);
    const kept = await store.after(keys.journal, 0, 10_000);
    expect(acknowledged.size).toBeGreaterThan(60);
    expect([...acknowledged, 'back'].filter((id) => !kept.some((each) => each.id === id))).toEqual([]);
    expect(kept.map(({ seq }) => seq)).toEqual(kept.map((_, i) => i + 1));
    const words = one.said().trim().split('\n');
    expect(words[0]).toContain('The database does not answer');
    expect(words.at(-1)).toBe('The database answers again.');
    await Promise.all([store.close(), killed(one)]);
  });
});

/** A device on each of the servers: what one wrote comes to the other. */
async function bringTogether(one: OwnServer, two: OwnServer): Promise<void> {
  const keys = keysOf(6);
  const devices = [one, two].map((server, d) => {
    const ledger = createLedger(
      Array.from({ length: 30 }, (_, i) => oneEntry({ id: `d${d}-${i}`, stamp: `s${d}-${100 + i}` })),
    );
    const ask: Ask = async (path, body) => {
      const answer = await fetch(`${server.address}sync/${path}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
        body: JSON.stringify(body),
      });
      return { status: answer.status, body: await answer.json() };
    };
    const take = async (entries: Parameters<typeof ledger.add>[0]) => {
      ledger.add(entries);
      return true;
    };
    const parts = { keys, ask, device: `device-${d}`, entries: () => ledger.entries(), take };
    return { ledger, meet: () => synchronize(parts, noMark) };
  });
  for (const device of [...devices, ...devices]) expect(await device.meet()).toMatchObject({ ok: true });
  expect(devices.map(({ ledger }) => ledger.size)).toEqual([60, 60]);
  expect(devices[0]?.ledger.entries()).toEqual(devices[1]?.ledger.entries());
}

describe('a database that goes away', () => {
  it('[SYN-26] is said in a sentence, once in the log, at /health/ready; the app and /health go on, and so does all when it is back', async () => {
    const store = await open(await freshAddress());
    const server = createServer({
      files: new Map(),
      sync: { store, clockMs: () => performance.now(), nowMs: Date.now },
    });
    const ask = (path: string, body?: object) =>
      server.request(path, {
        method: body ? 'POST' : 'GET',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${'a'.repeat(64)}` },
        ...(body && { body: JSON.stringify(body) }),
      });
    const journal = 'b'.repeat(32);
    const exchange = { journal, since: 0, at: '', entries: [{ id: 'a', stamp: 's', body: 'AAAA' }] };
    expect((await ask('/sync/exchange', exchange)).status).toBe(200);
    expect(await (await ask('/health/ready')).json()).toEqual({ ok: true, store: 'answers' });
    said.length = 0;
    await database.kill('SIGINT');
    for (let i = 0; i < 3; i++) {
      const away = await ask('/sync/exchange', exchange);
      expect([away.status, away.headers.get('retry-after')]).toEqual([503, '10']);
      const words = await away.text();
      expect(words).toContain('Everything stays on the device; try again.');
      expect(words).not.toContain(PASSWORD);
    }
    const ready = await ask('/health/ready');
    expect([ready.status, await ready.json()]).toEqual([503, { ok: false, store: 'away' }]);
    expect((await ask('/health')).status).toBe(200);
    expect(await (await ask('/metrics')).text()).toContain('stagewright_store_away_total 3');
    await database.start();
    expect((await ask('/sync/exchange', exchange)).status).toBe(200);
    expect((await ask('/health/ready')).status).toBe(200);
    expect(said).toEqual([
      expect.stringContaining('does not answer'),
      expect.stringContaining('answers again'),
    ]);
    await store.close();
  });

  it('[SYN-26] a connection cut in the middle of keeping leaves all or none, and the next try succeeds', async () => {
    const address = await freshAddress();
    const store = await open(address);
    await store.append('journal', [{ id: 'a', stamp: 's', body: 'AAAA' }]);
    const holder = new pg.Client({ connectionString: address });
    await holder.connect();
    await holder.query('begin');
    await holder.query('lock table entry in exclusive mode');
    const cut = store.append('journal', [{ id: 'b', stamp: 's', body: 'AAAA' }], {
      id: 'tally',
      stamp: 's',
      body: 'AAAA',
    });
    const outcome = cut.then(
      () => 'kept',
      (fault: unknown) => (fault instanceof StoreAwayError ? fault.reason : String(fault)),
    );
    const waiting = `select pg_terminate_backend(pid) from pg_stat_activity
      where application_name = 'stagewright' and wait_event_type = 'Lock'`;
    while ((await holder.query(waiting)).rowCount === 0);
    // 57P01 admin_shutdown (PostgreSQL manual, appendix A).
    expect(await outcome).toBe('57P01');
    await holder.query('rollback');
    await holder.end();
    expect([await store.ids('journal'), await store.tallies('journal')]).toEqual([['a'], []]);
    expect(await store.append('journal', [{ id: 'b', stamp: 's', body: 'AAAA' }])).toBe(2);
    await store.close();
  });
});

describe('two to five devices under faults, against PostgreSQL', () => {
  it('[SYN-07] end with the same bytes, and nothing acknowledged is lost, over 10 seeds', {
    timeout: 60_000,
  }, async () => {
    for (let seed = 301; seed <= 310; seed++) {
      const run = await simulateDevices(seed, async () => open(await freshAddress()));
      expect([seed, run.lost, run.problems, new Set(run.files).size]).toEqual([seed, [], [], 1]);
      expect(run.happened.answersLost).toBeGreaterThan(0);
    }
  });
});
