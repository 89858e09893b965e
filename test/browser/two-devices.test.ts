import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 2600 };

async function toDevices(page: Page): Promise<void> {
  await page.goto(`${app.address()}#/journal/devices`);
  await page.getByRole('heading', { level: 1, name: 'Devices' }).waitFor();
  await settle(page);
}

async function inStep(page: Page): Promise<void> {
  await settle(page);
  await page.getByRole('button', { name: 'Bring in step now' }).click();
  await page.getByText(/^In step at/).waitFor();
}

async function weighIn(page: Page, kilograms: string): Promise<void> {
  await page.goto(`${app.address()}#/body/weigh`);
  await page.getByRole('textbox', { name: 'On the scale' }).fill(kilograms);
  await settle(page);
  await page.getByRole('button', { name: /^Keep|^Weigh/ }).click();
  await page.getByText(`Weighed in at ${kilograms} kg`).waitFor();
}

/** The whole journal as the file that leaves the device. */
async function copyOf(page: Page): Promise<string> {
  await page.goto(`${app.address()}#/journal/copies`);
  await settle(page);
  const leaving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a copy of the journal' }).click();
  return readFile(await (await leaving).path(), 'utf8');
}

describe('two devices', () => {
  it('[SYN-20] pair by the phrase, write apart without a connection, and come together', {
    timeout: 120_000,
  }, async () => {
    const one = await app.open({ journal: 'own', at: '2027-03-08T06:30:00', viewport: TALL });
    await passFirstStart(one.page);
    await toDevices(one.page);
    await one.page.getByText('Nothing leaves this device.').waitFor();
    await one.page.getByRole('button', { name: 'Make a key and begin' }).click();
    await one.page.getByText(/^In step at/).waitFor();
    await one.page.getByRole('button', { name: 'Show the phrase' }).click();
    const words = await one.page.locator('.key-words li').allTextContents();
    expect(words).toHaveLength(24);
    for (const viewport of [TALL, DESKTOP]) {
      await one.page.setViewportSize(viewport);
      expect(await axeFindings(one.page)).toEqual([]);
      expect(await smallTargets(one.page)).toEqual([]);
      expect(await scrollsSideways(one.page)).toBe(false);
    }

    const two = await app.open({
      journal: 'own',
      at: '2027-03-08T06:31:00',
      viewport: TALL,
      expectErrors: /403/,
    });
    await passFirstStart(two.page);
    await toDevices(two.page);
    await two.page.getByRole('textbox', { name: 'Phrase' }).fill(words.slice(0, 23).join(' '));
    await two.page.getByRole('button', { name: 'Join' }).click();
    await two.page.getByText('The phrase has 23 words; it must have 24.').first().waitFor();
    await settle(two.page);
    await two.page.getByRole('textbox', { name: 'Phrase' }).fill(words.join(' '));
    await two.page.getByRole('button', { name: 'Join' }).click();
    await two.page.getByText(/^In step at/).waitFor();

    await one.device.setOffline(true);
    await two.device.setOffline(true);
    await weighIn(one.page, '67.9');
    await weighIn(two.page, '68.1');
    await toDevices(one.page);
    await one.page.getByRole('button', { name: 'Bring in step now' }).click();
    await one.page.getByText('The server was not reached.').waitFor();
    await one.device.setOffline(false);
    await two.device.setOffline(false);
    await inStep(one.page);
    await toDevices(two.page);
    await inStep(two.page);
    await toDevices(one.page);
    await inStep(one.page);
    const here = await copyOf(one.page);
    expect(here).toContain('67.9');
    expect(here).toContain('68.1');
    expect(await copyOf(two.page)).toBe(here);

    // A new key: the other device hears that it is out, and comes in again by the new phrase.
    await toDevices(one.page);
    await one.page.getByRole('button', { name: 'Make a new key' }).click();
    await settle(one.page);
    await inStep(one.page);
    await toDevices(two.page);
    await two.page.getByRole('button', { name: 'Bring in step now' }).click();
    await two.page.getByText(/the key was changed on another device/).waitFor();
    await settle(two.page);
    await two.page.getByRole('button', { name: 'Stop on this device' }).click();
    await one.page.getByRole('button', { name: 'Show the phrase' }).click();
    const next = await one.page.locator('.key-words li').allTextContents();
    expect(next).not.toEqual(words);
    await settle(two.page);
    await two.page.getByRole('textbox', { name: 'Phrase' }).fill(next.join(' '));
    await two.page.getByRole('button', { name: 'Join' }).click();
    await two.page.getByText(/^In step at/).waitFor();
    expect(await copyOf(two.page)).toBe(here);
  });

  it('[SYN-20] the invented athlete stays at home', async () => {
    const { page } = await app.open({ path: '/#/journal/devices' });
    await page.getByText('The invented athlete stays on this device').waitFor();
  });
});
