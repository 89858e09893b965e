import type { Page } from 'playwright-core';
import { axeFindings, scrollsSideways, smallTargets } from './harness.ts';

/** A screen that is worked out in a worker has settled by then; nothing is asserted of how long it takes. */
const DRAWN_MS = 600;

/** What is wrong with screens of one open page, each fault with the screen it was found on. */
export async function screenFaults(page: Page, paths: readonly string[]): Promise<readonly string[]> {
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
