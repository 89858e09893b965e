import { connect } from 'node:net';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { oneEntry } from '../../test/journal/one-entry.ts';
import { journalKeys } from '#outside/seal/journal-keys.ts';
import { sealEntry } from '#outside/seal/seal-entry.ts';
import { openSqliteStore } from '#outside/sealed-store/sqlite-sealed-store.ts';
import { createServer } from './create-server.ts';
import { listen, type Listening } from './listen.ts';

const DOORS = ['exchange', 'ids', 'drop', 'lend', 'read'];
const MARK = 'smuggled-7f3a';
const keys = journalKeys(new Uint8Array(32).fill(8));

const store = openSqliteStore(':memory:');
let listening: Listening | undefined;
let said = '';
beforeAll(async () => {
  const sync = { store, clockMs: () => performance.now(), nowMs: Date.now };
  const outcome = await listen(createServer({ files: new Map(), sync, behindTls: 'journal.example' }), 0);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  listening = outcome.value;
  await store.enter(keys.journal, 'digest');
  await store.append(keys.journal, [sealEntry(keys, oneEntry({ id: 'e1' }))]);
});
beforeEach(() => {
  said = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += String(text);
    return true;
  });
});
afterAll(async () => {
  vi.restoreAllMocks();
  await listening?.stop();
  await store.close();
});

/** Bytes as they are, on a real socket; everything that comes back until the other end closes or falls silent. */
function send(bytes: string): Promise<string> {
  return new Promise((resolve) => {
    let answer = '';
    const socket = connect(listening?.port ?? 0, '127.0.0.1', () => socket.write(bytes, 'latin1'));
    socket.setTimeout(2000, () => socket.destroy());
    socket.on('data', (chunk: Buffer) => (answer += chunk.toString('latin1')));
    // A server that hangs up on such bytes has refused them.
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(answer));
  });
}

const statusOf = (answer: string) => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);
const post = (door: string, headers: readonly string[], body = '{}') =>
  send(
    [
      `POST /sync/${door} HTTP/1.1`,
      ...headers,
      'content-type: application/json',
      `content-length: ${body.length}`,
      'connection: close',
      '',
      body,
    ].join('\r\n'),
  );

/** Refused, and nothing of what was sent came back, as a header or as text, or was written down. */
function expectNothingOf(answer: string, what: string): void {
  expect([what, statusOf(answer) >= 400 || answer === '']).toEqual([what, true]);
  expect([what, answer.includes(MARK), said.includes(MARK)]).toEqual([what, false, false]);
}

describe('requests that no browser of this app sends', () => {
  it.each(DOORS)('[SYN-39] another host name is not answered at the door "%s"', async (door) => {
    const hosts = [
      `${MARK}.example`,
      `localhost.${MARK}.example`,
      `localhost:80@${MARK}`,
      `localhost#${MARK}`,
      `localhost/${MARK}`,
      `journal.example.${MARK}`,
      `[::1]${MARK}`,
      '',
    ];
    for (const host of hosts) {
      const answer = await post(door, [`host: ${host}`]);
      expect([host, [400, 421].includes(statusOf(answer))]).toEqual([host, true]);
      expectNothingOf(answer, host);
    }
    const twice = await post(door, ['host: localhost', `host: ${MARK}`]);
    expectNothingOf(twice, 'two hosts');
    expect(statusOf(await post(door, ['host: journal.example']))).toBe(400);
  });

  it('[SYN-39] a whole address in the first line does not stand in for the host', async () => {
    const answer = await send(
      `GET http://${MARK}.example/health HTTP/1.1\r\nhost: ${MARK}.example\r\nconnection: close\r\n\r\n`,
    );
    expectNothingOf(answer, 'absolute form');
    const other = await send(
      `GET http://${MARK}.example/health HTTP/1.1\r\nhost: localhost\r\nconnection: close\r\n\r\n`,
    );
    expect(other.includes(MARK) || said.includes(MARK)).toBe(false);
  });

  it.each([
    ['a line break in the path', `/%0d%0aset-cookie:%20${MARK}`],
    ['a line break in the query', `/?q=%0d%0aset-cookie:%20${MARK}`],
    ['bytes that are no UTF-8', `/%ff%fe${MARK}`],
    ['a path out of the folder', `/sync/../../${MARK}`],
    ['two slashes at the front', `//${MARK}/sync/exchange`],
    ['a colour for a terminal', `/%1b[31m${MARK}`],
    ['half an escape', `/%${MARK}`],
    ['a very long path', `/${'a'.repeat(9000)}${MARK}`],
  ])('[SYN-39] %s is answered without it', async (what, path) => {
    const answer = await send(`GET ${path} HTTP/1.1\r\nhost: localhost\r\nconnection: close\r\n\r\n`);
    expectNothingOf(answer, what);
    expect(said).toBe('');
  });

  it.each([
    ['a bare line feed in a header', `x: a\nset-cookie: ${MARK}`],
    ['a bare carriage return in a header', `x: a\rset-cookie: ${MARK}`],
    ['a byte of nought in a header', `x: a\u0000${MARK}`],
    ['a folded header', `x: a\r\n ${MARK}`],
    ['a space before the colon', `host : ${MARK}`],
    ['two lengths', `content-length: 3\r\nx: ${MARK}`],
    ['a length and chunks', `transfer-encoding: chunked\r\nx: ${MARK}`],
    ['a header without an end', `x: ${'a'.repeat(20_000)}${MARK}`],
    ['a token with a line break', `authorization: Bearer ${'a'.repeat(64)}\r\n\r\n${MARK}`],
    ['a token of another shape', `authorization: Basic ${MARK}`],
    ['an odd type', `content-type: application/json;${MARK}`],
    ['an odd encoding', `content-encoding: ${MARK}`],
    ['another origin', `sec-fetch-site: cross-site\r\norigin: https://${MARK}.example`],
  ])('[SYN-39] %s is refused at every door, and the server goes on', async (what, header) => {
    for (const door of DOORS) {
      const body = JSON.stringify({ journal: keys.journal, since: 0, at: '', entries: [] });
      const answer = await post(door, ['host: localhost', ...header.split('\r\n')], body);
      expectNothingOf(answer, `${what} at ${door}`);
      expect(answer.toLowerCase()).not.toContain('set-cookie');
    }
    expect(said).toBe('');
    const after = await send('GET /health HTTP/1.1\r\nhost: localhost\r\nconnection: close\r\n\r\n');
    expect(statusOf(after)).toBe(200);
    expect(await store.ids(keys.journal)).toEqual(['e1']);
  });

  it('[SYN-39] a request hidden in the body of another is never answered as one of its own', async () => {
    const hidden = `GET /health HTTP/1.1\r\nhost: localhost\r\n\r\n`;
    const answer = await send(
      `POST /sync/exchange HTTP/1.1\r\nhost: localhost\r\ncontent-type: application/json\r\n` +
        `content-length: ${hidden.length}\r\nconnection: close\r\n\r\n${hidden}`,
    );
    expect(statusOf(answer)).toBe(400);
    expect(answer.split('HTTP/1.1 ')).toHaveLength(2);
  });
});
