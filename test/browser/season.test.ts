import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();

/** As wide as a phone and so tall that the fixed bars cover nothing. */
const TALL = { width: 390, height: 4200 };
const SCREENS = [
  'course/dates',
  'course/dates/new',
  'course/last-week',
  'course/rehearsal',
  'course/show-day',
  'course/afterwards',
];

/** The demonstration with its show on another date, so that what comes near a show is near. */
async function openNear(date: string): Promise<Page> {
  const { page } = await app.open({ path: '/#/course/show', viewport: TALL });
  await page.getByLabel('Date').fill(date);
  await settle(page);
  await page.getByRole('button', { name: 'Keep the show' }).click();
  await page.getByRole('heading', { level: 1, name: 'Course' }).waitFor();
  return page;
}

async function visit(page: Page, path: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/${path}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

describe('the season around a show', () => {
  it('[CRS-28] the last week is adopted, Day plans from its targets, and one undo takes all of it back', async () => {
    const page = await openNear('2027-03-06');
    await visit(page, 'course/last-week');
    await page.getByText('Saturday 6 March, show day').waitFor();
    await page.getByText(/The scale will stand .* higher on 6 March/).waitFor();
    await page.getByText('Stopping or cutting water').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Adopt this last week' }).click();
    await page.getByText('adopted, loading from 4 March').waitFor();
    await visit(page, 'day');
    await page.getByText('Little fibre today, at most 15 g.').waitFor();
    const carbohydrate = page.getByRole('button', { name: /^Carbohydrate \d/ });
    expect(Number(/\d+/.exec((await carbohydrate.textContent()) ?? '')?.[0])).toBeGreaterThan(450);
    // No hard training while loading.
    expect(await page.getByText('80 min, until 15:50').count()).toBe(0);
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Little fibre today').waitFor({ state: 'detached' });
    await page.getByText('80 min, until 15:50').waitFor();
  });

  it('[CRS-30] the show day is timed, its meals weighed out, and a late stage is one tap', async () => {
    const page = await openNear('2027-03-04');
    await visit(page, 'course/show-day');
    await page.getByLabel('Called to the stage').fill('1730');
    await page.getByLabel('Check-in').fill('0930');
    await settle(page);
    await page.getByRole('button', { name: 'Keep the times' }).click();
    await page.getByRole('heading', { level: 1, name: 'Show day' }).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Plan the small meals to the gram' }).click();
    await page
      .getByText(/^\d+ g .+, \d+ g /)
      .first()
      .waitFor();
    const line = (title: string) => page.getByRole('listitem').filter({ hasText: title });
    await line('Last small meal').getByText('16:15', { exact: true }).waitFor();
    await settle(page);
    await page.getByRole('button', { name: '30 min later' }).click();
    await page.getByText('30 min later than first said').waitFor();
    await line('Last small meal').getByText('16:45', { exact: true }).waitFor();
    await line('Pump-up').getByText('17:35', { exact: true }).waitFor();
    await visit(page, 'day');
    await page.getByText('Thursday 4 March, show day').waitFor();
    await line('Pump-up').getByText('17:35', { exact: true }).waitFor();
  });

  it('[CRS-32] the way back is adopted in steps, and a physician is dated', async () => {
    const page = await openNear('2027-03-04');
    await visit(page, 'course/afterwards');
    await page.getByText(/The scale may rise by about/).waitFor();
    await page.getByText('In steps').click();
    await page.getByText(/Intake rises by 150 kcal a week/).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Adopt this way back' }).click();
    await page.getByText('adopted, in steps').waitFor();
    await page.getByRole('link', { name: 'Note how it feels' }).waitFor();
    await visit(page, 'course/dates');
    await page.getByText('Blood panel, and a physician').waitFor();
  });

  it('[CRS-27] the usual dates are one tap, and leave as a calendar file', async () => {
    const { page } = await app.open({ path: '/#/course/dates', viewport: TALL });
    await page.getByText('Thursday 4 March, 19:15, 20 min').waitFor();
    await page.getByText('Saturday 3 April, 08:00').waitFor();
    await page.getByRole('button', { name: 'Add: Travel to the show' }).click();
    await page.getByText('Friday 30 April, 10:00').waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save for a calendar' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('stagewright-2027-03-04.ics');
    const text = await readFile(await file.path(), 'utf8');
    expect(text.match(/SUMMARY:Posing practice/g)).toHaveLength(9);
    expect(text).toContain('SUMMARY:Travel to the show');
  });

  it('[LOOK-21] every screen of it passes axe, on a phone and on a desk in the dark', async () => {
    const { page } = await app.open({ path: '/#/course', viewport: TALL });
    await page.getByRole('heading', { name: 'On course' }).waitFor();
    for (const [viewport, colorScheme] of [
      [TALL, 'light'],
      [DESKTOP, 'dark'],
    ] as const) {
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme });
      for (const path of SCREENS) {
        await visit(page, path);
        await page.waitForTimeout(300);
        expect([path, ...(await axeFindings(page))]).toEqual([path]);
        expect(await smallTargets(page)).toEqual([]);
        expect(await scrollsSideways(page)).toBe(false);
      }
    }
  });
});
