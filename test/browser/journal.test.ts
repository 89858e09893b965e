import { describe, expect, it } from 'vitest';
import { axeFindings, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 2600 };

describe('the journal', () => {
  it('[RUN-31] [RUN-32] whoever weighs in pounds reads pounds; a guess typed at the plate is logged with one tap', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-02T11:40:00' });
    await page.getByText('lb, oz, in', { exact: true }).click();
    await page.getByText('Male', { exact: true }).click();
    await page.getByLabel('Year of birth').fill('1990');
    await page.getByLabel('Height').fill('70.5');
    await page.getByLabel('Weight today').fill('186.4');
    await page.getByText('I have read this, and I am an adult').click();
    await settle(page);
    await page.getByRole('button', { name: 'Open my journal' }).click();
    await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
    await page.goto(`${app.address()}#/day/eat`);
    await page.getByLabel('What it was').fill('Pizza');
    await page.getByLabel('Fat, by eye').fill('30');
    await settle(page);
    await page.getByRole('button', { name: 'Log this meal' }).click();
    await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
    await page.goto(`${app.address()}#/journal`);
    await page.getByText('186.4 lb').waitFor();
    await page.getByText(/Pizza/).waitFor();
  });

  it('[JRN-08] an entry is found by words, corrected, and keeps its history; removal can be taken back', async () => {
    const { page } = await app.open({ path: '/#/journal' });
    await page.getByLabel('Search').fill('coffee 2027-03-04');
    await page.getByRole('link', { name: /Coffee, black/ }).click();
    await page.getByText('As written').waitFor();
    await page.getByRole('link', { name: 'Correct' }).click();
    await page.getByLabel('millilitres').fill('300');
    await settle(page);
    await page.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText('As corrected').waitFor();
    await page.getByText('Earlier version').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Remove' }).click();
    await page.getByRole('heading', { level: 1, name: 'Journal' }).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByLabel('Search').fill('coffee 300');
    await page.getByRole('link', { name: /300 mL Coffee, black/ }).waitFor();
  });

  it('[JRN-08] a correction that does not fit is refused beside the field and nothing typed is lost', async () => {
    const { page } = await app.open({ path: '/#/journal' });
    await page.getByLabel('Search').fill('coffee');
    await page.getByRole('link', { name: /Coffee, black/ }).click();
    await page.getByRole('link', { name: 'Correct' }).click();
    await page.getByLabel('millilitres').fill('-5');
    await settle(page);
    await page.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText('"millilitres" is -5.').first().waitFor();
    expect(await page.getByLabel('millilitres').inputValue()).toBe('-5');
  });

  it('[JRN-10] the whole journal leaves as a file and comes in again: everything is known already', async () => {
    const { page } = await app.open({ path: '/#/journal/copies' });
    const leaving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a copy of the journal' }).click();
    const file = await (await leaving).path();
    await page.getByLabel('A copy of a journal').setInputFiles(file);
    await page.getByText(/^0 entries came in, \d{3,} were here already\.$/).waitFor();
  });

  it('[JRN-11] a damaged file brings in what can be read and names the lines that cannot', async () => {
    const { page } = await app.open({ path: '/#/journal/copies', journal: 'demo' });
    const good = {
      id: 'from-afar-1',
      stamp: '2027-03-04T09:00:00.000Z-0000-afar',
      device: 'afar',
      kind: 'note-written',
      day: '2027-03-04',
      at: '2027-03-04T09:00:00+00:00',
      zone: 'UTC',
      data: { text: 'Written on another device' },
    };
    const buffer = Buffer.from(`${JSON.stringify(good)}\n{"id": 7\n`);
    await page
      .getByLabel('A copy of a journal')
      .setInputFiles({ name: 'copy.jsonl', mimeType: 'text/plain', buffer });
    await page.getByText('1 entry came in').waitFor();
    await page
      .getByText(/line 2/)
      .first()
      .waitFor();
  });

  it.each(['/#/journal', '/#/journal/copies', '/#/journal/check'])(
    '[LOOK-21] %s passes axe, with large targets and no sideways scroll',
    async (path) => {
      const { page } = await app.open({ path, viewport: TALL });
      await page.getByRole('heading', { level: 1 }).waitFor();
      expect(await axeFindings(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      expect(await scrollsSideways(page)).toBe(false);
    },
  );
});
