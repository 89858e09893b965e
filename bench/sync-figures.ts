import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { type JournalKeys, journalKeys } from '#outside/seal/journal-keys.ts';
import { sealEntry } from '#outside/seal/seal-entry.ts';
import { exchangeAnswer } from '#outside/sync/exchange.ts';
import { type Ask, noMark, synchronize } from '#outside/sync/synchronize.ts';

export const MANY = 100_000;
export const ATHLETES = 500;
export const A_DAY = 40;
export const SIZES: readonly number[] = [1000, 10_000, 100_000];
const AT_ONCE = 16;
const ROUNDS = 31;
const FILL = 1000;

export interface Figures {
  readonly upMs: number;
  readonly downMs: number;
  readonly dayMs: number;
  readonly exchangesPerSecond: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly errors: number;
  readonly missing: number;
  /** Median time of an exchange of A_DAY entries, by the size of the journal. */
  readonly grownMs: ReadonlyMap<number, number>;
}

/** The better of two measurements of the same; what went wrong counts in both. */
export function better(one: Figures, two: Figures): Figures {
  return {
    upMs: Math.min(one.upMs, two.upMs),
    downMs: Math.min(one.downMs, two.downMs),
    dayMs: Math.min(one.dayMs, two.dayMs),
    exchangesPerSecond: Math.max(one.exchangesPerSecond, two.exchangesPerSecond),
    p50Ms: Math.min(one.p50Ms, two.p50Ms),
    p99Ms: Math.min(one.p99Ms, two.p99Ms),
    errors: one.errors + two.errors,
    missing: one.missing + two.missing,
    grownMs: new Map([...one.grownMs].map(([size, ms]) => [size, Math.min(ms, two.grownMs.get(size) ?? ms)])),
  };
}

/** What a server answers for, asked by devices in this process. */
export async function syncFigures(address: string): Promise<Figures> {
  return { ...(await firstSync(address)), ...(await manyAthletes(address)), grownMs: await grown(address) };
}

async function firstSync(address: string): Promise<Pick<Figures, 'upMs' | 'downMs' | 'dayMs'>> {
  const keys = journalKeys(new Uint8Array(32).fill(1));
  const here = createLedger(Array.from({ length: MANY }, (_, i) => entryOf('first', i)));
  const there = createLedger();
  let mark = noMark;
  const upMs = await timed(async () => {
    mark = await bring(address, keys, here);
  });
  const downMs = await timed(() => bring(address, keys, there));
  if (there.size !== MANY) throw new Error(`${MANY - there.size} entries of the first sync are missing`);
  const day = createLedger([
    ...here.entries(),
    ...Array.from({ length: A_DAY }, (_, i) => entryOf('later', i)),
  ]);
  return { upMs, downMs, dayMs: await timed(() => bring(address, keys, day, mark)) };
}

type Load = Pick<Figures, 'exchangesPerSecond' | 'p50Ms' | 'p99Ms' | 'errors' | 'missing'>;

async function manyAthletes(address: string): Promise<Load> {
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
  const totalMs = await timed(() => Promise.all(Array.from({ length: AT_ONCE }, worker)));
  let missing = 0;
  for (const { keys, ledger } of athletes) {
    const back = createLedger();
    await bring(address, keys, back);
    missing += ledger.entries().filter(({ id }) => back.entry(id) === undefined).length;
  }
  return {
    exchangesPerSecond: ATHLETES / (totalMs / 1000),
    p50Ms: at(latencies, 0.5),
    p99Ms: at(latencies, 0.99),
    errors,
    missing,
  };
}

/** An exchange costs what is new in it: the same on journals of several sizes, if nothing grows. */
async function grown(address: string): Promise<ReadonlyMap<number, number>> {
  const medians = new Map<number, number>();
  for (const size of SIZES) {
    const keys = journalKeys(new Uint8Array(32).fill(3).with(0, Math.log10(size)));
    let place = { since: 0, at: '' };
    const add = async (name: string, number: number): Promise<number> => {
      const entries = Array.from({ length: number }, (_, i) => sealEntry(keys, entryOf(name, i)));
      const started = performance.now();
      const answer = await asked(address, keys)('exchange', { journal: keys.journal, ...place, entries });
      const took = performance.now() - started;
      const { seq, at: link } = v.parse(exchangeAnswer, answer.body);
      if (seq !== place.since + number) throw new Error(`${number} entries more led to ${seq}`);
      place = { since: seq, at: link };
      return took;
    };
    for (let from = 0; from < size; from += FILL) await add(`grown-${from}`, FILL);
    const times: number[] = [];
    for (let round = 0; round < ROUNDS; round++) times.push(await add(`round-${round}`, A_DAY));
    medians.set(size, at(times, 0.5));
  }
  return medians;
}

async function bring(
  address: string,
  keys: JournalKeys,
  ledger: ReturnType<typeof createLedger>,
  mark = noMark,
) {
  const synced = await synchronize(
    {
      keys,
      ask: asked(address, keys),
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

function asked(address: string, keys: JournalKeys): Ask {
  return async (path, body) => {
    const answer = await fetch(`${address}sync/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${keys.access}` },
      body: JSON.stringify(body),
    });
    return { status: answer.status, body: await answer.json() };
  };
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

function at(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
