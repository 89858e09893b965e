import { createHash } from 'node:crypto';
import { Hono, type Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import * as v from 'valibot';
import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';
import {
  exchangeRequest,
  journalRequest,
  MOST_BYTES,
  MOST_ENTRIES,
  type ExchangeAnswer,
} from '#outside/sync/exchange.ts';
import { rateGate } from './rate-gate.ts';

export interface SyncParts {
  readonly store: SealedStore;
  /** Milliseconds that only grow, for the rate of requests. */
  readonly clockMs: () => number;
}

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
export function syncRoutes({ store, clockMs }: SyncParts, counts: SyncCounts): Hono {
  const routes = new Hono();
  const gate = rateGate(clockMs);
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
    answer: (request: v.InferOutput<Schema>) => object,
  ): Promise<Response> => {
    const request = v.safeParse(schema, await readJson(context));
    if (!request.success) return say(context, 400, 'The request has not the shape that is asked for here.');
    const token = TOKEN.exec(context.req.header('authorization') ?? '')?.[1];
    const { journal } = request.output;
    if (!gate(journal)) return say(context, 429, 'Too many requests at once: wait some seconds.');
    if (token === undefined || store.enter(journal, digestOf(token)) === 'closed') {
      counts.turnedAway += 1;
      return say(context, 403, 'This journal does not open with this key.');
    }
    return context.json(answer(request.output));
  };
  routes.post('/exchange', (context) =>
    within(context, exchangeRequest, (request): ExchangeAnswer => {
      if (request.entries.length > 0) store.append(request.journal, request.entries);
      if (request.tally) store.setTally(request.journal, request.tally);
      const kept = store.after(request.journal, request.since, MOST_ENTRIES);
      counts.exchanges += 1;
      counts.entriesTaken += request.entries.length;
      const own = new Set(request.entries.map(({ id }) => id));
      const entries = kept.filter(({ id }) => !own.has(id));
      counts.entriesGiven += entries.length;
      return {
        seq: kept.at(-1)?.seq ?? request.since,
        more: kept.length === MOST_ENTRIES,
        entries: entries.map(({ id, stamp, body }) => ({ id, stamp, body })),
        tallies: [...store.tallies(request.journal)],
      };
    }),
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

type Status = 400 | 403 | 413 | 415 | 429;

function say(context: Context, status: Status, words: string): Response {
  return context.json({ problem: { code: 'server/refused', path: '', message: words, remedy: '' } }, status);
}
