import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { type JournalKeys, journalKeys } from '../../src/outside/seal/journal-keys.ts';
import type { SealedStore } from '../../src/outside/sealed-store/sealed-store.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { packRequest } from '../../src/outside/sync/pack-request.ts';
import { noMark, synchronize } from '../../src/outside/sync/synchronize.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen, type Listening } from '../../src/server/listen.ts';
import { oneEntry } from '../journal/one-entry.ts';
import { cuttingProxy, type Side } from './cutting-proxy.ts';

let [store, listening]: [SealedStore | undefined, Listening | undefined] = [undefined, undefined];
beforeAll(async () => {
  let clock = 0;
  store = openSqliteStore(':memory:');
  const server = createServer({
    files: new Map(),
    sync: { store, clockMs: () => (clock += 10_000), nowMs: Date.now },
  });
  const outcome = await listen(server, 0);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  listening = outcome.value;
});
afterAll(async () => {
  await listening?.stop();
  await store?.close();
});

const journal = (device: string, count: number): GrowingLedger =>
  createLedger(
    Array.from({ length: count }, (_, i) =>
      oneEntry({
        id: `${device}-${i}`,
        stamp: `2027-${1000 + i}-${device}`,
        device,
        data: { text: 'Müsli 🍚' },
      }),
    ),
  );

function meet(address: string, keys: JournalKeys, ledger: GrowingLedger, device: string, batch: number) {
  return synchronize(
    {
      keys,
      ask: async (path, body) => {
        const packed = await packRequest(body);
        const answer = await fetch(`${address}sync/${path}`, {
          method: 'POST',
          headers: { ...packed.headers, authorization: `Bearer ${keys.access}` },
          body: packed.body,
        });
        return { status: answer.status, body: await answer.json() };
      },
      device,
      entries: () => ledger.entries(),
      take: (entries) => {
        ledger.add(entries);
        return Promise.resolve(true);
      },
      batch,
    },
    noMark,
  );
}

/** One meeting of the second device after the first brought its own, on a connection that may be cut. */
async function meetThroughCut(round: number, count: number, side: Side, after: number) {
  const keys = journalKeys(
    new Uint8Array(32)
      .fill(7)
      .with(0, round & 255)
      .with(1, round >> 8),
  );
  const direct = listening?.address ?? '';
  const [one, two] = [journal('one', count), journal('two', count)];
  await meet(direct, keys, one, 'one', count);
  const proxy = await cuttingProxy(listening?.port ?? 0);
  proxy.cutAt({ side, after });
  const met = await meet(proxy.address, keys, two, 'two', Math.ceil(count / 2));
  await proxy.close();
  const half = two.size;
  const again = await meet(direct, keys, two, 'two', count);
  await meet(direct, keys, one, 'one', count);
  const ids = (await store?.ids(keys.journal)) ?? [];
  return {
    wasCut: proxy.wasCut(),
    met,
    half,
    passed: proxy.passed(side),
    end: {
      again: again.ok && again.value.problems,
      same: writeJournal(one.entries()) === writeJournal(two.entries()),
      size: one.size,
      once: ids.length === new Set(ids).size && ids.length,
    },
  };
}

/**
 * Places of every class in what went over the wire: before anything, in the first line, in a header, in and behind the
 * empty line, in the first bytes of the body (the head of a gzip, RFC 1952, or of a chunk), in names, in the quads of
 * base64 and all through, in the last bytes (a checksum, the last chunk), and behind the last. All of it is ASCII or gzip.
 */
function placesIn(bytes: Buffer): readonly number[] {
  const places = new Set([0, 1, 10, bytes.indexOf('\r\n') + 1]);
  const around = (place: number, from: number, to: number): void => {
    for (let at = place + from; at <= place + to; at++) places.add(at);
  };
  around(bytes.indexOf('\r\n\r\n') + 4, -3, 4);
  around(bytes.indexOf('content-', 0, 'latin1'), 3, 3);
  around(bytes.indexOf('"body":"'), 6, 10);
  for (let i = 1; i < 12; i++) places.add(Math.floor((bytes.length * i) / 12) + (i % 4));
  for (const last of [9, 8, 4, 1, 0]) places.add(bytes.length - last);
  return [...places].filter((place) => place >= 0 && place <= bytes.length).sort((a, b) => a - b);
}

describe.each([
  ['short requests, which go as they are', 6],
  ['long requests, which go packed', 24],
])('a connection cut at any byte: %s', (_what, count) => {
  it.each(['request', 'answer'] as const)(
    '[SYN-36] of the %s: said as not reached, nothing lost, the same bytes after the next meeting',
    async (side) => {
      let round = count * 100 + (side === 'answer' ? 1000 : 0);
      const whole = await meetThroughCut(round, count, side, Number.POSITIVE_INFINITY);
      expect([whole.wasCut, whole.met.ok]).toEqual([false, true]);
      const reached = new Set<number>();
      let cuts = 0;
      const places = placesIn(whole.passed);
      for (const after of places) {
        const { wasCut, met, half, end } = await meetThroughCut((round += 1), count, side, after);
        expect([after, end]).toEqual([after, { again: [], same: true, size: 2 * count, once: 2 * count }]);
        if (!met.ok) expect([after, met.problem.code]).toEqual([after, 'sync/not-reached']);
        // A random nonce packs a little shorter or longer: near the end it may be whole before the cut.
        if (after < whole.passed.length - 100) expect([after, wasCut, met.ok]).toEqual([after, true, false]);
        cuts += wasCut ? 1 : 0;
        reached.add(half);
      }
      expect(cuts).toBeGreaterThan(25);
      // Some were cut before anything came, some between two batches.
      expect(reached.size).toBeGreaterThan(1);
    },
  );
});
