import { packRequest } from '#outside/sync/pack-request.ts';
import type { Ask } from '#outside/sync/synchronize.ts';

/** A server that says nothing for so long was not reached. */
const PATIENCE_MS = 60_000;

/** Asks this app's own server as whoever has a token. */
export function askServer(access: string): Ask {
  return async (path, body) => {
    if (!navigator.onLine) throw new Error('there is no connection');
    const packed = await packRequest(body);
    const answer = await fetch(`/sync/${path}`, {
      method: 'POST',
      headers: { ...packed.headers, authorization: `Bearer ${access}` },
      body: packed.body,
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    const text = await answer.text();
    return { status: answer.status, body: readJson(text) };
  };
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // An answer that broke off, or a page in its place: said as that.
    return undefined;
  }
}
