import { createHash } from 'node:crypto';
import { Hono, type Context, type Next } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import * as v from 'valibot';
import type { NoRoomError } from '#outside/sealed-store/no-room-error.ts';
import { pageAfter } from '#outside/sealed-store/page-after.ts';
import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';
import {
  exchangeRequest,
  journalRequest,
  lendRequest,
  readRequest,
  type ReadRequest,
  type ExchangeRequest,
  MOST_BYTES,
  type ExchangeAnswer,
} from '#outside/sync/exchange.ts';
import type { SealedEntry } from '#outside/seal/seal-entry.ts';
import { type Rate, rateGate } from './rate-gate.ts';
import { type Unreadable, unpackRequest } from './unpack-request.ts';

export interface SyncParts {
  readonly store: SealedStore;
  /** Milliseconds that only grow, for the rate of requests. */
  readonly clockMs: () => number;
  /** Milliseconds since 1970, for the end of what is lent. */
  readonly nowMs: () => number;
  /** How many journals may be opened that were not here before; absent: OPENINGS. */
  readonly openings?: Rate;
}

/** Requests of one journal. */
const REQUESTS: Rate = { burst: 120, perSecond: 20 };
/** New journals of everybody together: whoever makes up names cannot fill the disk with them in a night. */
const OPENINGS: Rate = { burst: 1000, perSecond: 0.2 };

/** What the metrics tell: counts of what was done, never whose. */
export interface SyncCounts {
  exchanges: number;
  entriesTaken: number;
  entriesGiven: number;
  turnedAway: number;
  /** Requests that came while the store could not be asked. */
  storeAway: number;
}

const TOKEN = /^Bearer ([0-9a-f]{64})$/;

/**
 * Keeps sealed journals (SYN-10 to SYN-15). It reads nothing: it checks shapes, lets in by a token of which it keeps
 * only the digest, and hands over what it was given in the order in which it came.
 */
export function syncRoutes(parts: SyncParts, counts: SyncCounts): Hono {
  const { store, clockMs, nowMs } = parts;
  const routes = new Hono();
  const gate = rateGate(clockMs, REQUESTS);
  const openings = rateGate(clockMs, parts.openings ?? OPENINGS);
  routes.use(
    bodyLimit({ maxSize: MOST_BYTES, onError: (context) => say(context, 413, 'The request is too large.') }),
  );
  routes.use(compress());
  routes.use(ownPagesOnly);
  const within = async <Schema extends v.GenericSchema<unknown, { readonly journal: string }>>(
    context: Context,
    schema: Schema,
    mayEnter: (journal: string, digest: string) => Promise<boolean>,
    answer: (request: v.InferOutput<Schema>) => Promise<object | undefined>,
  ): Promise<Response> => {
    const unpacked = await unpackRequest(context.req.raw, MOST_BYTES);
    if ('refused' in unpacked) return sayUnpacked(context, unpacked.refused);
    const request = v.safeParse(schema, readJson(unpacked.text));
    if (!request.success) return say(context, 400, 'The request has not the shape that is asked for here.');
    const token = TOKEN.exec(context.req.header('authorization') ?? '')?.[1];
    const { journal } = request.output;
    if (!gate(journal) || (!(await store.knows(journal)) && !openings('')))
      return say(context, 429, 'Too many requests at once: wait some seconds.');
    if (token === undefined || !(await mayEnter(journal, digestOf(token)))) {
      counts.turnedAway += 1;
      return say(context, 403, 'This journal does not open with this key.');
    }
    const answered = await answer(request.output);
    return answered
      ? context.json(answered)
      : say(
          context,
          409,
          'The order of this journal is another than the one referred to: ask from its beginning.',
        );
  };
  const asWriter = async (journal: string, digest: string): Promise<boolean> =>
    (await store.enter(journal, digest)) === 'open';
  const asReader = async (journal: string, digest: string): Promise<boolean> =>
    ((await store.lentUntil(journal, digest)) ?? Number.NEGATIVE_INFINITY) > nowMs();
  routes.post('/exchange', (context) =>
    within(context, exchangeRequest, asWriter, (request) => exchange(store, request, counts)),
  );
  routes.post('/ids', (context) =>
    within(context, journalRequest, asWriter, async ({ journal }) => ({ ids: await store.ids(journal) })),
  );
  routes.post('/drop', (context) =>
    within(context, journalRequest, asWriter, async ({ journal }) => {
      await store.drop(journal);
      return {};
    }),
  );
  routes.post('/lend', (context) =>
    within(context, lendRequest, asWriter, async ({ journal, reader, untilMs }) => {
      await store.lend(journal, reader, untilMs);
      return {};
    }),
  );
  routes.post('/read', (context) =>
    within(context, readRequest, asReader, (request) => handOver(store, request, [], counts)),
  );
  return routes;
}

