import type { Page } from 'playwright-core';

/** Fills the first start in and opens one's own journal. */
export async function passFirstStart(page: Page): Promise<void> {
  await page.getByLabel('Name').fill('Ines');
  await page.getByText('Female', { exact: true }).click();
  await page.getByLabel('Year of birth').fill('1994');
  await page.getByLabel('Height').fill('170');
  await page.getByLabel('Weight today').fill('68.4');
  await page.getByText('I have read this, and I am an adult').click();
  // A press within the first moments of a screen is taken for a finger still in the air.
  await page.waitForTimeout(400);
  await page.getByRole('button', { name: 'Open my journal' }).click();
  await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
}
