import type { Ask } from '#outside/sync/synchronize.ts';

/** A server that says nothing for so long was not reached. */
const PATIENCE_MS = 60_000;

/** Asks this app's own server as whoever has a token. */
export function askServer(access: string): Ask {
  return async (path, body) => {
    if (!navigator.onLine) throw new Error('there is no connection');
    const answer = await fetch(`/sync/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${access}` },
      body: JSON.stringify(body),
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
    // A page in place of an answer (a server without a data folder): said as not understood.
    return undefined;
  }
}
