import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { loadAppFiles } from '../../src/server/app-files.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { createServer } from '../../src/server/create-server.ts';
import { listen, type Listening } from '../../src/server/listen.ts';

export const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const APP_FOLDER = join(import.meta.dirname, '../../dist/app');
const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** Headless, without a sandbox (tests may run as root), and without a call to anyone. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const PHONE = { width: 390, height: 844 } as const;
export const DESKTOP = { width: 1280, height: 900 } as const;

export interface OpenOptions {
  /** Address within the app: "/#/kitchen". */
  readonly path?: string;
  readonly viewport?: { readonly width: number; readonly height: number };
  /** The browser's clock stands at this local moment: "2027-03-01T14:10:00". */
  readonly at?: string;
  readonly zone?: string;
  readonly dark?: boolean;
  readonly reducedMotion?: boolean;
  /** One's own journal instead of the first start. */
  readonly journal?: 'own' | 'demo';
  /** Another tab of a device that is already open. */
  readonly device?: BrowserContext;
  /** What the page may put on the console although it is an error (a test that provokes one). */
  readonly expectErrors?: RegExp;
}

export interface OpenApp {
  readonly page: Page;
  readonly device: BrowserContext;
}

/** What a test file asks of the browser. */
export interface AppBench {
  open(options?: OpenOptions): Promise<OpenApp>;
  /** Where the app is served. */
  address(): string;
  /** Ends the tab's process at once, as a phone does with a tab in the background. The device stays. */
  kill(page: Page): Promise<void>;
  /** The same, made ready before a page stands still: one that does answers no new debugger. */
  killer(page: Page): Promise<() => Promise<void>>;
  browser(): Browser;
  /** The server stops answering, for tests of what works without it. */
  stopServer(): Promise<void>;
}

/**
 * Serves a built folder (the app, unless another is named), launches Chromium once a test file, and gives each test
 * pages of its own. A console error, an uncaught error or a request to anyone but this server fails the test.
 */
export function useBrowser(folder: () => string = () => APP_FOLDER): AppBench {
  let listening: Listening | undefined;
  let browser: Browser | undefined;
  let devices: BrowserContext[] = [];
  let faults: string[] = [];

  beforeAll(async () => {
    if (!existsSync(CHROMIUM))
      throw new Error(`There is no Chromium at ${CHROMIUM}; set CHROMIUM to its path.`);
    const files = loadAppFiles(folder());
    if (!files) throw new Error('There is no built app; run "npm run build".');
    const outcome = await listen(
      createServer({
        files,
        sync: { store: openSqliteStore(':memory:'), clockMs: () => performance.now(), nowMs: Date.now },
      }),
      0,
    );
    if (!outcome.ok) throw new Error(outcome.problem.message);
    listening = outcome.value;
    browser = await chromium.launch({ executablePath: CHROMIUM, headless: true, args: FLAGS });
  });

  afterEach(async () => {
    const found = faults;
    await Promise.all(devices.map((device) => device.close()));
    devices = [];
    faults = [];
    expect(found).toEqual([]);
  });

  afterAll(async () => {
    await browser?.close();
    await listening?.stop();
  });

  const bench: AppBench = {
    address: () => listening?.address ?? '',
    browser: () => running(browser),
    async open(options = {}) {
      const device = options.device ?? (await newDevice(running(browser), options));
      if (!devices.includes(device)) devices.push(device);
      const page = await device.newPage();
      watch(page, bench.address(), options.expectErrors, faults);
      await page.goto(new URL(options.path ?? '/', bench.address()).href);
      return { page, device };
    },
    kill: async (page) => (await bench.killer(page))(),
    async killer(page) {
      const session = await page.context().newCDPSession(page);
      return async () => {
        const gone = new Promise<void>((resolve) => page.once('crash', () => resolve()));
        void session.send('Page.crash').catch(() => undefined);
        await gone;
      };
    },
    async stopServer() {
      await listening?.stop();
      listening = undefined;
    },
  };
  return bench;
}

function running(browser: Browser | undefined): Browser {
  if (!browser) throw new Error('The browser is launched before the first test, not earlier.');
  return browser;
}

async function newDevice(browser: Browser, options: OpenOptions): Promise<BrowserContext> {
  const device = await browser.newContext({
    viewport: options.viewport ?? PHONE,
    hasTouch: (options.viewport ?? PHONE).width < 800,
    locale: 'en-GB',
    timezoneId: options.zone ?? 'Europe/Lisbon',
    colorScheme: options.dark ? 'dark' : 'light',
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
  });
  device.setDefaultTimeout(15_000);
  if (options.at !== undefined) await device.clock.setSystemTime(options.at);
  if (options.journal !== undefined) {
    const remember = `localStorage.getItem('stagewright/which') ?? localStorage.setItem('stagewright/which', '${options.journal}')`;
    await device.addInitScript(remember);
  }
  return device;
}

function watch(page: Page, address: string, expected: RegExp | undefined, faults: string[]): void {
  const note = (text: string): void => {
    if (!expected?.test(text)) faults.push(text);
  };
  page.on('pageerror', (fault) => note(`uncaught: ${fault.stack ?? fault.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') note(`console: ${message.text()} (${message.location().url})`);
  });
  page.on('request', (request) => {
    const local = /^(data|blob):/.test(request.url()) || request.url().startsWith(address);
    if (!local) note(`a request to ${request.url()}`);
  });
}

/**
 * What axe-core finds wrong, with `target-size` switched on, one line a place. `enhancedContrast` asks 7:1 of what the
 * selector picks.
 */
export async function axeFindings(
  page: Page,
  options: { enhancedContrast?: string } = {},
): Promise<string[]> {
  // Evaluated by the debugger, not added as a tag: the page's own policy stays as it is served.
  await page.evaluate(await readFile(AXE, 'utf8'));
  return page.evaluate(async (contrast) => {
    const axe = Reflect.get(globalThis, 'axe');
    const rules = { 'target-size': { enabled: true } };
    const whole = await axe.run(document, { rules });
    const strict = contrast
      ? await axe.run(contrast, { runOnly: ['color-contrast-enhanced'] })
      : { violations: [] };
    return [...whole.violations, ...strict.violations].flatMap(
      (violation: { id: string; help: string; nodes: { target: string[] }[] }) =>
        violation.nodes.map((node) => `${violation.id}: ${violation.help} at ${node.target.join(' ')}`),
    );
  }, options.enhancedContrast);
}

/** Everything that can be pressed and is smaller than asked for, measured; text links inside sentences are let off. */
export async function smallTargets(page: Page, leastPx = 48): Promise<string[]> {
  return page.evaluate((least) => {
    const pressable = 'button, a[href], input, select, textarea, summary, [role="button"], [tabindex="0"]';
    return [...document.querySelectorAll<HTMLElement>(pressable)]
      .filter((element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
      .filter((element) => !(element.tagName === 'A' && getComputedStyle(element).display === 'inline'))
      .map((element) => ({ element, box: (element.closest('label') ?? element).getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.height < least - 0.5 || box.width < least - 0.5))
      .map(({ element, box }) => {
        const name = element.getAttribute('aria-label') ?? element.textContent?.trim().slice(0, 40) ?? '';
        return `${element.tagName.toLowerCase()} "${name}" ${Math.round(box.width)} x ${Math.round(box.height)}`;
      });
  }, leastPx);
}

/** Whether the page can be scrolled sideways, which it never should. */
export async function scrollsSideways(page: Page): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
}
