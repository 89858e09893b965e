import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Browser } from 'playwright-core';
import { loadAppFiles } from '../src/server/app-files.ts';
import { createServer } from '../src/server/create-server.ts';
import { listen } from '../src/server/listen.ts';

const APP_FOLDER = join(import.meta.dirname, '../dist/app');
const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const RUNS = 7;
/** "Phone": the processor slowed four times, as page auditors do. */
const SLOWED = 4;

/** What the app weighs on the way, and how long a slow phone takes to its first usable screen. */
export async function benchApp(): Promise<void> {
  console.log('\nApp');
  const files = loadAppFiles(APP_FOLDER);
  if (!files) {
    console.log('  not built: run "npm run build" first');
    return;
  }
  printSizes();
  if (!existsSync(CHROMIUM)) {
    console.log(`  no Chromium at ${CHROMIUM}: times are left out`);
    return;
  }
  const listening = await listen(createServer({ files }), 0);
  if (!listening.ok) throw new Error(listening.problem.message);
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: ['--no-sandbox', '--disable-gpu'],
  });
  console.log(
    `  time to the first usable screen, processor slowed ${SLOWED} x, median of ${RUNS} (least to most), ms`,
  );
  await printTimes('first visit, demo built and kept', browser, listening.value.address, false);
  await printTimes('later visit, from the device', browser, listening.value.address, true);
  await browser.close();
  await listening.value.stop();
}

function printSizes(): void {
  const sizes = new Map<string, { raw: number; gzip: number }>();
  for (const item of readdirSync(APP_FOLDER, { recursive: true, withFileTypes: true })) {
    if (!item.isFile()) continue;
    const bytes = readFileSync(join(item.parentPath, item.name));
    const type = extname(item.name).slice(1);
    const sum = sizes.get(type) ?? { raw: 0, gzip: 0 };
    const packed = type === 'woff2' || type === 'png' ? bytes.length : gzipSync(bytes, { level: 9 }).length;
    sizes.set(type, { raw: sum.raw + bytes.length, gzip: sum.gzip + packed });
  }
  const kilobytes = (bytes: number) => (bytes / 1000).toFixed(1).padStart(8);
  console.log('  on the way          raw kB  gzip kB');
  for (const [type, { raw, gzip }] of [...sizes].sort(([, a], [, b]) => b.gzip - a.gzip)) {
    console.log(`    ${type.padEnd(14)} ${kilobytes(raw)} ${kilobytes(gzip)}`);
  }
  const all = [...sizes.values()].reduce((sum, { raw, gzip }) => ({
    raw: sum.raw + raw,
    gzip: sum.gzip + gzip,
  }));
  console.log(`    ${'all'.padEnd(14)} ${kilobytes(all.raw)} ${kilobytes(all.gzip)}`);
}

async function printTimes(says: string, browser: Browser, address: string, again: boolean): Promise<void> {
  const times: number[] = [];
  for (let run = 0; run < RUNS; run++) times.push(await firstScreenMs(browser, address, again));
  times.sort((a, b) => a - b);
  const [least, median, most] = [times[0], times[Math.floor(RUNS / 2)], times.at(-1)].map((ms) =>
    ms?.toFixed(0),
  );
  console.log(`    ${says.padEnd(36)} ${median} (${least} to ${most})`);
}

/** From asking for the page until its main heading stands and a button can be pressed. */
async function firstScreenMs(browser: Browser, address: string, again: boolean): Promise<number> {
  const device = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await device.newPage();
  const usable = () =>
    page.waitForFunction(
      () =>
        document.querySelector('main h1') !== null && document.querySelector('main button, main a') !== null,
    );
  if (again) {
    await page.goto(address);
    await usable();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  }
  const session = await device.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const before = performance.now();
  await page.goto(address, { waitUntil: 'commit' });
  await usable();
  const ms = performance.now() - before;
  await device.close();
  return ms;
}
