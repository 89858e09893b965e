import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type AppBench, axeFindings, DESKTOP, scrollsSideways, smallTargets } from './harness.ts';

/** A screen that is worked out in a worker has settled by then; nothing is asserted of how long it takes. */
const DRAWN_MS = 600;

/** What is wrong with screens of one open page, each fault with the screen it was found on. */
async function screenFaults(page: Page, paths: readonly string[]): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const path of paths) {
    await page.evaluate((hash) => {
      globalThis.location.hash = hash;
    }, `#/${path}`);
    await page.waitForTimeout(DRAWN_MS);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const found = [...(await axeFindings(page)), ...(await smallTargets(page))];
    if (await scrollsSideways(page)) found.push('scrolls sideways');
    faults.push(...found.map((fault) => `${path}: ${fault}`));
  }
  return faults;
}

/** Holds the demonstration's screens to [LOOK-21], on a phone so tall that the fixed bars cover nothing and on a desk. */
export function everyScreenIsSound(
  app: AppBench,
  phone: { readonly width: number; readonly height: number },
  paths: readonly [string, ...string[]],
): void {
  it.each([
    ['on a phone', { viewport: phone }],
    ['on a phone in the dark', { viewport: phone, dark: true }],
    ['on a desk', { viewport: DESKTOP }],
  ])('[LOOK-21] %s passes axe, with large targets and no sideways scroll', async (_where, look) => {
    const { page } = await app.open({ path: `/#/${paths[0]}`, ...look });
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.waitForTimeout(700);
    expect(await screenFaults(page, paths)).toEqual([]);
  });
}
