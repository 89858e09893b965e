import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { NoRoomError } from '../../src/outside/sealed-store/no-room-error.ts';
import type { SealedFile } from '../../src/outside/sealed-store/sealed-store.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { loadAppFiles } from '../../src/server/app-files.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen, type Listening } from '../../src/server/listen.ts';
import { type CuttingProxy, cuttingProxy } from '../faults/cutting-proxy.ts';
import { passFirstStart } from './first-start.ts';
import { axeFindings, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
/** The page comes from a server of this test's own, which refuses, breaks off and is missed. */
const EXPECTED = /a request to http:\/\/127\.0\.0\.1|Failed to load resource/;

let [store, listening, proxy]: [SealedFile | undefined, Listening | undefined, CuttingProxy | undefined] = [
  undefined,
  undefined,
  undefined,
];
let [full, journal] = [false, ''];
beforeAll(async () => {
  const kept = openSqliteStore(':memory:');
  store = {
    ...kept,
    append: (name, ...what) => {
      journal = name;
      return full ? Promise.reject(new NoRoomError('full')) : kept.append(name, ...what);
    },
  };
  const files = loadAppFiles(join(import.meta.dirname, '../../dist/app'));
  if (!files) throw new Error('There is no built app; run "npm run build".');
  const sync = { store, clockMs: () => performance.now(), nowMs: Date.now };
  const outcome = await listen(createServer({ files, sync }), 0);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  listening = outcome.value;
  proxy = await cuttingProxy(listening.port);
});
afterAll(async () => {
  await proxy?.close();
  await listening?.stop();
  await store?.close();
});

async function toDevices(page: Page): Promise<void> {
  await page.evaluate(() => (location.hash = '#/journal/devices'));
  await page.getByRole('heading', { level: 1, name: 'Devices' }).waitFor();
}

async function weighIn(page: Page, kilograms: string): Promise<void> {
  await page.evaluate(() => (location.hash = '#/body/weigh'));
  await page.getByRole('textbox', { name: 'On the scale' }).fill(kilograms);
  await settle(page);
  await page.getByRole('button', { name: /^Keep|^Weigh/ }).click();
  await page.getByText(`Weighed in at ${kilograms} kg`).waitFor();
}

describe('a server that fails in the middle of a meeting', () => {
  it('[SYN-33] [SYN-38] what is written is saved here and said to be apart; with the server back it is in step', async () => {
    if (!proxy || !store) throw new Error('the server is started before the first test');
    const { page } = await app.open({
      path: proxy.address,
      journal: 'own',
      at: '2027-03-08T06:30:00',
      viewport: { width: 390, height: 2600 },
      expectErrors: EXPECTED,
    });
    await passFirstStart(page);
    await toDevices(page);
    await settle(page);
    await page.getByRole('button', { name: 'Make a key and begin' }).click();
    await page.getByText(/^In step at/).waitFor();

    const cuts = [
      // In the middle of the request: the server never has it. In the answer: the server has it, and nobody knows.
      { side: 'request', after: 900, kilograms: '67.9', words: 'The server was not reached.' },
      { side: 'answer', after: 120, kilograms: '67.8', words: /^The answer of the server broke off/ },
    ] as const;
    for (const { side, after, kilograms, words } of cuts) {
      proxy.cutAt({ side, after });
      await weighIn(page, kilograms);
      await toDevices(page);
      // At once: what was in step before is not in step now.
      expect(await page.getByText(/^In step at/).count()).toBe(0);
      await page.getByText(words).waitFor();
      await page.getByText('Everything is kept on this device; it is tried again').waitFor();
      expect([side, proxy.wasCut(), await page.getByText(/^In step at/).count()]).toEqual([side, true, 0]);
      await page.evaluate(() => (location.hash = '#/journal'));
      await page
        .getByText(/^Not in step: The (server was not reached|answer of the server broke off)/)
        .waitFor();
      await page.getByText(`${kilograms} kg`).first().waitFor();
      proxy.mend();
      await toDevices(page);
      // Nothing was pressed for seconds; only the screen is new (settle.ts).
      await page.waitForTimeout(400);
      await page.getByRole('button', { name: 'Bring in step now' }).click();
      await page.getByText(/^In step at/).waitFor();
    }

    full = true;
    vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    await weighIn(page, '67.7');
    await toDevices(page);
    await page.getByText('The server has no room: the newest entries are not on the server.').waitFor();
    await page.getByText(/^Everything is kept on this device\./).waitFor();
    expect(await page.getByText(/^In step at/).count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    vi.restoreAllMocks();
    full = false;
    await page.getByRole('button', { name: 'Bring in step now' }).click();
    await page.getByText(/^In step at/).waitFor();

    const written = await page.evaluate(async () => {
      const open = indexedDB.open('stagewright-own');
      await new Promise((resolve) => (open.onsuccess = resolve));
      const all = open.result.transaction('log').objectStore('log').getAll();
      await new Promise((resolve) => (all.onsuccess = resolve));
      return all.result.flatMap((run: string) => run.split('\n').map((line) => JSON.parse(line).id));
    });
    const there = await store.ids(journal);
    expect(new Set(there)).toEqual(new Set(written));
    expect(there).toHaveLength(written.length);
  });
});
