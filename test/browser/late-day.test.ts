import { describe, expect, it } from 'vitest';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 3200 };

describe('a day that runs late', () => {
  it('[RUN-09] one tap plans the rest of the day, says what changed, and undo takes it back', async () => {
    const { page } = await app.open();
    await page
      .getByText(/6 h \d+ min late|5 h \d+ min late/)
      .first()
      .waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Running late: plan again from now' }).click();
    await page.getByText('What changed').waitFor();
    await page.getByText(/meals? now instead of|fits? now instead of/).waitFor();
    expect(await page.getByText(/ min late/).count()).toBe(0);
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page
      .getByText(/h \d+ min late/)
      .first()
      .waitFor();
  });

  it('[RUN-10] the next meal is weighed out with a running total, logged with one tap, and the stock falls', async () => {
    const { page } = await app.open();
    await settle(page);
    await page.getByRole('button', { name: 'Running late: plan again from now' }).click();
    await page.getByText('What changed').waitFor();
    await page.getByRole('link', { name: 'Weigh out the next meal' }).click();
    const next = page.getByRole('button', { name: /^In the bowl/ });
    await next.waitFor();
    for (let item = 0; item < 6 && (await next.count()) > 0; item += 1) {
      await settle(page);
      await next.click();
    }
    await page.getByText('Everything is in the bowl').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Log this meal' }).click();
    await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
    await page.getByText('Eaten', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Journal' }).click();
    await page.getByText('Meal eaten').first().waitFor();
  });

  it('[RUN-10] a tab killed in the middle of weighing goes on where it stood', async () => {
    const { page, device } = await app.open();
    await settle(page);
    await page.getByRole('button', { name: 'Running late: plan again from now' }).click();
    await page.getByText('What changed').waitFor();
    await page.getByRole('link', { name: 'Weigh out the next meal' }).click();
    await settle(page);
    await page.getByRole('button', { name: /^In the bowl/ }).click();
    await page.getByText(/2 of \d/).waitFor();
    const address = new URL(page.url());
    await app.kill(page);
    const { page: again } = await app.open({ device, path: `${address.pathname}${address.hash}` });
    await again.getByText(/2 of \d/).waitFor();
  });

  it('[LOOK-19] the day is planned and opened by keyboard alone', async () => {
    const { page } = await app.open({ viewport: DESKTOP });
    await settle(page);
    const button = page.getByRole('button', { name: 'Running late: plan again from now' });
    await button.focus();
    await page.keyboard.press('Enter');
    await page.getByText('What changed').waitFor();
  });

  it.each([
    ['/#/day', {}],
    ['/#/day', { dark: true }],
    ['/#/day/eat', {}],
    ['/#/day/shape', {}],
    ['/#/day/targets', {}],
    ['/#/day/wishes', {}],
    ['/#/day/drink', {}],
  ])('[LOOK-21] %s passes axe, with large targets and no sideways scroll', async (path, look) => {
    const { page } = await app.open({ path, viewport: TALL, ...look });
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  });
});
