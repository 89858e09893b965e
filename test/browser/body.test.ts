import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { useBrowser } from './harness.ts';
import { everyScreenIsSound } from './screen-faults.ts';
import { settle } from './settle.ts';

const app = useBrowser();

/** As wide as a phone and so tall that the fixed bars cover nothing. */
const TALL = { width: 390, height: 2600 };
const SCREENS = [
  'body',
  'body/weigh',
  'body/folds',
  'body/tape',
  'body/photos',
  'body/fat',
  'body/intake',
  'body/cycle',
] as const;

describe('the body against the scale', () => {
  it('[RUN-20] the demonstration shows mass, fat and maintenance, each with its spread and its reasons', async () => {
    const { page } = await app.open({ path: '/#/body', viewport: TALL });
    const fat = page.getByRole('button', { name: /^Fat .*kg/ });
    await fat.waitFor();
    expect(await fat.textContent()).toMatch(/± \d/);
    await fat.click();
    await page.getByText('9 times of 10 it is within').waitFor();
    await page
      .getByText(/Hall KD/)
      .first()
      .waitFor();
  });

  it('[RUN-23] the last move is shared out, and each part says why', async () => {
    const { page } = await app.open({ path: '/#/body', viewport: TALL });
    await page.getByRole('button', { name: /^Salt/ }).click();
    await page.getByText('The shares of one morning are a best guess').waitFor();
  });

  it('[EST-60] weighed in with one thumb; pounds typed as kilograms are asked about', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-08T06:30:00' });
    await passFirstStart(page);
    await page.getByRole('link', { name: 'Body' }).click();
    await page.getByText('68.4 kg this morning').waitFor();
    await page.getByText('mostly what is known of anyone of your size').waitFor();
    await page.getByRole('link', { name: 'Weigh in again' }).click();
    await page.getByRole('textbox', { name: 'On the scale' }).fill('150.8');
    await page.getByText('Which unit was that?').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'I meant 68.4 kg' }).click();
    await page.getByText('Weighed in at 68.4 kg').waitFor();
  });

  it('[RUN-24] a day that was not logged is asked: a fast, or not logged?', async () => {
    const { page, device } = await app.open({ journal: 'own', at: '2027-03-08T06:30:00' });
    await passFirstStart(page);
    await device.clock.setSystemTime('2027-03-09T06:30:00');
    await page.goto(`${app.address()}#/body`);
    await page.reload();
    await page.getByRole('link', { name: /Food of Monday 8 March/ }).click();
    await settle(page);
    await page.getByRole('button', { name: 'Keep this day' }).click();
    await page.getByText('It is not said yet how the day was').first().waitFor();
    await page.getByRole('radio', { name: /^Not logged/ }).check();
    await settle(page);
    await page.getByRole('button', { name: 'Keep this day' }).click();
    await page.getByRole('heading', { level: 1, name: 'Body' }).waitFor();
    expect(await page.getByText('To settle').count()).toBe(0);
  });

  it('[RUN-28] a body fat of 3 % is asked back, 80 % is refused beside the field, and nothing typed is lost', async () => {
    const { page } = await app.open({ path: '/#/body/fat', viewport: TALL });
    const field = page.getByRole('textbox', { name: 'Body fat' });
    await field.fill('3');
    await page.getByText('Is that so?').waitFor();
    expect(await page.getByRole('button', { name: 'Keep this reading' }).isDisabled()).toBe(true);
    await field.fill('80');
    await field.blur();
    await page
      .getByText(/Body fat.*70/)
      .first()
      .waitFor();
    expect(await field.inputValue()).toBe('80');
    await field.fill('24.5');
    await page.reload();
    expect(await field.inputValue()).toBe('24.5');
  });

  it('[RUN-22] folds say at once what they come to', async () => {
    const { page } = await app.open({ path: '/#/body/folds', viewport: TALL });
    for (const [k, mm] of [9, 11, 17, 13, 16, 12, 24].entries())
      await page.getByRole('textbox').nth(k).fill(String(mm));
    await page.getByText('Body fat by seven folds').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Keep these folds' }).click();
    await page.getByText('Skinfolds kept').waitFor();
  });
});

