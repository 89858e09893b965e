import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type AppFile, loadAppFiles } from '../../src/server/app-files.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen } from '../../src/server/listen.ts';
import { CHROMIUM, useBrowser } from './harness.ts';

const APP = join(import.meta.dirname, '../../dist/app');
const bench = useBrowser();

async function isKept(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
}

describe('without a network', () => {
  it('[LOOK-12] after the first load every place opens with the server stopped, in this tab and a new one', async () => {
    const { page, device } = await bench.open({ journal: 'demo' });
    await isKept(page);
    const rule = page.getByRole('navigation', { name: 'Places' });
    const places = await rule.getByRole('link').allTextContents();
    expect(places.length).toBeGreaterThanOrEqual(3);
    await bench.stopServer();
    await page.reload();
    for (const place of places) {
      await rule.getByRole('link', { name: place, exact: true }).click();
      await expect.poll(() => rule.locator('[aria-current="page"]').textContent()).toBe(place);
      await page.locator('[aria-busy="true"]').waitFor({ state: 'detached' });
      await page.getByRole('heading', { level: 1 }).waitFor();
      expect(await page.getByText('could not be loaded').count()).toBe(0);
    }
    const another = await device.newPage();
    await another.goto(page.url());
    await another.getByRole('heading', { level: 1 }).waitFor();
  });
});

describe('a newer version', () => {
  it('[LOOK-12] waits beside the running one until it is asked for, then takes over and clears up', async () => {
    const files = new Map(loadAppFiles(APP));
    const started = await listen(createServer({ files }), 0);
    if (!started.ok) throw new Error(started.problem.message);
    const browser = await chromium.launch({
      executablePath: CHROMIUM,
      args: ['--no-sandbox', '--disable-gpu'],
    });
    try {
      const page = await browser.newPage();
      await page.goto(started.value.address);
      await isKept(page);
      await page.evaluate(() => document.body.setAttribute('data-running', 'step 2'));
      const newer = await newerWorker();
      for (const [address, file] of newer) files.set(address, file);
      await page.evaluate(() => navigator.serviceWorker.ready.then((kept) => kept.update()));

      const take = page.getByRole('button', { name: 'Use it now' });
      await take.waitFor();
      expect(await page.locator('body').getAttribute('data-running')).toBe('step 2');
      expect(await page.evaluate(() => caches.keys())).toHaveLength(2);

      await take.click();
      await page.locator('body:not([data-running])').waitFor();
      await page.getByRole('heading', { level: 1 }).waitFor();
      await expect.poll(() => page.evaluate(() => caches.keys())).toEqual(['stagewright-0123456789abcdef']);
    } finally {
      await browser.close();
      await started.value.stop();
    }
  });
});

/** The service worker of a build whose content differs. */
async function newerWorker(): Promise<ReadonlyMap<string, AppFile>> {
  const folder = await mkdtemp(join(tmpdir(), 'stagewright-newer-'));
  const script = await readFile(join(APP, 'sw.js'), 'utf8');
  const newer = script.replace(
    /stagewright-\$\{"[0-9a-f]{16}"\}|stagewright-[0-9a-f]{16}/,
    'stagewright-0123456789abcdef',
  );
  if (newer === script) throw new Error('The worker carries no content hash.');
  await writeFile(join(folder, 'sw.js'), newer);
  await writeFile(join(folder, 'index.html'), '');
  const files = loadAppFiles(folder);
  const worker = files?.get('/sw.js');
  if (!worker) throw new Error('The newer worker was not read.');
  return new Map([['/sw.js', worker]]);
}
