import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { createConnection, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadAppFiles } from './app-files.ts';
import { createServer } from './create-server.ts';
import { listen } from './listen.ts';

const script = `console.log(${JSON.stringify('x'.repeat(4000))})`;
let folder = '';
let app = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'stagewright-server-'));
  app = join(folder, 'app');
  mkdirSync(join(app, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for anyone');
  writeFileSync(join(app, 'index.html'), '<!doctype html><title>App</title>');
  writeFileSync(join(app, 'sw.js'), script);
  writeFileSync(join(app, 'manifest.webmanifest'), '{}');
  writeFileSync(join(app, 'icon.png'), Buffer.alloc(3000));
  writeFileSync(join(app, 'assets', 'main-a1b2.js'), script);
});
afterAll(() => rmSync(folder, { recursive: true }));

const server = () => createServer({ files: loadAppFiles(app) ?? new Map() });
const ask = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  server().request(path, { method, headers });

describe('the server', () => {
  test('[SRV-01] answers the page and its files with their types', async () => {
    const types = await Promise.all(
      ['/', '/index.html', '/sw.js', '/manifest.webmanifest', '/icon.png', '/assets/main-a1b2.js'].map(
        async (path) => (await ask(path)).headers.get('content-type'),
      ),
    );
    expect(types).toEqual([
      'text/html; charset=utf-8',
      'text/html; charset=utf-8',
      'text/javascript; charset=utf-8',
      'application/manifest+json; charset=utf-8',
      'image/png',
      'text/javascript; charset=utf-8',
    ]);
    expect(await (await ask('/')).text()).toContain('<title>App</title>');
  });

  test('[SRV-01] no address leads out of the folder, on a real socket with the path as it is sent', async () => {
    const listening = await listen(server(), 0);
    if (!listening.ok) throw new Error(listening.problem.message);
    const { port } = listening.value;
    const stop = () => listening.value.stop();
    const raw = (path: string) =>
      new Promise<number>((resolve, reject) => {
        request({ host: '127.0.0.1', port, path }, (response) => {
          response.resume();
          resolve(response.statusCode ?? 0);
        })
          .on('error', reject)
          .end();
      });
    const tries = [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/assets/..%5c..%5c..%5csecret.txt',
      '/assets/../../secret.txt',
      '//secret.txt',
      '/%00',
      '/secret.txt',
    ];
    for (const path of tries) expect([path, await raw(path)]).toEqual([path, 404]);
    expect(await raw('/')).toBe(200);
    await stop();
  });

  test('[SRV-02] every answer is protected, also a refusal', async () => {
    for (const answer of [await ask('/'), await ask('/nowhere'), await ask('/', {}, 'POST')]) {
      expect(answer.headers.get('content-security-policy')).toBe(
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' blob: data:; font-src 'self'; " +
          "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
      );
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
      expect(answer.headers.get('referrer-policy')).toBe('no-referrer');
      expect(answer.headers.get('cross-origin-opener-policy')).toBe('same-origin');
      expect(answer.headers.get('permissions-policy')).toContain('geolocation=()');
    }
  });

  test('[SRV-03] another host name is not answered', async () => {
    expect((await ask('/', { host: 'evil.example' })).status).toBe(421);
    expect((await ask('/', { host: '127.0.0.1.evil.example' })).status).toBe(421);
    expect((await ask('/', { host: 'localhost:4173' })).status).toBe(200);
    expect((await ask('/', { host: '[::1]:4173' })).status).toBe(200);
  });

  test('[SRV-04] hashed names are kept for ever, the rest is asked for anew, the unchanged is 304', async () => {
    expect((await ask('/assets/main-a1b2.js')).headers.get('cache-control')).toContain('immutable');
    for (const path of ['/', '/sw.js'])
      expect((await ask(path)).headers.get('cache-control')).toBe('no-cache');
    const etag = (await ask('/')).headers.get('etag') ?? '';
    const again = await ask('/', { 'if-none-match': `"other", W/${etag}` });
    expect([again.status, await again.text(), again.headers.get('etag')]).toEqual([304, '', etag]);
    expect((await ask('/', { 'if-none-match': '"other"' })).status).toBe(200);
  });

  test('[SRV-05] text is packed as accepted, each packing under its own tag', async () => {
    const br = await ask('/sw.js', { 'accept-encoding': 'gzip, deflate, br;q=0.5' });
    const gzip = await ask('/sw.js', { 'accept-encoding': 'gzip, br;q=0' });
    const plain = await ask('/sw.js');
    expect(brotliDecompressSync(await br.arrayBuffer()).toString()).toBe(script);
    expect(gunzipSync(await gzip.arrayBuffer()).toString()).toBe(script);
    expect(await plain.text()).toBe(script);
    expect(new Set([br, gzip, plain].map((answer) => answer.headers.get('etag'))).size).toBe(3);
    expect(br.headers.get('vary')).toBe('accept-encoding');
    const picture = await ask('/icon.png', { 'accept-encoding': 'br' });
    expect([picture.headers.get('content-encoding'), (await picture.arrayBuffer()).byteLength]).toEqual([
      null,
      3000,
    ]);
  });

  test('[SRV-06] anything but reading is refused', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS']) {
      const answer = await ask('/', {}, method);
      expect([answer.status, answer.headers.get('allow')]).toEqual([405, 'GET, HEAD']);
    }
    const head = await ask('/', {}, 'HEAD');
    expect([head.status, await head.text()]).toEqual([200, '']);
  });

  test('[SRV-07] a taken port is said in one sentence with the way out', async () => {
    const first = await listen(server(), 0);
    if (!first.ok) throw new Error(first.problem.message);
    const second = await listen(server(), first.value.port);
    expect(second.ok ? '' : second.problem.code).toBe('server/port-in-use');
    expect(second.ok ? '' : second.problem.remedy).toContain(`--port ${first.value.port + 1}`);
    await first.value.stop();
    const third = await listen(server(), first.value.port);
    expect(third.ok).toBe(true);
    if (third.ok) await third.value.stop();
  });

  test('[SRV-08] no more connections than allowed are held, and a head that never ends is cut off', async () => {
    const limits = { connections: 2, headMs: 300, requestMs: 600 };
    const listening = await listen(server(), 0, '127.0.0.1', limits);
    if (!listening.ok) throw new Error(listening.problem.message);
    const { port } = listening.value;
    const ended = (socket: Socket) =>
      new Promise<string>((done) => socket.once('close', () => done('closed')));
    const [first, second] = [createConnection(port), createConnection(port)];
    await Promise.all([first, second].map((socket) => new Promise((done) => socket.once('connect', done))));
    const cutOff = ended(first);
    first.write('GET / HTTP/1.1\r\nhost: localhost\r\n');
    const third = createConnection(port);
    expect(await ended(third)).toBe('closed');
    second.write('GET / HTTP/1.1\r\nhost: localhost\r\n\r\n');
    expect(await new Promise((done) => second.once('data', (head) => done(String(head).slice(0, 15))))).toBe(
      'HTTP/1.1 200 OK',
    );
    first.resume();
    expect(await cutOff).toBe('closed');
    second.destroy();
    await listening.value.stop();
  });

  test('[SRV-07] a folder without a built app is known as such', () => {
    expect(loadAppFiles(join(folder, 'nowhere'))).toBeUndefined();
    expect(loadAppFiles(folder)).toBeUndefined();
  });
});
