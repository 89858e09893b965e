import type { Hono } from 'hono';
import { composeEntry } from '#core/journal/compose-entry.ts';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { randomStream, type RandomStream } from '#core/random/random-stream.ts';
import { journalKeys } from '../../src/outside/seal/journal-keys.ts';
import type { KeptEntry, SealedStore } from '../../src/outside/sealed-store/sealed-store.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { type Ask, noMark, type SyncMark, synchronize } from '../../src/outside/sync/synchronize.ts';
import { createServer } from '../../src/server/create-server.ts';

/** What a run of the simulation came to, and how much really went wrong on the way. */
export interface DevicesRun {
  readonly seed: number;
  /** The journal of each device at the end, as a file. */
  readonly files: readonly string[];
  /** Entries whose saving was acknowledged and that some device lacks. */
  readonly lost: readonly string[];
  readonly problems: readonly string[];
  readonly happened: Record<
    | 'written'
    | 'requestsLost'
    | 'answersLost'
    | 'answersCut'
    | 'serverFull'
    | 'sentTwice'
    | 'killed'
    | 'putBack'
    | 'unknownKinds'
    | 'corrections',
    number
  >;
}

const KEYS = journalKeys(Uint8Array.from({ length: 32 }, (_, i) => 200 - i));
const STEPS = 60;
const SKEW_MS = 600_000;
const START_MS = Date.parse('2027-03-01T08:00:00Z');

interface Device {
  readonly name: string;
  readonly skewMs: number;
  ledger: ReturnType<typeof createLedger>;
  mark: SyncMark;
  /** What outlives a kill. */
  kept: Entry[];
  keptMark: SyncMark;
}

/**
 * Two to five devices write, lose requests and answers, send twice, meet a full server, are killed and come back, with
 * clocks ten minutes apart and one of them a version behind; at the end all are brought together without faults. Same seed, same run.
 * `open` answers an empty store each time.
 */
export async function simulateDevices(
  seed: number,
  open: () => Promise<SealedStore> = async () => openSqliteStore(':memory:'),
): Promise<DevicesRun> {
  const chance = randomStream(seed, 'devices');
  const server = await restorableServer(open);
  const devices = Array.from({ length: 2 + chance.integer(4) }, (_, i) => newDevice(`device-${i}`, chance));
  const happened = {
    written: 0,
    requestsLost: 0,
    answersLost: 0,
    answersCut: 0,
    serverFull: 0,
    sentTwice: 0,
    killed: 0,
    putBack: 0,
    unknownKinds: 0,
    corrections: 0,
  };
  const acknowledged: string[] = [];
  for (let step = 0; step < STEPS; step++) {
    const device = devices[chance.integer(devices.length)];
    if (!device) throw new RangeError('no such device');
    const what = chance.uniform();
    if (what < 0.55) acknowledged.push(write(device, step, chance, happened));
    else if (what < 0.9) await meet(device, faulty(server.app, chance, happened));
    else if (what < 0.92) await server.takeBackup();
    else if (what < 0.95) {
      happened.putBack += 1;
      await server.putBack();
    } else {
      happened.killed += 1;
      revive(device);
    }
  }
  const problems: string[] = [];
  for (let round = 0; round < 2; round++)
    for (const device of devices) problems.push(...(await meet(device, plain(server.app))));
  await server.close();
  const files = devices.map(({ ledger }) => writeJournal(ledger.entries()));
  const lost = acknowledged.filter((id) => devices.some(({ ledger }) => ledger.entry(id) === undefined));
  return { seed, files, lost, problems, happened };
}

/** A server that is now and then put back to its last backup: what came since is lost to it. */
async function restorableServer(open: () => Promise<SealedStore>) {
  let store = await open();
  let backup: readonly KeptEntry[] = [];
  let clock = 0;
  const serve = () =>
    createServer({
      files: new Map(),
      sync: { store, clockMs: () => (clock += 10_000), nowMs: () => START_MS },
    });
  const server = {
    app: serve(),
    takeBackup: async (): Promise<void> => {
      backup = await store.after(KEYS.journal, 0, Number.MAX_SAFE_INTEGER);
    },
    putBack: async (): Promise<void> => {
      await store.close();
      store = await open();
      await store.append(KEYS.journal, backup);
      server.app = serve();
    },
    close: (): Promise<void> => store.close(),
  };
  return server;
}

