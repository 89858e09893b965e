import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { type JournalKeys, journalKeys } from '#outside/seal/journal-keys.ts';
import { openSealedFolder } from '#outside/sealed-store/open-sealed-folder.ts';
import { packRequest } from '#outside/sync/pack-request.ts';
import { type Ask, noMark, synchronize } from '#outside/sync/synchronize.ts';
import { createServer } from '../src/server/create-server.ts';
import { listen } from '../src/server/listen.ts';

const MANY = 100_000;
const ATHLETES = 500;
const A_DAY = 40;

/** A first sync of many entries, and many athletes at once, over HTTP on this machine against SQLite in a file. */
export async function benchSync(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-sync-'));
  const store = await openSealedFolder(folder);
  if (!store.ok) throw new Error(store.problem.message);
  const server = createServer({
    files: new Map(),
    sync: { store: store.value, clockMs: () => performance.now(), nowMs: Date.now },
  });
  const listening = await listen(server, 0);
  if (!listening.ok) throw new Error(listening.problem.message);
  const { address } = listening.value;
  await firstSync(address);
  await manyAthletes(address);
  await listening.value.stop();
  await store.value.close();
  rmSync(folder, { recursive: true, force: true });
}

async function firstSync(address: string): Promise<void> {
  const keys = journalKeys(new Uint8Array(32).fill(1));
  const here = createLedger(Array.from({ length: MANY }, (_, i) => entryOf('first', i)));
  const there = createLedger();
  let mark = noMark;
  const sent = await timed(async () => {
    mark = await bring(address, keys, here);
  });
  const taken = await timed(() => bring(address, keys, there));
  const day = createLedger([
    ...here.entries(),
    ...Array.from({ length: A_DAY }, (_, i) => entryOf('day', i)),
  ]);
  const oneDay = await timed(() => bring(address, keys, day, mark));
  console.log(
    `sync: first of ${MANY} entries ${seconds(sent)} up, ${seconds(taken)} down to an empty device (${there.size} there); a day's ${A_DAY} more in one round trip ${oneDay.toFixed(0)} ms`,
  );
}

async function manyAthletes(address: string): Promise<void> {
  const latencies: number[] = [];
  let errors = 0;
  const athletes = Array.from({ length: ATHLETES }, (_, i) => ({
    keys: journalKeys(
      new Uint8Array(32)
        .fill(2)
        .with(0, i & 255)
        .with(1, i >> 8),
    ),
    ledger: createLedger(Array.from({ length: A_DAY }, (_, k) => entryOf(`athlete-${i}`, k))),
  }));
  const queue = [...athletes];
  const worker = async (): Promise<void> => {
    for (let next = queue.pop(); next; next = queue.pop()) {
      const { keys, ledger } = next;
      const started = performance.now();
      try {
        await bring(address, keys, ledger);
      } catch {
        // Counted, and printed as what it is.
        errors += 1;
      }
      latencies.push(performance.now() - started);
    }
  };
  const total = await timed(() => Promise.all(Array.from({ length: 16 }, worker)));
  let missing = 0;
  for (const { keys, ledger } of athletes) {
    const back = createLedger();
    await bring(address, keys, back);
    missing += ledger.entries().filter(({ id }) => back.entry(id) === undefined).length;
  }
  latencies.sort((a, b) => a - b);
  console.log(
    `sync: ${ATHLETES} athletes with ${A_DAY} entries each, 16 at a time: ${(ATHLETES / (total / 1000)).toFixed(0)} exchanges a second, p50 ${at(latencies, 0.5)} ms, p99 ${at(latencies, 0.99)} ms, errors ${errors}, entries missing when read back ${missing}`,
  );
}

async function bring(
  address: string,
  keys: JournalKeys,
  ledger: ReturnType<typeof createLedger>,
  mark = noMark,
) {
  const ask: Ask = async (path, body) => {
    const { body: packed, headers } = await packRequest(body);
    const answer = await fetch(`${address}sync/${path}`, {
      method: 'POST',
      headers: { ...headers, authorization: `Bearer ${keys.access}` },
      body: packed,
    });
    return { status: answer.status, body: await answer.json() };
  };
  const synced = await synchronize(
    {
      keys,
      ask,
      device: 'bench',
      entries: () => ledger.entries(),
      take: (entries) => {
        ledger.add(entries);
        return Promise.resolve(true);
      },
    },
    mark,
  );
  if (!synced.ok) throw new Error(synced.problem.message);
  return synced.value.mark;
}

function entryOf(name: string, i: number): Entry {
  const number = String(i).padStart(8, '0');
  return {
    id: `${name}-${number}`,
    stamp: `2027-03-01T00:00:00.000Z-${number}-${name}`,
    device: 'bench',
    kind: 'meal-eaten',
    day: '2027-03-01',
    at: '2027-03-01T08:00:00Z',
    zone: 'UTC',
    data: {
      items: [
        { source: 'food', food: 'usda-sr28:20045', grams: 190 },
        { source: 'food', food: 'usda-sr28:11090', grams: 150 },
      ],
    },
  };
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}

function at(sorted: readonly number[], share: number): string {
  return (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(0);
}
