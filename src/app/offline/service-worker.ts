/**
 * Keeps the whole app on the device, so that every screen opens without a network from the first load on.
 * The build writes the list of files and a hash of their contents in place of the two names below.
 */
declare const PRECACHED_FILES: readonly string[];
declare const CONTENT_HASH: string;

const FILES = PRECACHED_FILES;
const CACHE_NAME = `stagewright-${CONTENT_HASH}`;

async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE_NAME);
  // Past the browser's own cache: an old copy there must not enter a new version.
  await cache.addAll(FILES.map((file) => new Request(file, { cache: 'reload' })));
}

async function dropOlder(worker: ServiceWorkerGlobalScope): Promise<void> {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith('stagewright-') && name !== CACHE_NAME);
  await Promise.all(older.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/** The kept copy; every screen is the one page. Anything not kept (the server's own doors) goes to the network. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE_NAME);
  const wanted = request.mode === 'navigate' ? '/' : request;
  return (await cache.match(wanted, { ignoreVary: true })) ?? fetch(request);
}

function isOurs(request: Request, origin: string): boolean {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== origin) return false;
  return request.mode === 'navigate' || FILES.includes(url.pathname);
}

function serve(worker: ServiceWorkerGlobalScope): void {
  worker.addEventListener('install', (event) => event.waitUntil(keepAll()));
  worker.addEventListener('activate', (event) => event.waitUntil(dropOlder(worker)));
  worker.addEventListener('fetch', (event) => {
    if (isOurs(event.request, worker.location.origin)) event.respondWith(answer(event.request));
  });
  // A new version waits until it is asked for: nobody's running step is interrupted.
  worker.addEventListener('message', (event) => {
    if (event.data === 'take-over') event.waitUntil(worker.skipWaiting());
  });
}

// The library types `self` as the scope of any worker.
const scope: unknown = self;
if (scope instanceof ServiceWorkerGlobalScope) serve(scope);