/** A page of another origin cannot set this type without asking first, and it is never allowed to. */
async function ownPagesOnly(context: Context, next: Next): Promise<Response | undefined> {
  if (!/^application\/json\b/.test(context.req.header('content-type') ?? ''))
    return say(context, 415, 'Only application/json is taken here.');
  if (context.req.header('sec-fetch-site') === 'cross-site')
    return say(context, 403, 'Not from another site.');
  await next();
  return undefined;
}

/** Keeps what came and hands over what is new; undefined where device and server do not speak of one order. */
async function exchange(
  store: SealedStore,
  request: ExchangeRequest,
  counts: SyncCounts,
): Promise<ExchangeAnswer | undefined> {
  const { journal, since, at, entries, tally } = request;
  if (since > 0 && (await store.chainAt(journal, since)) !== at) return undefined;
  if (entries.length > 0 || tally) await store.append(journal, entries, tally);
  counts.entriesTaken += entries.length;
  return handOver(store, request, entries, counts);
}

/** What came after a place, but for what the asker just brought. */
async function handOver(
  store: SealedStore,
  { journal, since, at }: ReadRequest,
  brought: readonly SealedEntry[],
  counts: SyncCounts,
): Promise<ExchangeAnswer | undefined> {
  if (since > 0 && (await store.chainAt(journal, since)) !== at) return undefined;
  const { kept, more } = await pageAfter(store, journal, since);
  const own = new Map(brought.map(({ id, body }) => [id, body]));
  const given = kept.filter(({ id, body }) => own.get(id) !== body);
  counts.exchanges += 1;
  counts.entriesGiven += given.length;
  return {
    seq: kept.at(-1)?.seq ?? since,
    at: kept.at(-1)?.chain ?? at,
    more,
    entries: given.map(({ id, stamp, body }) => ({ id, stamp, body })),
    tallies: [...(await store.tallies(journal))],
  };
}

function sayUnpacked(context: Context, refused: Unreadable): Response {
  if (refused === 'too large') return say(context, 413, 'The request is too large.');
  if (refused === 'damaged')
    return say(context, 400, 'The request has not the shape that is asked for here.');
  context.header('accept-encoding', 'gzip');
  return say(context, 415, 'A request comes plain or packed by gzip.');
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // No JSON is a request of another shape; it is answered as one.
    return undefined;
  }
}

function digestOf(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** Nothing was acknowledged, and nothing is lost: the device asks again. */
export function sayAway(context: Context, counts: SyncCounts): Response {
  counts.storeAway += 1;
  context.header('retry-after', '10');
  return say(
    context,
    503,
    'The server can keep nothing just now. Everything stays on the device; try again.',
  );
}

/** Nothing of the request is kept, and the device is told that it is not on the server (SYN-32). */
export function sayNoRoom(context: Context, fault: NoRoomError): Response {
  process.stderr.write(`serve: ${fault.message}\n`);
  return say(context, 507, 'The disk of the server is full or at fault; nothing of the request is kept.');
}

type Status = 400 | 403 | 409 | 413 | 415 | 429 | 503 | 507;

function say(context: Context, status: Status, words: string): Response {
  return context.json({ problem: { code: 'server/refused', path: '', message: words, remedy: '' } }, status);
}
