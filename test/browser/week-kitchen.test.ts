import { describe, expect, it } from 'vitest';
import { axeFindings, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();

/** As wide as a phone and so tall that the fixed bars cover nothing. */
const TALL = { width: 390, height: 3400 };

describe('recipes', () => {
  it('[BAT-57] a slice of a dish that was never weighed is logged with one tap and stands in the day', async () => {
    const { page } = await app.open({ path: '/#/kitchen/recipe/oat-banana-tray' });
    await page.getByRole('heading', { name: 'Oat and banana tray' }).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Log 1 slice' }).click();
    await page.getByText('1 slice of Oat and banana tray logged').waitFor();
    await page.getByRole('link', { name: 'Day' }).click();
    await page.getByText('Oat and banana tray').first().waitFor();
  });

  it('[BAT-54] the card is drawn as a picture and written as a file on this device', async () => {
    const { page } = await app.open({ path: '/#/kitchen/recipe-card/lentil-beef-pot' });
    const picture = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a picture' }).click();
    expect((await picture).suggestedFilename()).toBe('lentil-and-beef-pot.png');
    const file = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file (JSON-LD)' }).click();
    expect((await file).suggestedFilename()).toBe('lentil-and-beef-pot.jsonld');
  });

  it('[BAT-56] a recipe of a file asks for the food it cannot name, with its words in sight', async () => {
    const { page } = await app.open({ path: '/#/kitchen/recipes' });
    const recipe = {
      '@context': 'https://schema.org',
      '@type': 'Recipe',
      name: 'Kelp broth',
      recipeYield: '4 servings',
      recipeIngredient: ['300 g lentils, dry', '200 g sea wrack'],
      recipeInstructions: 'Simmer.',
    };
    await page.getByLabel('A recipe file').setInputFiles({
      name: 'broth.jsonld',
      mimeType: 'application/ld+json',
      buffer: Buffer.from(JSON.stringify(recipe)),
    });
    await page.getByText('The file says "200 g sea wrack"').waitFor();
    await page.getByRole('combobox', { name: 'Which food is that' }).fill('spinach raw');
    await page.getByRole('option').first().click();
    await settle(page);
    await page.getByRole('button', { name: 'Keep the recipe' }).click();
    await page.getByRole('heading', { name: 'Kelp broth' }).waitFor();
  });
});

describe('the week ahead', () => {
  it('[WEK-07] a tick on the list stands in stock, and Undo takes it back', async () => {
    const { page } = await app.open({ path: '/#/kitchen/shopping' });
    const lines = page.getByRole('checkbox');
    await lines.first().waitFor();
    const before = await lines.count();
    await settle(page);
    await lines.first().click();
    await page.getByRole('heading', { name: 'Bought' }).waitFor();
    expect(await lines.count()).toBe(before - 1);
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('heading', { name: 'Bought' }).waitFor({ state: 'detached' });
    expect(await lines.count()).toBe(before);
  });

  it('[WEK-10] other wishes have it solved again unasked, in a worker under the strict policy; left it stands, taken it is new', async () => {
    const { page } = await app.open({ path: '/#/kitchen/week-wishes' });
    await page.getByRole('textbox', { name: 'Days planned together' }).fill('2');
    await settle(page);
    await page.getByRole('button', { name: 'Keep these wishes' }).click();
    await page.getByRole('button', { name: 'Leave it' }).waitFor({ timeout: 30_000 });
    await page.getByText('You wish the week otherwise: how many days are planned together.').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Leave it' }).click();
    await page.getByText('The week stays as it stands').waitFor();
    await page.getByText(/^7 days,/).waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Take the new week' }).waitFor({ timeout: 30_000 });
    await settle(page);
    await page.getByRole('button', { name: 'Take the new week' }).click();
    await page.getByText(/^2 days,/).waitFor();
  });

  it.each([
    '/#/kitchen/recipes',
    '/#/kitchen/recipe/lentil-beef-pot',
    '/#/kitchen/recipe-edit/lentil-beef-pot',
    '/#/kitchen/week',
    '/#/kitchen/week-cook',
    '/#/kitchen/shopping',
    '/#/kitchen/week-wishes',
  ])('[LOOK-21] %s passes axe, with large targets and no sideways scroll', async (path) => {
    const { page } = await app.open({ path, viewport: TALL });
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  });
});
