import { Hono } from 'hono';
import type { Context } from 'hono';
import { secureHeaders } from 'hono/secure-headers';
import type { AppFile, Packing } from './app-files.ts';
import { NoRoomError } from '#outside/sealed-store/no-room-error.ts';
import { StoreAwayError } from '#outside/sealed-store/store-away-error.ts';
import { answersNow } from './answers-now.ts';
import { sayAway, sayNoRoom, type SyncCounts, syncRoutes, type SyncParts } from './sync-routes.ts';

export interface ServerParts {
  /** The built app by address (app-files.ts). */
  readonly files: ReadonlyMap<string, AppFile>;
  /** Where sealed journals are kept; absent: none are, and only the app is served. */
  readonly sync?: SyncParts;
  /** The name under which a server in front of this one, which speaks TLS, is reached. */
  readonly behindTls?: string;
}

/** Names this machine goes by to itself. A page of another name that resolves here is not answered. */
const OWN_NAMES = /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/;

/**
 * Serves the app; decides nothing and reads nothing. Made without a socket, so that tests can ask it directly.
 * Health data never leaves the device: the page may load and call nothing but this very origin.
 */
export function createServer({ files, sync, behindTls }: ServerParts): Hono {
  const server = new Hono();
  const counts: SyncCounts = { exchanges: 0, entriesTaken: 0, entriesGiven: 0, turnedAway: 0, storeAway: 0 };
  server.use(secured());
  server.use(async (context, next) => {
    const host = context.req.header('host');
    if (host !== undefined && !OWN_NAMES.test(host) && host !== behindTls)
      return context.text('This server answers to localhost.', 421);
    return next();
  });
  server.get('/health', (context) => context.json({ ok: true }));
  server.get('/health/ready', async (context) => {
    const ok = sync === undefined || (await answersNow(sync.store));
    return context.json({ ok, store: sync === undefined ? 'none' : ok ? 'answers' : 'away' }, ok ? 200 : 503);
  });
  server.get('/metrics', (context) => context.text(metricsOf(counts)));
  if (sync) server.route('/sync', syncRoutes(sync, counts));
  server.on(['GET', 'HEAD'], '*', (context) => answerFile(context, files.get(context.req.path)));
  server.all('*', (context) => {
    context.header('allow', 'GET, HEAD');
    return context.text('Only reading is possible here.', 405);
  });
  server.onError((fault, context) => {
    if (fault instanceof StoreAwayError) return sayAway(context, counts);
    if (fault instanceof NoRoomError) return sayNoRoom(context, fault);
    process.stderr.write(`serve: ${fault.stack ?? fault.message}\n`);
    return context.text('The server met a fault; it says more on standard error.', 500);
  });
  return server;
}

/** Counters in the text format of OpenMetrics; none of them names a journal. */
function metricsOf(counts: SyncCounts): string {
  const lines = [
    ['stagewright_exchanges_total', counts.exchanges],
    ['stagewright_entries_taken_total', counts.entriesTaken],
    ['stagewright_entries_given_total', counts.entriesGiven],
    ['stagewright_turned_away_total', counts.turnedAway],
    ['stagewright_store_away_total', counts.storeAway],
  ];
  return `${lines.map((line) => line.join(' ')).join('\n')}\n`;
}

function answerFile(context: Context, file: AppFile | undefined): Response {
  if (!file) return context.text('There is nothing at this address.', 404);
  const packing = file.packable ? wantedPacking(context.req.header('accept-encoding') ?? '') : 'identity';
  const etag = file.etag(packing);
  context.header('etag', etag);
  context.header('cache-control', file.cacheControl);
  if (file.packable) context.header('vary', 'accept-encoding');
  if (known(context.req.header('if-none-match'), etag)) return context.body(null, 304);
  context.header('content-type', file.type);
  if (packing !== 'identity') context.header('content-encoding', packing);
  return context.body(file.body(packing));
}

function wantedPacking(accepted: string): Packing {
  const wants = (name: string) =>
    accepted.split(',').some((item) => {
      const [coding, ...parameters] = item.split(';').map((part) => part.trim().toLowerCase());
      return coding === name && !parameters.some((parameter) => /^q=0(\.0*)?$/.test(parameter));
    });
  return wants('br') ? 'br' : wants('gzip') ? 'gzip' : 'identity';
}

function known(ifNoneMatch: string | undefined, etag: string): boolean {
  const tags = (ifNoneMatch ?? '').split(',').map((tag) => tag.trim().replace(/^W\//, ''));
  return tags.includes(etag) || tags.includes('*');
}

function secured() {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'none'"],
      // The week's solver is WebAssembly; that allows compiling such a module of this origin, never a script from text.
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'blob:', 'data:'],
      fontSrc: ["'self'"],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      manifestSrc: ["'self'"],
      baseUri: ["'none'"],
      formAction: ["'none'"],
      frameAncestors: ["'none'"],
    },
    permissionsPolicy: {
      camera: ['self'],
      microphone: [],
      geolocation: [],
      payment: [],
      usb: [],
      bluetooth: ['self'],
    },
    referrerPolicy: 'no-referrer',
    xFrameOptions: 'DENY',
    crossOriginOpenerPolicy: 'same-origin',
    crossOriginResourcePolicy: 'same-origin',
    crossOriginEmbedderPolicy: 'require-corp',
    // Said by whoever puts TLS in front; over plain loopback it means nothing.
    strictTransportSecurity: false,
  });
}
