import { createHash } from 'node:crypto';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { oneEntry } from '../../test/journal/one-entry.ts';
import { journalKeys } from '#outside/seal/journal-keys.ts';
import { openEntry, sealEntry } from '#outside/seal/seal-entry.ts';
import { openSqliteStore } from '#outside/sealed-store/sqlite-sealed-store.ts';
import { exchangeAnswer } from '#outside/sync/exchange.ts';
import * as v from 'valibot';
import { createServer } from './create-server.ts';
import { dropEnded } from './drop-ended.ts';

const mine = journalKeys(Uint8Array.from({ length: 32 }, (_, i) => i));
const theirs = journalKeys(Uint8Array.from({ length: 32 }, (_, i) => i + 9));

const NOW_MS = Date.UTC(2027, 2, 1);

function running() {
  let clock = 0;
  const store = openSqliteStore(':memory:');
  const server = createServer({
    files: new Map(),
    sync: { store, clockMs: () => clock, nowMs: () => NOW_MS + clock },
  });
  const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
    server.request(`/sync/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${mine.access}`, ...headers },
      body: typeof body === 'string' || body instanceof Blob ? body : JSON.stringify(body),
    });
  const exchange = async (entries: readonly object[] = [], since = 0, at = '') => {
    const answer = await post('exchange', { journal: mine.journal, since, at, entries });
    return { status: answer.status, body: v.parse(exchangeAnswer, await answer.json()) };
  };
  return { server, store, post, exchange, pass: (ms: number) => (clock += ms) };
}

const sealed = (n: number) => sealEntry(mine, oneEntry({ id: `e${n}`, stamp: `s${n}` }));

