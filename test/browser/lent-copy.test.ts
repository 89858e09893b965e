import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 2600 };

async function sound(page: Page): Promise<void> {
  for (const viewport of [TALL, DESKTOP]) {
    await page.setViewportSize(viewport);
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  }
  await page.setViewportSize(TALL);
}

/** Lends the body, without the rest, and answers the words that open it. */
async function lendBody(page: Page): Promise<string> {
  await page.goto(`${app.address()}#/journal/devices`);
  await settle(page);
  await page.getByRole('button', { name: 'Make a key and begin' }).click();
  await page.getByText(/^In step at/).waitFor();
  await page.goto(`${app.address()}#/journal/lend`);
  await settle(page);
  await page.getByRole('button', { name: 'Lend it' }).click();
  await page.getByText('Nobody is named.').first().waitFor();
  await settle(page);
  await page.getByRole('textbox', { name: 'For' }).fill('Coach Ines');
  for (const part of ['Day and Kitchen', 'Gym', 'Course'])
    await page.getByRole('checkbox', { name: part }).uncheck();
  await sound(page);
  await page.getByRole('button', { name: 'Lend it' }).click();
  await page.getByRole('heading', { level: 1, name: 'For Coach Ines' }).waitFor();
  await page.getByText(/^On the server as of/).waitFor();
  await settle(page);
  await page.getByRole('button', { name: 'Show the phrase' }).click();
  await page.locator('.key-words li').nth(17).waitFor();
  await sound(page);
  return (await page.locator('.key-words li').allTextContents()).join(' ');
}

describe('a lent copy', () => {
  it('[SYN-41] is read on the coach’s device, changes nothing there, follows the journal, and closes when taken back', {
    timeout: 120_000,
  }, async () => {
    const athlete = await app.open({ journal: 'own', at: '2027-03-08T06:30:00', viewport: TALL });
    await passFirstStart(athlete.page);
    const phrase = await lendBody(athlete.page);
    expect(phrase.split(' ')).toHaveLength(18);

    const coach = await app.open({
      path: '/#/journal/lent',
      at: '2027-03-08T06:40:00',
      viewport: TALL,
      expectErrors: /403/,
    });
    const { page } = coach;
    await page.getByRole('heading', { level: 1, name: 'Lent copies' }).waitFor();
    await page
      .getByRole('textbox', { name: 'Phrase of the copy' })
      .fill(phrase.split(' ').slice(1).join(' '));
    await settle(page);
    await page.getByRole('button', { name: 'Read the copy' }).click();
    await page.getByText('The phrase has 17 words; it must have 18.').first().waitFor();
    await page.getByRole('textbox', { name: 'Phrase of the copy' }).fill(phrase);
    await settle(page);
    await page.getByRole('button', { name: 'Read the copy' }).click();
    await page.getByText(/journal, lent to read until/).waitFor();
    await page.getByRole('heading', { level: 1, name: 'Body' }).waitFor();
    await sound(page);

    // Nothing can be written in it, and what was not lent is not there.
    await page.goto(`${app.address()}#/body/weigh`);
    await page.getByRole('textbox', { name: 'On the scale' }).fill('70');
    await settle(page);
    await page.getByRole('button', { name: /^Keep|^Weigh/ }).click();
    await page.getByText('nothing can be written in it').first().waitFor();
    await page.goto(`${app.address()}#/course`);
    await page.getByText('This part of the journal stays with its owner').waitFor();
    await page.goto(`${app.address()}#/journal`);
    await page.getByText('3 entries').waitFor();

    // Taken back: it closes by itself when the coach looks again, and the phrase opens nothing more.
    await athlete.page.getByRole('button', { name: 'Take it back' }).click();
    await athlete.page
      .getByText(/taken back/)
      .first()
      .waitFor();
    await athlete.page.getByRole('heading', { level: 1, name: 'Lent copies' }).waitFor();
    await athlete.page.goto(`${app.address()}#/journal/devices`);
    await settle(athlete.page);
    await athlete.page.getByRole('button', { name: 'Bring in step now' }).click();
    await athlete.page.getByText(/^In step at/).waitFor();
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.getByText(/journal, lent to read until/).waitFor({ state: 'detached' });
    await page.goto(`${app.address()}#/journal/lent`);
    await page.getByText('This copy is not lent any more').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Read', exact: true }).click();
    await page.getByText('This copy is not lent any more').nth(1).waitFor();
    await page.getByRole('button', { name: 'Forget' }).click();
    expect(await page.getByRole('button', { name: 'Forget' }).count()).toBe(0);
  });
});
