import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { journalStoreContract } from '../contract/journal-store-contract.ts';
import { buildPage } from './build-page.ts';
import { useBrowser } from './harness.ts';
import { ownProcess } from './own-process.ts';
import type { StorePage } from './pages/store-page.ts';

let folder = '';
beforeAll(async () => {
  folder = await buildPage('store-page.ts');
});
const bench = useBrowser(() => folder);

/** Calls one of the page's doors by name. */
function call<Name extends keyof StorePage>(
  page: Page,
  name: Name,
  ...args: Parameters<StorePage[Name]>
): Promise<Awaited<ReturnType<StorePage[Name]>>> {
  return page.evaluate(([door, given]) => Reflect.get(globalThis, 'storePage')[door](...given), [
    name,
    args,
  ] as const);
}

describe('the browser store keeps the contract', () => {
  const faults = ['throw', 'abort'] as const;
  test.each(faults.flatMap((how) => journalStoreContract.map(({ title }) => [title, how] as const)))(
    '%s (faults: %s)',
    async (title, how) => {
      const { page } = await bench.open();
      expect(await call(page, 'runRule', title, how)).toBe('kept');
    },
  );

  test('[JRN-52] photographs come back byte for byte and can be dropped', async () => {
    const { page } = await bench.open();
    expect(await call(page, 'blobs')).toEqual({
      put: { ok: true, value: 'front' },
      size: 50_000,
      type: 'image/jpeg',
      same: true,
      gone: true,
      near: 'near',
    });
  });
});

describe('the browser store under force', () => {
  test.each([1, 2, 3, 4, 5, 6, 9, 14])(
    '[JRN-41] [JRN-64] the tab is killed at write %i: what was acknowledged is whole, the rest is all or nothing',
    async (step) => {
      const { page, device } = await bench.open();
      const acknowledged: number[] = [];
      await page.exposeFunction('acknowledge', (append: number) => void acknowledged.push(append));
      const down = new Promise<void>((resolve) => {
        void page.exposeFunction('bringDown', () => resolve());
      });
      await page.waitForFunction(() => 'bringDown' in globalThis);
      const kill = await bench.killer(page);
      const running = call(page, 'keepUntilDown', 'killed', step).catch(() => undefined);
      await down;
      await kill();
      await running;
      const { page: next } = await bench.open({ device });
      const counts = await call(next, 'countsByAppend', 'killed');
      for (const [append, count] of Object.entries(counts)) {
        expect([append, count]).toEqual([append, Number(append) % 3 === 0 ? 2500 : 1]);
      }
      for (const append of acknowledged) expect(Object.keys(counts)).toContain(String(append));
    },
  );

  test('[JRN-64] the whole browser is killed: what was acknowledged is in the profile', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'stagewright-profile-'));
    const first = await ownProcess(profile);
    const page = (await first.browser.contexts()[0]?.newPage()) ?? (await first.browser.newPage());
    const acknowledged: number[] = [];
    await page.exposeFunction('acknowledge', (append: number) => void acknowledged.push(append));
    await page.goto(bench.address());
    const running = call(page, 'keepUntilDown', 'killed', 0).catch(() => undefined);
    while (acknowledged.length < 12) await new Promise((resolve) => setTimeout(resolve, 5));
    await first.kill();
    await running;
    const second = await ownProcess(profile);
    const next = (await second.browser.contexts()[0]?.newPage()) ?? (await second.browser.newPage());
    await next.goto(bench.address());
    const counts = await call(next, 'countsByAppend', 'killed');
    for (const [append, count] of Object.entries(counts)) {
      expect([append, count]).toEqual([append, Number(append) % 3 === 0 ? 2500 : 1]);
    }
    expect(Object.keys(counts)).toEqual(expect.arrayContaining(acknowledged.map(String)));
    await second.kill();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  });

  test('[JRN-51] storage that is full is said, what was kept stays, and it works again with room', async () => {
    const { page, device } = await bench.open();
    const session = await device.newCDPSession(page);
    const origin = new URL(page.url()).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4_000_000 });
    const filled = await call(page, 'fill', 'full');
    expect(filled.code).toBe('store/full');
    expect(filled.kept).toBe(filled.saved);
    expect(filled.saved).toBeGreaterThan(0);
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    expect(await call(page, 'appendOne', 'full')).toBe('saved');
  });
});