describe('sealed journals over HTTP', () => {
  it('[SYN-11] an exchange keeps what came and hands over what is new, once, in one round trip', async () => {
    const { exchange } = running();
    const [a, b] = [sealed(1), sealed(2)];
    expect((await exchange([a])).body).toMatchObject({ seq: 1, more: false, entries: [] });
    const answer = await exchange([b]);
    expect(answer.body).toMatchObject({ seq: 2, entries: [a] });
    expect((await exchange([a, b], 2, answer.body.at)).body).toMatchObject({ seq: 2, entries: [] });
  });

  it('[SYN-14] another key does not open a journal, reads nothing of it and changes nothing', async () => {
    const { exchange, post, store } = running();
    await exchange([sealed(1)]);
    const asThem = { authorization: `Bearer ${theirs.access}` };
    const { journal } = mine;
    const doors: Readonly<Record<string, object>> = {
      exchange: { journal, since: 0, at: '', entries: [sealed(2)] },
      ids: { journal },
      drop: { journal },
      lend: { journal, reader: 'a'.repeat(64), untilMs: NOW_MS + 1e9 },
      read: { journal, since: 0, at: '' },
    };
    for (const [path, body] of Object.entries(doors)) {
      const answer = await post(path, body, asThem);
      expect([path, answer.status]).toEqual([path, 403]);
      expect(await answer.text()).not.toContain('e1');
    }
    expect(await store.lentUntil(journal, 'a'.repeat(64))).toBeUndefined();
    expect((await post('ids', { journal: mine.journal }, { authorization: 'Bearer x' })).status).toBe(403);
    expect((await exchange()).body.entries.map(({ id }) => id)).toEqual(['e1']);
  });

  it('[SYN-14] an entry replayed changes nothing; one forged does not open', async () => {
    const { exchange } = running();
    const [first] = [sealed(1)];
    await exchange([first]);
    await exchange([{ ...first, body: sealed(2).body }]);
    const [kept] = (await exchange()).body.entries;
    expect(kept).toEqual(first);
    expect(openEntry(mine, { ...first, body: sealed(2).body }).ok).toBe(false);
  });

  it.each([
    ['no JSON', '{'],
    ['another shape', { hello: 1 }],
    ['an unknown field', { journal: mine.journal, since: 0, at: '', entries: [], more: 1 }],
    ['a path for a name', { journal: '../../etc/passwd', since: 0, at: '', entries: [] }],
    [
      'a name with a line break',
      { journal: mine.journal, since: 0, at: '', entries: [{ id: 'a\r\nx: y', stamp: 's', body: 'AAAA' }] },
    ],
    [
      'a body that is no base64',
      { journal: mine.journal, since: 0, at: '', entries: [{ id: 'a', stamp: 's', body: '<script>' }] },
    ],
    ['a place below nought', { journal: mine.journal, since: -1, at: '', entries: [] }],
    ['a deep nest', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
    [
      'too many entries',
      {
        journal: mine.journal,
        since: 0,
        at: '',
        entries: Array.from({ length: 2001 }, (_, i) => ({ id: `e${i}`, stamp: 's', body: 'AAAA' })),
      },
    ],
  ])('[SYN-14] %s is refused, and nothing of it is repeated', async (_what, body) => {
    const { post } = running();
    const answer = await post('exchange', body);
    expect(answer.status).toBe(400);
    const text = await answer.text();
    for (const part of ['passwd', 'script', 'x: y', mine.journal]) expect(text).not.toContain(part);
  });

  it('[SYN-14] a request beyond eight megabytes, of another type, or from another site is refused', async () => {
    const { post } = running();
    const large = JSON.stringify({
      journal: mine.journal,
      since: 0,
      entries: [],
      pad: 'x'.repeat(9 * 1024 * 1024),
    });
    expect((await post('exchange', large, { 'content-length': String(large.length) })).status).toBe(413);
    expect((await post('exchange', '{}', { 'content-type': 'text/plain' })).status).toBe(415);
    expect((await post('exchange', '{}', { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
  });

  describe('packed', () => {
    const packed = (body: Uint8Array) => new Blob([new Uint8Array(body)]);
    const gzip = { 'content-encoding': 'gzip' };
    const whole = JSON.stringify({
      journal: mine.journal,
      since: 0,
      at: '',
      entries: Array.from({ length: 50 }, (_, i) => sealed(i)),
    });

    it('[SYN-30] a request packed by gzip is kept like a plain one; another encoding is refused by name', async () => {
      const { post, exchange } = running();
      expect((await post('exchange', packed(gzipSync(whole)), gzip)).status).toBe(200);
      expect((await exchange()).body.entries).toHaveLength(50);
      for (const encoding of ['br', 'deflate', 'gzip, gzip', 'x'])
        for (const path of ['exchange', 'read', 'lend', 'ids', 'drop']) {
          const body = packed(brotliCompressSync(whole));
          const answer = await post(path, body, { 'content-encoding': encoding });
          expect([path, encoding, answer.status]).toEqual([path, encoding, 415]);
          expect(answer.headers.get('accept-encoding')).toBe('gzip');
        }
    });

    it.each([
      ['nine megabytes of one letter', () => gzipSync(`"${'x'.repeat(9 * 1024 * 1024)}"`)],
      ['a megabyte out of a kilobyte', () => gzipSync(`"${'x'.repeat(1024 * 1024)}"`)],
      ['ten thousand packings one behind the other', () => manyMembers(10_000)],
      ['more than it may be, without growing beyond its due', () => gzipSync(scatter(9 * 1024 * 1024))],
    ])('[SYN-31] a bomb is refused without being unpacked to its end: %s', async (_what, make) => {
      const { post } = running();
      const answer = await post('exchange', packed(make()), gzip);
      expect(answer.status).toBe(413);
      expect(await answer.json()).toMatchObject({ problem: { code: 'server/refused' } });
    });

    it('[SYN-31] a packed request that broke off, is none, or is packed twice is refused', async () => {
      const { post, exchange } = running();
      const good = gzipSync(whole);
      for (const bytes of [good.subarray(0, good.length - 9), good.subarray(0, 30), Buffer.from(whole)])
        expect((await post('exchange', packed(bytes), gzip)).status).toBe(400);
      expect((await post('exchange', packed(gzipSync(good)), gzip)).status).toBe(400);
      expect((await post('exchange', packed(new Uint8Array()), gzip)).status).toBe(400);
      expect((await exchange()).body.entries).toEqual([]);
    });
  });

  it('[SYN-15] a journal that asks too often is told to wait, and is let in again', async () => {
    const { post, pass } = running();
    const ask = async () => (await post('ids', { journal: mine.journal })).status;
    const statuses = await Promise.all(Array.from({ length: 140 }, ask));
    expect(statuses.filter((status) => status === 429).length).toBe(20);
    pass(2000);
    expect(await ask()).toBe(200);
  });

  it('[SYN-15] whoever makes up names opens no endless number of journals, and nobody else is shut out by it', async () => {
    const store = openSqliteStore(':memory:');
    const server = createServer({
      files: new Map(),
      sync: {
        store,
        clockMs: () => 0,
        nowMs: () => NOW_MS,
        openings: { burst: 3, perSecond: 1 },
      },
    });
    const ask = async (journal: string) =>
      (
        await server.request('/sync/ids', {
          method: 'POST',
          headers: { 'content-type': 'application/json', authorization: `Bearer ${mine.access}` },
          body: JSON.stringify({ journal }),
        })
      ).status;
    const names = Array.from({ length: 6 }, (_, i) => String(i).repeat(32));
    expect(await Promise.all(names.map(ask))).toEqual([200, 200, 200, 429, 429, 429]);
    expect(await ask('0'.repeat(32))).toBe(200);
  });

  it('[SYN-17] a place in another order than the server has is not answered, and nothing is kept', async () => {
    const { exchange, post } = running();
    await exchange([sealed(1)]);
    const body = { journal: mine.journal, since: 1, at: 'e9', entries: [sealed(2)] };
    expect((await post('exchange', body)).status).toBe(409);
    expect((await post('exchange', { ...body, since: 7 })).status).toBe(409);
    expect((await exchange()).body.entries.map(({ id }) => id)).toEqual(['e1']);
  });

  describe('a copy lent for a time', () => {
    const reader = 'c'.repeat(64);
    const asReader = { authorization: `Bearer ${reader}` };
    const digest = createHash('sha256').update(reader).digest('hex');
    const look = { journal: mine.journal, since: 0, at: '' };

    async function lent() {
      const parts = running();
      await parts.exchange([sealed(1)]);
      const loan = { journal: mine.journal, reader: digest, untilMs: NOW_MS + 60_000 };
      expect((await parts.post('lend', loan)).status).toBe(200);
      return { ...parts, loan };
    }

    it('[SYN-24] is read by its reader alone, until its end and not a moment longer', async () => {
      const { post, pass } = await lent();
      const answer = await post('read', look, asReader);
      expect(answer.status).toBe(200);
      expect(v.parse(exchangeAnswer, await answer.json()).entries.map(({ id }) => id)).toEqual(['e1']);
      expect((await post('read', look)).status).toBe(403);
      expect((await post('read', look, { authorization: `Bearer ${'d'.repeat(64)}` })).status).toBe(403);
      pass(60_000);
      expect((await post('read', look, asReader)).status).toBe(403);
    });

    it('[SYN-24] a reader writes nothing, drops nothing, lends nothing on, and opens no journal by looking', async () => {
      const { post, exchange, loan } = await lent();
      const writes = { ...look, entries: [sealed(2)] };
      expect((await post('exchange', writes, asReader)).status).toBe(403);
      expect((await post('drop', { journal: mine.journal }, asReader)).status).toBe(403);
      expect((await post('lend', { ...loan, untilMs: NOW_MS + 1e9 }, asReader)).status).toBe(403);
      expect((await post('read', writes, asReader)).status).toBe(400);
      expect((await exchange()).body.entries.map(({ id }) => id)).toEqual(['e1']);
      const other = { ...look, journal: theirs.journal };
      expect((await post('read', other, asReader)).status).toBe(403);
      expect((await post('exchange', { ...other, entries: [] })).status).toBe(200);
    });

    it('[SYN-24] a loan of another shape is refused', async () => {
      const { post, loan } = await lent();
      for (const bad of [
        { ...loan, untilMs: -1 },
        { ...loan, untilMs: 1.5 },
        { ...loan, reader: 'no digest' },
        { ...loan, more: 1 },
      ])
        expect((await post('lend', bad)).status).toBe(400);
    });

    it('[SYN-24] a copy whose end has come is dropped, and its name stays closed', async () => {
      const { post, store, pass } = await lent();
      await dropEnded(store, NOW_MS + 60_000);
      expect((await post('read', look, asReader)).status).toBe(200);
      pass(60_001);
      await dropEnded(store, NOW_MS + 60_001);
      expect(await store.ids(mine.journal)).toEqual([]);
      expect((await post('exchange', { ...look, entries: [] })).status).toBe(403);
    });
  });

  it('[SYN-15] health and metrics name nobody', async () => {
    const { server, exchange } = running();
    await exchange([sealed(1)]);
    expect(await (await server.request('/health')).json()).toEqual({ ok: true });
    const metrics = await (await server.request('/metrics')).text();
    expect(metrics).toContain('stagewright_entries_taken_total 1');
    expect(metrics).not.toContain(mine.journal);
  });
});

/** Many small packings that unpack to one long text. */
function manyMembers(count: number): Buffer {
  const one = gzipSync('x'.repeat(2000));
  return Buffer.concat(Array.from({ length: count }, () => one));
}

/** Text that hardly packs: it only comes again beyond the window of gzip (RFC 1951: 32 kB). */
function scatter(length: number): string {
  const piece = Array.from({ length: 1500 }, (_, i) => createHash('sha256').update(`${i}`).digest('base64'));
  return piece.join('').repeat(Math.ceil(length / 66_000));
}
