import type { Page } from 'playwright-core';
import { settle } from './settle.ts';

/** Fills the first start in and opens one's own journal. */
export async function passFirstStart(page: Page): Promise<void> {
  await page.getByLabel('Name').fill('Ines');
  await page.getByText('Female', { exact: true }).click();
  await page.getByLabel('Year of birth').fill('1994');
  await page.getByLabel('Height').fill('170');
  await page.getByLabel('Weight today').fill('68.4');
  await page.getByText('I have read this, and I am an adult').click();
  await settle(page);
  await page.getByRole('button', { name: 'Open my journal' }).click();
  await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
}