/** A picture of a standing figure, its crown and soles at shares of the height, drawn by the browser itself. */
async function figurePicture(
  page: Page,
  size: { width: number; height: number },
  crown: number,
  soles: number,
) {
  const address = await page.evaluate(
    ([width, height, from, until]) => {
      const sheet = document.createElement('canvas');
      sheet.width = width;
      sheet.height = height;
      const pen = sheet.getContext('2d');
      if (!pen) throw new Error('no canvas');
      pen.fillStyle = 'white';
      pen.fillRect(0, 0, width, height);
      pen.fillStyle = 'black';
      pen.fillRect(width * 0.3, height * from, width * 0.4, height * (until - from));
      return sheet.toDataURL('image/png');
    },
    [size.width, size.height, crown, soles] as const,
  );
  return {
    name: 'front.png',
    mimeType: 'image/png',
    buffer: Buffer.from(address.slice(address.indexOf(',') + 1), 'base64'),
  };
}

async function keepAligned(page: Page, which: number, crown: number, soles: number): Promise<void> {
  const one = page.locator('.photo-one').nth(which);
  await one.getByRole('button', { name: 'Align' }).click();
  await one.getByRole('textbox', { name: 'Crown, from the top' }).fill(String(100 * crown));
  await one.getByRole('textbox', { name: 'Soles, from the top' }).fill(String(100 * soles));
  await settle(page);
  await one.getByRole('button', { name: 'Keep' }).click();
  await one.getByRole('button', { name: 'Align' }).waitFor();
}

describe('photographs', () => {
  it('[RUN-30] two pictures taken at different distances stand side by side with the body at one height', async () => {
    const { page, device } = await app.open({ journal: 'own', at: '2027-03-08T06:30:00' });
    await passFirstStart(page);
    const add = async (crown: number, soles: number, size: { width: number; height: number }) => {
      await page.goto(`${app.address()}#/body/photos`);
      await page.getByLabel('Add a photograph').setInputFiles(await figurePicture(page, size, crown, soles));
      await page.getByText('Photograph kept on this device').waitFor();
    };
    await add(0.1, 0.9, { width: 300, height: 400 });
    await device.clock.setSystemTime('2027-03-22T06:30:00');
    await page.reload();
    await add(0.3, 0.8, { width: 600, height: 900 });
    await keepAligned(page, 0, 0.1, 0.9);
    await keepAligned(page, 1, 0.3, 0.8);
    const bodies = () =>
      page.locator('.photo-image').evaluateAll((images) =>
        images.map((image, which) => {
          const [crown, soles] = which === 0 ? [0.1, 0.9] : [0.3, 0.8];
          const frame = image.closest('.photo-frame')?.getBoundingClientRect();
          const { top, height } = image.getBoundingClientRect();
          const crownPx = Math.round(top - (frame?.top ?? 0) + crown * height);
          return { crownPx, tallPx: Math.round((soles - crown) * height) };
        }),
      );
    await expect
      .poll(async () => {
        const [left, right] = await bodies();
        return left && right ? [left.crownPx - right.crownPx, left.tallPx - right.tallPx] : undefined;
      })
      .toEqual([0, 0]);
    expect((await bodies())[0]?.tallPx).toBeGreaterThan(100);
  });

  it('[RUN-30] a file that is no picture is said to be none', async () => {
    const { page } = await app.open({ path: '/#/body/photos' });
    await page
      .getByLabel('Add a photograph')
      .setInputFiles({ name: 'x.png', mimeType: 'image/png', buffer: Buffer.from('not a picture') });
    await page.getByText('This file is no picture this browser can read.').waitFor();
  });
});

describe('every screen of Body', () => {
  everyScreenIsSound(app, TALL, SCREENS);
});
