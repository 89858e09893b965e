import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { axeFindings, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();

async function addIngredient(page: Page, typed: string, name: RegExp, grams: string): Promise<void> {
  await page.getByRole('combobox', { name: 'Add an ingredient' }).fill(typed);
  await page.getByRole('option', { name }).first().click();
  await page.getByRole('textbox', { name }).last().fill(grams);
}

/** 680 g of minced beef and 150 g of onion to 522 g cooked: common practice, no source. */
async function cookMince(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Kitchen' }).click();
  await page.getByRole('link', { name: 'Cook a batch' }).click();
  await addIngredient(page, 'beef 90 raw', /beef 90\/10, raw/i, '680');
  await addIngredient(page, 'raw onoin', /^onion, raw/i, '150');
  await page.getByLabel('Container, empty').fill('1200');
  await page.getByLabel('Container, full').fill('1722');
}

/** As wide as a phone and so tall that the fixed bars cover nothing. */
const TALL = { width: 390, height: 2600 };

describe('a batch from raw to labelled portions', () => {
  it('[BAT-10] weighs, divides by three, keeps, labels, and lowers the stock when eaten', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-07T18:00:00' });
    await passFirstStart(page);
    await cookMince(page);
    await page.getByText('Raw in portion 1: 226.7 g').waitFor();
    await page.getByText('62.9').first().waitFor();
    expect(await page.getByRole('cell', { name: '174', exact: true }).count()).toBe(3);
    await settle(page);
    await page.getByRole('button', { name: 'Keep the batch' }).click();
    await page.getByText('portion 3').first().waitFor();
    await page.getByText('Use by Thursday 11 March 18:00').first().waitFor();
    await page.getByRole('link', { name: 'Kitchen' }).click();
    await page.getByText('3 portions, use by').waitFor();
    await page.getByText('522 g').first().waitFor();
  });

  it('[BAT-12] what cannot be is refused beside what was typed, and nothing is lost', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-07T18:00:00' });
    await passFirstStart(page);
    await cookMince(page);
    await page.getByLabel('Container, full').fill('1100');
    await page.getByText('nothing is left for the food').first().waitFor();
    await page.getByLabel('Container, full').fill('2900');
    await page
      .getByText(/1700 g cooked cannot come from 830 g raw/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Keep the batch' }).click();
    expect(await page.getByLabel('Container, empty').inputValue()).toBe('1200');
    await page.reload();
    expect(await page.getByLabel('Container, full').inputValue()).toBe('2900');
  });

  it('[BAT-60] a portion frozen, thawed and thrown away, each undone with one tap', async () => {
    const { page } = await app.open({ path: '/#/kitchen/batch/turkey-pan-4' });
    await page.getByRole('button', { name: 'Freeze' }).first().click();
    await page.getByText('Portion 5: in the freezer').waitFor();
    await page.getByRole('button', { name: 'Thaw' }).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Thaw' }).waitFor({ state: 'detached' });
    await settle(page);
    await page.getByRole('button', { name: 'Bin' }).first().click();
    await page.getByText('Portion 5: thrown away').waitFor();
    expect(await page.getByRole('button', { name: 'Bin' }).count()).toBe(1);
  });

  it.each([
    '/#/kitchen',
    '/#/kitchen/cook',
    '/#/kitchen/batch/turkey-pan-4',
    '/#/kitchen/label',
    '/#/kitchen/buy',
    '/#/kitchen/foods',
    '/#/kitchen/containers',
  ])('[LOOK-21] %s passes axe, with large targets and no sideways scroll', async (path) => {
    const { page } = await app.open({ path, viewport: TALL });
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  });
});
