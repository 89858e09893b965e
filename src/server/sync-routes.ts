import { createHash } from 'node:crypto';
import { Hono, type Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import * as v from 'valibot';
import { pageAfter } from '#outside/sealed-store/page-after.ts';
import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';
import {
  exchangeRequest,
  journalRequest,
  type ExchangeRequest,
  MOST_BYTES,
  type ExchangeAnswer,
} from '#outside/sync/exchange.ts';
import { type Rate, rateGate } from './rate-gate.ts';

export interface SyncParts {
  readonly store: SealedStore;
  /** Milliseconds that only grow, for the rate of requests. */
  readonly clockMs: () => number;
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
}

const TOKEN = /^Bearer ([0-9a-f]{64})$/;

/**
 * Keeps sealed journals (SYN-10 to SYN-15). It reads nothing: it checks shapes, lets in by a token of which it keeps
 * only the digest, and hands over what it was given in the order in which it came.
 */
export function syncRoutes(parts: SyncParts, counts: SyncCounts): Hono {
  const { store, clockMs } = parts;
  const routes = new Hono();
  const gate = rateGate(clockMs, REQUESTS);
  const openings = rateGate(clockMs, parts.openings ?? OPENINGS);
  routes.use(
    bodyLimit({ maxSize: MOST_BYTES, onError: (context) => say(context, 413, 'The request is too large.') }),
  );
  routes.use(compress());
  routes.use(async (context, next) => {
    // A page of another origin cannot set this type without asking first, and it is never allowed to.
    if (!/^application\/json\b/.test(context.req.header('content-type') ?? ''))
      return say(context, 415, 'Only application/json is taken here.');
    if (context.req.header('sec-fetch-site') === 'cross-site')
      return say(context, 403, 'Not from another site.');
    return next();
  });
  const within = async <Schema extends v.GenericSchema<unknown, { readonly journal: string }>>(
    context: Context,
    schema: Schema,
    answer: (request: v.InferOutput<Schema>) => object | undefined,
  ): Promise<Response> => {
    const request = v.safeParse(schema, await readJson(context));
    if (!request.success) return say(context, 400, 'The request has not the shape that is asked for here.');
    const token = TOKEN.exec(context.req.header('authorization') ?? '')?.[1];
    const { journal } = request.output;
    if (!gate(journal) || (!store.knows(journal) && !openings('')))
      return say(context, 429, 'Too many requests at once: wait some seconds.');
    if (token === undefined || store.enter(journal, digestOf(token)) === 'closed') {
      counts.turnedAway += 1;
      return say(context, 403, 'This journal does not open with this key.');
    }
    const answered = answer(request.output);
    return answered
      ? context.json(answered)
      : say(
          context,
          409,
          'The order of this journal is another than the one referred to: ask from its beginning.',
        );
  };
  routes.post('/exchange', (context) =>
    within(context, exchangeRequest, (request) => exchange(store, request, counts)),
  );
  routes.post('/ids', (context) =>
    within(context, journalRequest, ({ journal }) => ({ ids: store.ids(journal) })),
  );
  routes.post('/drop', (context) =>
    within(context, journalRequest, ({ journal }) => {
      store.drop(journal);
      return {};
    }),
  );
  return routes;
}

/** Keeps what came and hands over what is new; undefined where device and server do not speak of one order. */
function exchange(
  store: SealedStore,
  { journal, since, at, entries, tally }: ExchangeRequest,
  counts: SyncCounts,
): ExchangeAnswer | undefined {
  if (since > 0 && store.chainAt(journal, since) !== at) return undefined;
  if (entries.length > 0 || tally) store.append(journal, entries, tally);
  const { kept, more } = pageAfter(store, journal, since);
  counts.exchanges += 1;
  counts.entriesTaken += entries.length;
  const own = new Map(entries.map(({ id, body }) => [id, body]));
  const given = kept.filter(({ id, body }) => own.get(id) !== body);
  counts.entriesGiven += given.length;
  return {
    seq: kept.at(-1)?.seq ?? since,
    at: kept.at(-1)?.chain ?? at,
    more,
    entries: given.map(({ id, stamp, body }) => ({ id, stamp, body })),
    tallies: [...store.tallies(journal)],
  };
}

async function readJson(context: Context): Promise<unknown> {
  try {
    return await context.req.json();
  } catch {
    // No JSON is a request of another shape; it is answered as one.
    return undefined;
  }
}

function digestOf(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

type Status = 400 | 403 | 409 | 413 | 415 | 429;

function say(context: Context, status: Status, words: string): Response {
  return context.json({ problem: { code: 'server/refused', path: '', message: words, remedy: '' } }, status);
}
