import { join } from 'node:path';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { SHELVES } from '../../src/app/gallery/examples.ts';
import { axeFindings, DESKTOP, PHONE, scrollsSideways, smallTargets, useBrowser } from './harness.ts';

const ROOT = join(import.meta.dirname, '../..');

beforeAll(async () => {
  await build({ configFile: join(ROOT, 'vite.config.ts'), mode: 'gallery', logLevel: 'error' });
});

const bench = useBrowser(() => join(ROOT, '.cache/gallery'));

/** Tall enough that nothing is under the steel rule or the action bar while it is measured. */
const tall = (viewport: { width: number }): { width: number; height: number } => ({
  width: viewport.width,
  height: 6000,
});
const shelf = (path: string): string => `/#/${path}`;

describe('every example of every part', () => {
  const cases = SHELVES.flatMap(({ path, title }) => [
    { path, title, look: 'phone by day', viewport: tall(PHONE), dark: false },
    { path, title, look: 'phone by night', viewport: tall(PHONE), dark: true },
    { path, title, look: 'desk by day', viewport: tall(DESKTOP), dark: false },
  ]);

  it.each(cases)('[LOOK-06] [LOOK-07] $title, $look: axe, targets, no sideways scroll', async (seen) => {
    const { page } = await bench.open({ path: shelf(seen.path), viewport: seen.viewport, dark: seen.dark });
    await page.locator('main *').first().waitFor();
    expect(await axeFindings(page, { enhancedContrast: 'main' })).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  });

  it.each(SHELVES)('[LOOK-06] $title: fits 320 px, and text at twice its size', async ({ path }) => {
    const { page } = await bench.open({ path: shelf(path), viewport: tall({ width: 320 }) });
    await page.locator('main *').first().waitFor();
    expect(await scrollsSideways(page)).toBe(false);
    await page.setViewportSize(tall(PHONE));
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    expect(await scrollsSideways(page)).toBe(false);
  });
});

describe('by hand and keyboard', () => {
  it('[LOOK-06] busy hands get 64 px', async () => {
    const { page } = await bench.open({ path: shelf('buttons') });
    const box = await page.getByRole('button', { name: 'Set done' }).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(64);
  });

  it('[LOOK-18] a number opens its reasons, Escape puts them away, the focus comes back', async () => {
    const { page } = await bench.open({ path: shelf('figures') });
    const number = page.getByRole('button', { name: /Maintenance/ });
    await number.press('Enter');
    const reasons = page.getByRole('dialog', { name: 'Protein of meal 3' });
    await reasons.waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await reasons.waitFor({ state: 'hidden' });
    expect(await number.evaluate((element) => element === document.activeElement)).toBe(true);
  });

  it('[LOOK-18] on the desk the reasons stand in the margin and the page stays in use', async () => {
    const { page } = await bench.open({ path: shelf('figures'), viewport: DESKTOP });
    await page.getByRole('button', { name: /Maintenance/ }).click();
    const reasons = page.getByRole('dialog', { name: 'Protein of meal 3' });
    await reasons.waitFor();
    const margin = await reasons.boundingBox();
    const main = await page.locator('.columns').boundingBox();
    expect((main?.x ?? 0) + (main?.width ?? 0)).toBeLessThanOrEqual(margin?.x ?? 0);
    await page.keyboard.press('Escape');
    await reasons.waitFor({ state: 'hidden' });
  });

  it('[LOOK-09] a chart is read point by point with the arrow keys', async () => {
    const { page } = await bench.open({ path: shelf('charts') });
    const chart = page.getByRole('group', { name: /^Body mass: read point by point/ });
    await chart.press('End');
    const readOut = page.locator('.plot-values').first();
    await expect.poll(() => readOut.textContent()).toMatch(/^Mon 12 Apr/);
    await chart.press('ArrowLeft');
    await expect.poll(() => readOut.textContent()).toMatch(/^Sun 11 Apr Forecast [\d.]+ kg/);
  });

  it('[LOOK-19] search results are chosen with arrow keys and Enter', async () => {
    const { page } = await bench.open({ path: shelf('fields') });
    const food = page.getByRole('combobox', { name: 'Food', exact: true });
    await food.fill('cooked');
    await food.press('ArrowDown');
    await food.press('ArrowDown');
    await food.press('Enter');
    expect(await food.inputValue()).toBe('Chicken breast, cooked');
  });

  it('[LOOK-02] what was typed stays, and the remedy comes on leaving the field', async () => {
    const { page } = await bench.open({ path: shelf('fields') });
    const weight = page.getByRole('textbox', { name: 'Raw weight' });
    await weight.fill('1,250');
    await weight.press('Tab');
    expect(await weight.inputValue()).toBe('1,250');
    await page.getByText('For the thousands type 1250').waitFor();
    await weight.fill('712');
    await page.getByText('For the thousands type 1250').waitFor({ state: 'detached' });
  });

  it('[LOOK-19] day and night are chosen by hand and remembered', async () => {
    const { page } = await bench.open({ path: shelf('frame') });
    await page.getByRole('radio', { name: 'Night' }).check();
    const ground = (): Promise<string> =>
      page.evaluate(() => getComputedStyle(document.documentElement).colorScheme);
    expect(await ground()).toBe('dark');
    await page.reload();
    expect(await ground()).toBe('dark');
    await page.getByRole('radio', { name: 'As the device' }).check();
    expect(await ground()).toBe('light');
  });
});

describe('other lights', () => {
  it('[LOOK-08] with forced colours every drawing still has strokes that differ from their ground', async () => {
    const { page } = await bench.open({ path: shelf('gauges'), viewport: tall(PHONE) });
    await page.emulateMedia({ forcedColors: 'active' });
    const same = await page.evaluate(() =>
      [
        '.level-vial',
        '.level-bubble',
        '.plumb-bob',
        '.plumb-scale',
        '.time-rule-tick',
        '.time-mark-next',
      ].filter((name) => {
        const element = document.querySelector(name);
        if (!element) return true;
        const { fill, stroke } = getComputedStyle(element);
        const ground = getComputedStyle(document.body).backgroundColor;
        return [fill, stroke].every((paint) => paint === 'none' || paint === ground);
      }),
    );
    expect(same).toEqual([]);
  });

  it('[LOOK-14] on paper a sheet stands alone, black on white, on one page, without controls', async () => {
    const { page } = await bench.open({ path: shelf('print'), dark: true });
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button', { name: 'Print the sheet' }).isVisible()).toBe(false);
    expect(await page.getByRole('navigation').isVisible()).toBe(false);
    const title = page.getByRole('heading', { name: 'Beef and onions' });
    expect(await title.evaluate((element) => getComputedStyle(element).color)).toBe('rgb(0, 0, 0)');
    const paper = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect(paper.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  });
});