function newDevice(name: string, chance: RandomStream): Device {
  return {
    name,
    skewMs: Math.round((2 * chance.uniform() - 1) * SKEW_MS),
    ledger: createLedger(),
    mark: noMark,
    kept: [],
    keptMark: noMark,
  };
}

/** Writing is acknowledged once it is kept: a kill after it loses nothing of it. */
function write(device: Device, step: number, chance: RandomStream, happened: DevicesRun['happened']): string {
  const nowMs = START_MS + step * 60_000 + device.skewMs;
  const known = device.ledger.of('body-weighed');
  const corrected = chance.uniform() < 0.25 ? known[chance.integer(Math.max(1, known.length))] : undefined;
  const composed = composeEntry({
    kind: 'body-weighed',
    data: { massKg: 60 + chance.integer(400) / 10 },
    day: '2027-03-01',
    nowMs,
    offsetMinutes: 0,
    zone: 'UTC',
    device: device.name,
    writer: `writer${device.name.slice(-1)}`,
    random: Uint8Array.from({ length: 10 }, () => chance.integer(256)),
    latestStamp: device.ledger.latestStamp,
    ...(corrected && { replaces: corrected.entry.id }),
  });
  if (!composed.ok) throw new Error(composed.problem.message);
  // The last device is a version ahead of the others: they must keep what they do not know.
  const ahead = device.name === 'device-0' && chance.uniform() < 0.3;
  const entry: Entry = ahead
    ? { ...composed.value, kind: 'from-a-later-version', version: 7 }
    : composed.value;
  happened.written += 1;
  if (ahead) happened.unknownKinds += 1;
  if (corrected) happened.corrections += 1;
  device.ledger.add([entry]);
  device.kept.push(entry);
  return entry.id;
}

async function meet(device: Device, ask: Ask): Promise<readonly string[]> {
  const synced = await synchronize(
    {
      keys: KEYS,
      ask,
      device: device.name,
      entries: () => device.ledger.entries(),
      take: (entries) => {
        device.ledger.add(entries);
        device.kept.push(...entries);
        return Promise.resolve(true);
      },
    },
    device.mark,
  );
  if (!synced.ok) return [synced.problem.code];
  device.mark = synced.value.mark;
  device.keptMark = synced.value.mark;
  return synced.value.problems.map(({ code }) => code);
}

/** A killed device begins anew from what it had kept. */
function revive(device: Device): void {
  device.ledger = createLedger(device.kept);
  device.mark = device.keptMark;
}

function plain(server: Hono): Ask {
  return async (path, body) => {
    const answer = await server.request(`/sync/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${KEYS.access}` },
      body: JSON.stringify(body),
    });
    return { status: answer.status, body: await answer.json() };
  };
}

function faulty(server: Hono, chance: RandomStream, happened: DevicesRun['happened']): Ask {
  const honest = plain(server);
  return async (path, body) => {
    const luck = chance.uniform();
    if (luck < 0.2) {
      happened.requestsLost += 1;
      throw new Error('the request was lost');
    }
    // A server whose disk is full takes no entries and still hands over what it has.
    if (luck < 0.3 && 'entries' in body && Array.isArray(body.entries) && body.entries.length > 0) {
      happened.serverFull += 1;
      return { status: 507, body: {} };
    }
    const answer = await honest(path, body);
    if (luck < 0.45) {
      happened.answersLost += 1;
      throw new Error('the answer was lost');
    }
    // A browser takes a head that was cut off for an answer with nothing in it.
    if (luck < 0.52) {
      happened.answersCut += 1;
      return { status: answer.status, body: undefined };
    }
    if (luck < 0.6) {
      happened.sentTwice += 1;
      return honest(path, body);
    }
    return answer;
  };
}
