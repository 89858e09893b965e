import type { Page } from 'playwright-core';

/**
 * A recording button takes no press in a screen's first 300 ms (a finger still in the air) and one a second after that. A person
 * is never that fast; a test waits.
 */
export async function settle(page: Page): Promise<void> {
  await page.waitForTimeout(1100);
}
