import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';

const app = useBrowser();

describe('the first start', () => {
  it('[LOOK-20] opens on the invented athlete, and one tap starts an own, empty journal', async () => {
    const { page } = await app.open();
    await page.getByText('invented athlete').first().waitFor();
    await page.getByText('Start my own').click();
    await page.getByRole('heading', { level: 1, name: 'Your own journal' }).waitFor();
    await passFirstStart(page);
    await page.getByText('When does this day begin and end?').waitFor();
  });

  it('[LOOK-20] every fault is said at once with its remedy, and nothing typed is lost', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-07T09:00:00' });
    await page.getByLabel('Year of birth').fill('2012');
    await page.getByLabel('Height').fill('17');
    await page.getByRole('button', { name: 'Open my journal' }).click();
    await page.getByText('adults of 18 years').first().waitFor();
    await page.getByText('Sex is not chosen.').first().waitFor();
    await page.getByText('Enter 120 to 230 cm.').first().waitFor();
    expect(await page.getByLabel('Year of birth').inputValue()).toBe('2012');
    expect(await page.getByLabel('Height').inputValue()).toBe('17');
  });

  it('[LOOK-20] what is typed survives a killed tab', async () => {
    const { page, device } = await app.open({ journal: 'own' });
    await page.getByLabel('Year of birth').fill('1994');
    await page.getByLabel('Height').fill('170');
    await app.kill(page);
    const { page: again } = await app.open({ device });
    await again.getByRole('heading', { level: 1, name: 'Your own journal' }).waitFor();
    expect(await again.getByLabel('Height').inputValue()).toBe('170');
  });

  it.each([
    ['phone', {}],
    ['desk, dark', { viewport: DESKTOP, dark: true }],
  ])('[LOOK-21] passes axe, with large targets and no sideways scroll (%s)', async (_name, look) => {
    const { page } = await app.open({ journal: 'own', ...look });
    await page.getByRole('heading', { level: 1, name: 'Your own journal' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  });
});
