import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { loadAppFiles } from '../../src/server/app-files.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen } from '../../src/server/listen.ts';
import { CHROMIUM, DESKTOP, FLAGS, PHONE } from './harness.ts';

/** The README's pictures, taken anew from the built app and its demonstration: `npm run pictures`. */
const PICTURES = join(import.meta.dirname, '../../docs/pictures');
const FRAMES = [
  ['day-phone', PHONE, 'light'],
  ['day-desktop', DESKTOP, 'dark'],
] as const;

const files = loadAppFiles(join(import.meta.dirname, '../../dist/app'));
if (!files) throw new Error('There is no built app; run "npm run build".');
const listening = await listen(createServer({ files }), 0);
if (!listening.ok) throw new Error(listening.problem.message);
mkdirSync(PICTURES, { recursive: true });
const browser = await chromium.launch({ executablePath: CHROMIUM, args: [...FLAGS] });
for (const [name, viewport, colorScheme] of FRAMES) {
  const device = await browser.newContext({ viewport, colorScheme, deviceScaleFactor: 1.5, locale: 'en-GB' });
  const page = await device.newPage();
  await page.goto(listening.value.address);
  await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
  const plan = page.getByRole('button', { name: /^(Plan the day|Running late)/ });
  if (await plan.isVisible()) await plan.click();
  await page.waitForTimeout(2500);
  for (const name of ['Seen', 'Close', 'Dismiss']) {
    const done = page.getByRole('button', { name });
    if (await done.first().isVisible()) await done.first().click();
  }
  await page.waitForTimeout(400);
  await page.evaluate(() => globalThis.scrollTo(0, 0));
  await page.screenshot({ path: join(PICTURES, `${name}.png`) });
  await device.close();
}
await browser.close();
await listening.value.stop();
